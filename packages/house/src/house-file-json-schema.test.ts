import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { houseFile } from './file/house-file.js';
import { openingLaws } from './file/opening-law.js';
import { houseFileJsonSchema } from './house-file-json-schema.js';
import { kindNames } from './kind-names.js';

interface SchemaNode {
  readonly type?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode | boolean;
  readonly anyOf?: readonly SchemaNode[];
  readonly items?: SchemaNode;
  readonly unit?: string;
  readonly accepted?: unknown;
}

const schema = houseFileJsonSchema() as SchemaNode;

function nodes(node: SchemaNode): readonly SchemaNode[] {
  const { additionalProperties, items, anyOf = [], properties = {} } = node;
  const below = [
    ...Object.values(properties),
    ...anyOf,
    ...(items === undefined ? [] : [items]),
    ...(typeof additionalProperties === 'object' ? [additionalProperties] : []),
  ];
  return [node, ...below.flatMap(nodes)];
}

function property(node: SchemaNode | undefined, ...path: readonly string[]): SchemaNode {
  let at = node;
  for (const key of path) {
    const maps = [at, ...(at?.anyOf ?? [])];
    at =
      maps.map((map) => map?.properties?.[key]).find((found) => found !== undefined) ??
      maps.map((map) => map?.additionalProperties).find((more) => typeof more === 'object');
  }
  if (at === undefined) throw new Error(`the schema has no ${path.join('.')}`);
  return at;
}

describe('houseFileJsonSchema', () => {
  it('is what the package publishes', () => {
    const published = readFileSync(
      new URL('../schema/house-file.schema.json', import.meta.url),
      'utf8',
    );
    expect(JSON.parse(published)).toEqual(houseFileJsonSchema());
  });

  it('has every key of the house file and requires the four that it cannot do without', () => {
    expect(Object.keys(schema.properties ?? {})).toEqual(Object.keys(houseFile.shape));
    expect((schema as { required?: unknown }).required).toEqual([
      'evendraft',
      'name',
      'floorArea',
      'airtightness',
    ]);
  });

  it('explains every value, with something that can be typed', () => {
    for (const node of nodes(schema)) {
      expect(node.accepted).toBeUndefined();
      if (node.type !== 'string' || node.description === undefined) continue;
      expect(node.examples?.length).toBeGreaterThan(0);
    }
  });

  it('names the units that a quantity accepts', () => {
    const height = property(schema, 'ceilingHeight');
    expect(height.unit).toBe('length');
    expect(height.description).toContain('Units: ft, in, yd, m, cm, mm.');
  });

  it('offers every way in which an opening may be written, as the table of openings has them', () => {
    const opening = property(schema, 'openings', 'grille');
    for (const { key, beside } of openingLaws) {
      for (const each of [key, ...beside]) expect(property(opening, each)).toBeDefined();
    }
  });

  it('offers every kind of every section', () => {
    for (const section of ['exhaust', 'supply', 'appliances', 'zones'] as const) {
      const kinds = property(schema, section, 'any', 'kind').enum ?? [];
      expect(new Set(kinds)).toEqual(new Set(Object.values(kindNames[section])));
    }
  });
});

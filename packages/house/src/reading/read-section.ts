import type { IssuePath } from '@evendraft/text';
import { checkName } from '../file/schema/item-name.js';
import { shapeOf, shapeWords } from '../file/schema/shape-of.js';
import { report, type Reading } from './reading.js';

/** An item of a section as it stands in the file. */
export interface RawItem {
  readonly name: string;
  readonly path: IssuePath;
  readonly raw: unknown;
}

/** A section: its key, an item for messages, and how many items it may hold. */
export interface Section {
  readonly key: string;
  readonly example: string;
  readonly most: number;
}

/** Every section of named items. The limits keep a slip from becoming a computation without end; our choice. */
export const sections = {
  zones: { key: 'zones', example: 'main: { kind: living, area: 1200 ft2 }', most: 200 },
  surroundings: { key: 'surroundings', example: 'corridor: { pressure: 0 Pa }', most: 100 },
  openings: {
    key: 'openings',
    example: 'attic vents: { zone: attic, to: roof, area: 300 in2 }',
    most: 200,
  },
  combustionAir: {
    key: 'combustionAir',
    example: 'closet air: { zone: closet, to: attic, high: 100 in2, low: 100 in2 }',
    most: 50,
  },
  doors: { key: 'doors', example: 'bedroom door: { between: [main, bedroom] }', most: 64 },
  exhaust: { key: 'exhaust', example: 'dryer: 150 cfm', most: 100 },
  supply: { key: 'supply', example: 'supply fan: 100 cfm', most: 100 },
  makeUp: {
    key: 'makeUp',
    example: 'kitchen make-up: { opensWith: hood, diameter: 8 in }',
    most: 100,
  },
  ventilators: { key: 'ventilators', example: 'hrv: 110 cfm', most: 100 },
  forcedAir: {
    key: 'forcedAir',
    example: 'air handler: { flow: 1000 cfm, supplies: main, returns: main }',
    most: 20,
  },
  appliances: {
    key: 'appliances',
    example: 'water heater: { vent: natural draft, fuel: gas }',
    most: 100,
  },
} as const satisfies Readonly<Record<string, Section>>;

/** Key of a section of named items. */
export type SectionKey = keyof typeof sections;

/**
 * The items of a section with their names checked. A section with nothing in it has no items.
 *
 * @param reading - where issues are collected
 * @param root - the whole file
 * @param key - key of the section
 * @returns items in the order of the file; none where the section is no map or too long
 */
export function readSection(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
  key: SectionKey,
): readonly RawItem[] {
  const { example, most }: Section = sections[key];
  const raw = root[key];
  const shape = shapeOf(raw);
  if (shape === 'nothing') return [];
  if (shape !== 'map') {
    const parameters = { found: shapeWords[shape], accepted: [example] };
    report(reading, [key], { code: 'value.wrong-shape', parameters });
    return [];
  }
  const entries = Object.entries(raw as Record<string, unknown>);
  if (entries.length > most) {
    const parameters = { found: entries.length, allowed: most };
    report(reading, [key], { code: 'section.too-many', parameters });
    return [];
  }
  return entries.flatMap(([name, item]) => {
    const path = [key, name];
    const checked = checkName(name);
    if (checked.ok) return [{ name: checked.value, path, raw: item }];
    for (const problem of checked.problems) report(reading, path, problem);
    return [];
  });
}

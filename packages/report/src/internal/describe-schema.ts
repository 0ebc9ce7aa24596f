import { schemaDescriptions } from './schema-descriptions.js';

type Json = Readonly<Record<string, unknown>>;

/**
 * A JSON Schema in which every property says what it is and in which unit.
 *
 * @param schema - as made from the types
 * @param holder - name of the property that holds it
 * @returns the same schema with descriptions where it had none
 */
export function describeSchema(schema: Json, holder = ''): Json {
  return Object.fromEntries(
    Object.entries(schema).map(([key, value]) => [
      key,
      key === 'properties' ? describedProperties(value as Json, holder) : inside(value, holder),
    ]),
  );
}

function describedProperties(properties: Json, holder: string): Json {
  return Object.fromEntries(
    Object.entries(properties).map(([name, value]) => {
      const own = describeSchema(value as Json, name);
      const words = schemaDescriptions[`${holder}.${name}`] ?? schemaDescriptions[name];
      if (own['description'] !== undefined || words === undefined) return [name, own];
      const unit = typeof own['unit'] === 'string' ? own['unit'] : undefined;
      const description = unit === undefined ? words : `${words.replace(/\.$/u, '')} [${unit}].`;
      return [name, { description, ...own }];
    }),
  );
}

function inside(value: unknown, holder: string): unknown {
  if (Array.isArray(value)) return value.map((each: unknown) => inside(each, holder));
  return typeof value === 'object' && value !== null
    ? describeSchema(value as Json, holder)
    : value;
}

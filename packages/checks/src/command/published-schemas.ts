import { readFileSync } from 'node:fs';
import Ajv from 'ajv';

const ajv = new Ajv({ allErrors: true, unknownFormats: 'ignore' });

const names: Readonly<Record<string, string>> = {
  'evendraft-assessment': 'assessment',
  'evendraft-sizing': 'sizing',
  'evendraft-comparison': 'comparison',
};

const validators = new Map(
  Object.entries(names).map(([schema, name]) => {
    const file = new URL(`../../../report/schema/${name}.schema.json`, import.meta.url);
    return [schema, ajv.compile(JSON.parse(readFileSync(file, 'utf8')) as object)] as const;
  }),
);

/**
 * What a reader who has only the published JSON Schemas finds wrong with a result.
 *
 * @param result - as it was printed, parsed
 * @returns one line a fault; empty where it is what the schema of its kind says
 */
export function schemaFaults(result: unknown): readonly string[] {
  const kind = (result as { readonly schema?: unknown } | null)?.schema;
  const validate = typeof kind === 'string' ? validators.get(kind) : undefined;
  if (validate === undefined) return [`no schema is published for ${JSON.stringify(kind)}`];
  if (validate(result) === true) return [];
  return (validate.errors ?? []).map(({ dataPath, message }) => `${dataPath}: ${message ?? ''}`);
}

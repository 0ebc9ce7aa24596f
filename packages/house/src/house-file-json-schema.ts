import * as z from 'zod';
import { houseFile } from './file/house-file.js';

/**
 * JSON Schema (draft 7) of the house file, for completion and checks in an editor.
 *
 * It tells keys, words, descriptions and examples; units, references between items and sums are checked
 * only by `parseHouse`. It offers one spelling of each word, where `parseHouse` also takes others
 * (`fan-assisted`), and no empty sections. The package holds the same as `schema.json`.
 *
 * @returns the schema, plain JSON
 *
 * @example
 * Object.keys(houseFileJsonSchema().properties ?? {}).slice(0, 3); // => ['evendraft', 'name', 'floorArea']
 */
export function houseFileJsonSchema(): z.core.JSONSchema.JSONSchema {
  const printed = z.toJSONSchema(houseFile, {
    target: 'draft-7',
    io: 'input',
    override: ({ jsonSchema }) => {
      const { accepted } = jsonSchema;
      if (accepted === undefined) return;
      delete jsonSchema['accepted'];
      if (jsonSchema.type === 'object' || jsonSchema.anyOf !== undefined) {
        // An editor would paste the example of a map as text, so it is only told.
        const told = (accepted as unknown[]).join('; ');
        jsonSchema.description = `${jsonSchema.description ?? ''} For instance: ${told}`.trim();
      } else {
        jsonSchema.examples = accepted as unknown[];
      }
    },
  });
  const { $schema, ...schema } = printed;
  return {
    ...($schema === undefined ? {} : { $schema }),
    title: 'Evendraft house file',
    ...schema,
  };
}

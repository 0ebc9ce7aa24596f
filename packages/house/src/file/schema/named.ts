import * as z from 'zod';

/**
 * Schema of a section: a map from the names that the user gives to items of one kind.
 *
 * Only the JSON Schema uses it as a whole. Reading goes through a section item by item, so that one
 * wrong item hides nothing about the others.
 *
 * @param item - schema of one item
 * @param description - what the section holds
 * @param example - an item as it may be typed
 * @returns the schema
 */
export function named<Item extends z.ZodType>(
  item: Item,
  description: string,
  example: string,
): z.ZodRecord<z.ZodString, Item> {
  return z.record(z.string(), item).meta({ description, accepted: [example] });
}

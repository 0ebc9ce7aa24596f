/**
 * Reading a house from text: YAML or JSON, each issue with file, line and column.
 *
 * Kept apart from `@evendraft/house`, so that an embedder who already has an object carries no parser.
 */
export { readHouse } from './read-house.js';
export type { ReadHouseOptions } from './read-house.js';

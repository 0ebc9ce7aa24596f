import type { Dimension } from './dimension.js';

/** The two ways a person may want values printed: inch-pound as in North America, or SI. */
export type UnitSystem = 'us' | 'si';

/**
 * One unit of the table: how it is typed, how it is printed, and its exact size.
 *
 * Law: value in the dimension's SI unit = value in this unit × factor + offset.
 */
export interface UnitDefinition {
  readonly dimension: Dimension;
  /** Canonical symbol in plain characters, as `Quantity.unit` gives it: `m3/h`. */
  readonly symbol: string;
  /** The symbol as it is printed: `m³/h`, `°F`. */
  readonly printed: string;
  /** Other spellings; spaces, dots, `^` and (unless it matters) upper and lower case are ignored. */
  readonly aliases: readonly string[];
  /** Where the unit is at home. */
  readonly system: UnitSystem | 'both';
  /** SI units in one of this unit, as the text of an exact fraction: `381/1250` for a foot. */
  readonly factor: string;
  /** What is added after the factor, as the text of an exact fraction; `0` except for temperatures. */
  readonly offset: string;
  /** Where the factor comes from. */
  readonly source: string;
}

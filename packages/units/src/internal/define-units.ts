import type Fraction from 'fraction.js';

import type { Dimension } from '../dimension.js';
import type { UnitDefinition } from '../unit-definition.js';
import { exact, exactText } from './exact.js';

/** A row of the table as it is written: only what differs from the usual. */
export interface UnitRow {
  readonly symbol: string;
  /** Left out: the symbol with its digits after letters raised, `m3/h` → `m³/h`. */
  readonly printed?: string;
  readonly aliases?: readonly string[];
  readonly system: UnitDefinition['system'];
  /** SI units in one of this unit; text is read exactly. */
  readonly factor: Fraction | string;
  readonly offset?: Fraction | string;
  readonly source: string;
}

/** The rows of one dimension as unit definitions. */
export function defineUnits(dimension: Dimension, rows: readonly UnitRow[]): UnitDefinition[] {
  return rows.map((row) => ({
    dimension,
    symbol: row.symbol,
    printed: row.printed ?? raised(row.symbol),
    aliases: row.aliases ?? [],
    system: row.system,
    factor: fractionText(row.factor),
    offset: fractionText(row.offset ?? '0'),
    source: row.source,
  }));
}

function fractionText(value: Fraction | string): string {
  return exactText(typeof value === 'string' ? exact(value) : value);
}

function raised(symbol: string): string {
  return symbol.replace(/(?<=[a-z])2/g, '²').replace(/(?<=[a-z])3/g, '³');
}

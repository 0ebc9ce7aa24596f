import type { Balance } from '../balance.js';
import type { RootBalance } from '../root-balance.js';
import type { SearchedColumn } from './column-bounds.js';
import { directionAt } from './column-bounds.js';
import type { ColumnState, StatedColumn } from './column-states.js';
import { movementOf, stillColumn } from './column-states.js';
import type { FanRoot } from './fan-roots.js';

/** Columns with the states assumed of those that matter. */
export interface AssumedColumns {
  /** Ids of all links, in order. */
  readonly linkIds: readonly string[];
  /** All columns asked for, those with nothing to choose among them. */
  readonly asked: readonly StatedColumn[];
  readonly columns: readonly SearchedColumn[];
  /** By column. */
  readonly states: readonly ColumnState[];
  /** By link, as assumed; upward where a column is at rest [kg/m3]. */
  readonly densities: Float64Array;
}

/** The balance with its columns, if every column moves the way it was assumed; undefined otherwise. */
export function settleColumns(
  { balance, stable: fansStable }: FanRoot,
  { linkIds, asked, columns, states, densities }: AssumedColumns,
): Omit<RootBalance, 'fans'> | undefined {
  let stable = fansStable;
  const differences = balance.links.pressureDifferencePa.slice();
  const settledDensities = densities.slice();
  for (const [k, column] of columns.entries()) {
    if (states[k] === 'still') {
      const still = stillColumn(column, {
        differencePa: differences[column.link]!,
        directionAt: (differencePa) => directionAt(column, differencePa),
      });
      if (still === undefined) return undefined;
      stable &&= still.stable;
      differences[column.link] = still.pressureDifferencePa;
      settledDensities[column.link] = still.densityKgPerM3;
    } else {
      const movement = movementOf(balance, column);
      if (movement !== 'still' && movement !== states[k]) return undefined;
    }
  }
  return {
    balance: { ...balance, links: { ...balance.links, pressureDifferencePa: differences } },
    columns: asked.map((column) => ({
      link: linkIds[column.link]!,
      state: movementOf(balance, column),
      densityKgPerM3: settledDensities[column.link]!,
    })),
    stable,
  };
}

/** Two searches found one balance: a column without flow is at rest whatever was assumed of it. */
export function isSameBalance(one: Balance, other: Balance): boolean {
  const alike = (a: Float64Array, b: Float64Array, tolerance: number): boolean =>
    a.every((value, k) => Math.abs(value - b[k]!) <= tolerance);
  const greatest = Math.max(...one.links.massFlowKgPerS.map(Math.abs));
  return (
    alike(one.pressuresPa, other.pressuresPa, 1e-6) &&
    alike(one.links.massFlowKgPerS, other.links.massFlowKgPerS, 1e-6 * greatest)
  );
}

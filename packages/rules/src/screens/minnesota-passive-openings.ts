import type { Source } from '@evendraft/house';
import { siOf } from '../internal/si-of.js';

/** A column of the state's tables, by the appliances of the house. */
export type MinnesotaColumn = 'A' | 'B' | 'C' | 'D';

/** What the columns stand for, and how much the house is taken to leak by its floor area [m³/(s·m²)]. */
export const minnesotaColumns: Readonly<
  Record<MinnesotaColumn, { readonly words: string; readonly factor: number }>
> = {
  A: {
    words: 'power-vented or direct-vent appliances, or none',
    factor: siOf('0.15 cfm/ft2', 'flowPerArea'),
  },
  B: {
    words: 'fan-assisted besides power-vented or direct-vent appliances',
    factor: siOf('0.09 cfm/ft2', 'flowPerArea'),
  },
  C: {
    words: 'one atmospherically vented gas or oil appliance, or one solid-fuel appliance',
    factor: siOf('0.06 cfm/ft2', 'flowPerArea'),
  },
  D: {
    words: 'several atmospherically vented gas or oil appliances, or solid-fuel appliances',
    factor: siOf('0.03 cfm/ft2', 'flowPerArea'),
  },
};

/** Where the tables were read. */
export const minnesotaSource: Source = {
  document: 'Minnesota Rules 1346.0501',
  edition: 'tables of 2007 to 2020',
  section: '501.4.1 and 501.4.2 (501.3.1 and 501.3.2 before 2015)',
  status: 'found',
};

/** One row of the table of passive openings: the largest make-up flow of each column [cfm]. */
export interface PassiveOpeningRow {
  readonly diameterIn: number;
  readonly largestCfm: Readonly<Record<MinnesotaColumn, number>>;
  readonly motorizedDamper: boolean;
}

/**
 * Passive openings by make-up flow, round duct of smooth metal with 100 ft equivalent length.
 *
 * Source: Minnesota Table 501.4.2 (501.3.2), read from a scanned form; cells that the scan lost were
 * filled by continuity with their neighbours.
 */
export const minnesotaPassiveOpenings: readonly PassiveOpeningRow[] = [
  row(3, [36, 22, 15, 9]),
  row(4, [66, 43, 28, 17]),
  row(5, [109, 66, 46, 28]),
  row(6, [163, 100, 69, 42]),
  row(7, [232, 143, 99, 61]),
  row(8, [317, 195, 135, 83]),
  row(9, [419, 258, 179, 110]),
  row(10, [539, 332, 230, 142]),
  row(11, [679, 419, 290, 179]),
];

/**
 * The row of the table for a make-up flow.
 *
 * @param column - the column of the house
 * @param flowM3PerS - make-up flow [m³/s]
 * @returns the smallest row that holds it, or nothing where powered make-up air is asked for
 */
export function minnesotaPassiveOpening(
  column: MinnesotaColumn,
  flowM3PerS: number,
): PassiveOpeningRow | undefined {
  const cfm = siOf('1 cfm', 'volumeFlow');
  // The table is in whole cfm: a flow that rounds to a row's end belongs to it.
  const flowCfm = Math.round(flowM3PerS / cfm);
  return minnesotaPassiveOpenings.find(({ largestCfm }) => flowCfm <= largestCfm[column]);
}

function row(
  diameterIn: number,
  [A, B, C, D]: readonly [number, number, number, number],
): PassiveOpeningRow {
  return { diameterIn, largestCfm: { A, B, C, D }, motorizedDamper: diameterIn > 8 };
}

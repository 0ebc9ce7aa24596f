import type { RemedyRow } from './remedy-row.js';

/** One thing that remedies are ranked by. */
export interface RankCriterion {
  readonly by:
    | 'keeps the limits'
    | 'code rules not satisfied'
    | 'heat'
    | 'energy of a year'
    | 'least margin'
    | 'face velocity'
    | 'hood flow'
    | 'things to look after';
  readonly better: 'more' | 'less';
  /** Differences below this count as equal, in the criterion's SI unit. */
  readonly step: number;
}

/** Criteria in order: a later one counts only where all before are equal. */
export type RankRule = readonly RankCriterion[];

/**
 * The rule that is used where none is given: what keeps the limits, breaks fewest code rules, needs least heat,
 * least upkeep, and leaves most margin. Our choice.
 */
export const usualRankRule: RankRule = [
  { by: 'keeps the limits', better: 'more', step: 0.5 },
  { by: 'code rules not satisfied', better: 'less', step: 0.5 },
  { by: 'heat', better: 'less', step: 200 },
  { by: 'things to look after', better: 'less', step: 0.5 },
  { by: 'least margin', better: 'more', step: 0.1 },
];

/**
 * Puts rows in order by a rule; those that are equal keep their order.
 *
 * A row that lacks a number comes behind those that have it.
 *
 * @param rows - rows to rank
 * @param rule - the rule
 * @returns the rows, the best first
 */
export function rankRemedies(rows: readonly RemedyRow[], rule: RankRule): readonly RemedyRow[] {
  return [...rows].sort((one, other) => {
    for (const criterion of rule) {
      const order = compare(valueOf(one, criterion), valueOf(other, criterion), criterion);
      if (order !== 0) return order;
    }
    return 0;
  });
}

function compare(
  one: number | undefined,
  other: number | undefined,
  { better, step }: RankCriterion,
): number {
  if (one === undefined || other === undefined) {
    return (one === undefined ? 1 : 0) - (other === undefined ? 1 : 0);
  }
  const [a, b] = [Math.round(one / step), Math.round(other / step)];
  return better === 'less' ? a - b : b - a;
}

function valueOf(row: RemedyRow, { by }: RankCriterion): number | undefined {
  switch (by) {
    case 'keeps the limits':
      return row.sizing.status === 'impossible' ? 0 : 1;
    case 'code rules not satisfied':
      return row.code.filter(({ standing }) => standing === 'not satisfied').length;
    case 'heat':
      return row.inducedHeatW === undefined ? undefined : Math.abs(row.inducedHeatW);
    case 'energy of a year':
      return row.year?.totalKWh;
    case 'least margin':
      return row.sizing.margins.length === 0
        ? undefined
        : Math.min(...row.sizing.margins.map(({ marginPa }) => marginPa));
    case 'face velocity':
      return row.faceVelocityMPerS;
    case 'hood flow':
      return row.exhaustFlowM3PerS;
    case 'things to look after':
      return row.upkeep.length;
  }
}

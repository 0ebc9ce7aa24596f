import type { WorstCaseStudy } from '@evendraft/studies';

/**
 * That situations have several balances, and which of them is shown.
 *
 * @param study - the worst case
 * @returns one sentence or two; none where every situation shown has only one
 */
export function severalBalancesWords({ situations }: WorstCaseStudy): readonly string[] {
  const several = situations.filter(({ columns, baselineColumns }) =>
    [columns, baselineColumns].some(
      (each) => each !== undefined && (each.stableBalances > 1 || !each.complete),
    ),
  ).length;
  if (several === 0) return [];
  return [
    `In ${several} of ${situations.length} situations, or in their baselines, air in a flue or shaft can stand either way or a fan that stalls can work at more than one flow. Each room then shows its lowest pressure, and its fall is counted from the highest of its baseline.`,
  ];
}

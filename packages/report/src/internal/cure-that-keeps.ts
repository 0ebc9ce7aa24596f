import type { SolvedCure } from '@evendraft/remedies';
import type { Assessment } from '../assessment.js';
import { findingsByUrgency } from './findings-by-urgency.js';

/**
 * The first cure that brings the most urgent finding of suction within its limit: one by itself, else several together.
 *
 * @param assessment - what was found
 * @returns undefined where none was solved or none keeps it
 */
export function cureThatKeeps({
  cures,
  findings,
}: Pick<Assessment, 'cures' | 'findings'>): SolvedCure | undefined {
  if (cures.status !== 'solved') return undefined;
  const solved = findingsByUrgency(findings).flatMap(
    (finding) => cures.appliances.find(({ appliance }) => appliance === finding.appliance) ?? [],
  );
  const keeping = solved[0]?.cures.filter(({ after }) => after.verdict === 'within the limit');
  return keeping?.find(({ together }) => together !== true) ?? keeping?.[0];
}

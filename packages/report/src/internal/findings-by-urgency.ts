import { verdictsByUrgency, type Finding } from '@evendraft/rules';

/**
 * Findings in the order in which a reader needs them: by verdict, then the smallest margin first.
 *
 * @param findings - in any order
 * @returns the same findings; equals keep their order
 */
export function findingsByUrgency(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort(
    (a, b) =>
      verdictsByUrgency.indexOf(a.verdict) - verdictsByUrgency.indexOf(b.verdict) ||
      (a.judged?.marginPa ?? 0) - (b.judged?.marginPa ?? 0),
  );
}

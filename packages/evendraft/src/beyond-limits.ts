import type { Assessment, JudgedSet } from '@evendraft/report';
import type { Verdict } from '@evendraft/rules';

/** Findings of one kind that are beyond their limit. */
export interface BeyondLimits {
  readonly kind:
    'suction' | 'house' | 'draft' | 'spillage time' | 'carbon monoxide' | 'code screen';
  /** What they speak of: appliances, zones, rules; each once. */
  readonly of: readonly string[];
  readonly count: number;
}

/**
 * Findings of an assessment that are beyond their limit, kind by kind.
 *
 * Suction of appliances and limits of the house in the worst case, in the programmes' own tests and by the sets beside
 * it; draft, spillage and carbon monoxide of solved flues; code screens that are meant for the house. What is not judged
 * is not in it, and an empty list is no clearance.
 *
 * @param assessment - the assessment
 * @returns kinds with at least one such finding
 */
export function beyondLimits(assessment: Assessment): readonly BeyondLimits[] {
  const sets: readonly JudgedSet[] = [assessment, ...assessment.beside];
  const judged = sets.flatMap((set) => [
    set,
    ...(set.programmeTest === undefined ? [] : [set.programmeTest]),
  ]);
  const { draft } = assessment;
  const ofFlues =
    draft?.status === 'solved' ? draft.appliances.flatMap(({ findings }) => findings) : [];
  const flueKind = (kind: 'draft' | 'spillage time' | 'carbon monoxide') =>
    kindOf(
      kind,
      ofFlues
        .filter(({ about }) => about === kind)
        .map(({ appliance, finding: { verdict } }) => ({ subject: appliance, verdict })),
    );
  return [
    ...kindOf(
      'suction',
      judged.flatMap(({ findings }) =>
        findings.map(({ appliance, verdict }) => ({ subject: appliance, verdict })),
      ),
    ),
    ...kindOf(
      'house',
      judged.flatMap(({ houseFindings }) =>
        houseFindings.map(({ rule, verdict }) => ({ subject: rule, verdict })),
      ),
    ),
    ...flueKind('draft'),
    ...flueKind('spillage time'),
    ...flueKind('carbon monoxide'),
    ...kindOf(
      'code screen',
      assessment.screens
        .filter(({ applies }) => applies !== 'no')
        .map(({ rule, verdict }) => ({ subject: rule, verdict })),
    ),
  ];
}

function kindOf(
  kind: BeyondLimits['kind'],
  findings: readonly { readonly subject: string; readonly verdict: Verdict }[],
): readonly BeyondLimits[] {
  const beyond = findings.filter(({ verdict }) => verdict === 'beyond the limit');
  if (beyond.length === 0) return [];
  return [{ kind, of: [...new Set(beyond.map(({ subject }) => subject))], count: beyond.length }];
}

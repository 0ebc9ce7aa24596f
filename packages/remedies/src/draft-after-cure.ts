import type { CompiledHouse } from '@evendraft/house';
import {
  judgeCombustion,
  verdictsByUrgency,
  type CombustionFinding,
  type LimitSet,
} from '@evendraft/rules';
import {
  combustionStudy,
  draftVerdicts,
  type DraftVerdict,
  type WorstCaseStudy,
} from '@evendraft/studies';

/** What the flue of an appliance does in a house that has a cure; none of it is a clearance. */
export interface DraftAfterCure {
  /** Of its least favourable situation; absent where its flue is no opening of the house or could not be judged. */
  readonly verdict?: DraftVerdict;
  /** Why there is no verdict, as a sentence. */
  readonly why?: string;
  /** Draft, spillage time and carbon monoxide against the limits of the sets. */
  readonly findings: readonly CombustionFinding[];
}

/**
 * What the flues of a house do, by appliance, held against limits.
 *
 * @param compiled - the compiled house
 * @param of - its worst case, and sets with limits of draft, spillage time or carbon monoxide
 * @returns by id of appliance, those without a flue included
 */
export async function draftAfterCure(
  compiled: CompiledHouse,
  of: {
    readonly worstCase: WorstCaseStudy;
    readonly limitSets: readonly LimitSet[];
    readonly signal?: AbortSignal;
  },
): Promise<ReadonlyMap<string, DraftAfterCure>> {
  const { worstCase, limitSets, signal } = of;
  const { house } = compiled;
  const study = await combustionStudy(compiled, {
    worstCase,
    temperaturesC: [],
    ...(signal === undefined ? {} : { signal }),
  });
  const findings = limitSets.flatMap((limitSet) => judgeCombustion({ limitSet, house, study }));
  return new Map(
    house.appliances.map(({ id, flue }): [string, DraftAfterCure] => {
      const found = study.appliances.find(({ appliance }) => appliance === id);
      const verdict = found?.situations[0]?.verdict;
      const own = findings.filter(({ appliance }) => appliance === id);
      if (verdict !== undefined) return [id, { verdict, findings: own }];
      const why =
        flue === undefined
          ? 'It has no flue that is an opening of its room any more.'
          : 'None of its situations could be judged.';
      return [id, { why, findings: own }];
    }),
  );
}

/**
 * The worst of what a flue does in several houses: the least favourable verdict, and of each limit the worst finding.
 *
 * @param one - in one house; absent where there is none yet
 * @param other - in another
 * @returns the worst of both
 */
export function worseDraft(one: DraftAfterCure | undefined, other: DraftAfterCure): DraftAfterCure {
  if (one === undefined) return other;
  const rank = ({ verdict }: DraftAfterCure): number =>
    verdict === undefined ? -1 : draftVerdicts.indexOf(verdict);
  const findings = new Map<string, CombustionFinding>();
  for (const each of [...one.findings, ...other.findings]) {
    const key = `${each.about}; ${each.finding.rule}; ${each.finding.why}`;
    const before = findings.get(key);
    if (before === undefined || isWorse(each, before)) findings.set(key, each);
  }
  return { ...(rank(other) < rank(one) ? other : one), findings: [...findings.values()] };
}

/** More urgent, or as urgent and with the greater number: weaker draft, longer spillage, more carbon monoxide. */
function isWorse(one: CombustionFinding, other: CombustionFinding): boolean {
  const urgency = ({ finding }: CombustionFinding): number =>
    verdictsByUrgency.indexOf(finding.verdict);
  if (urgency(one) !== urgency(other)) return urgency(one) < urgency(other);
  return (one.found ?? Infinity) > (other.found ?? Infinity);
}

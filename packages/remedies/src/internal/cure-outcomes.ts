import { compileHouse, type House } from '@evendraft/house';
import { judge, type Finding, type LimitSet } from '@evendraft/rules';
import { worstCaseStudy } from '@evendraft/studies';
import { draftAfterCure, worseDraft, type DraftAfterCure } from '../draft-after-cure.js';

/** What a house with a cure comes to, by appliance. */
export interface Outcomes {
  readonly findings: readonly Finding[];
  readonly drafts: ReadonlyMap<string, DraftAfterCure>;
}

/** What a house is judged by. */
export interface OutcomesAsked {
  readonly limitSet: LimitSet;
  /** Flues are solved where there are some. */
  readonly flueSets?: readonly LimitSet[];
  readonly signal?: AbortSignal;
}

/**
 * Solves a house over all states and weathers, its flues where they press most, and judges it.
 *
 * @param house - the house
 * @param asked - limits, signal
 * @returns by appliance; nothing where the house does not compile
 */
export async function outcomesOf(house: House, asked: OutcomesAsked): Promise<Outcomes> {
  const { limitSet, flueSets, signal } = asked;
  const watch = signal === undefined ? {} : { signal };
  const result = compileHouse(house);
  if (!result.ok) return { findings: [], drafts: new Map() };
  const { compiled } = result;
  // Extremes alone are wanted, so that the ordering may save what it can.
  const worstCase = await worstCaseStudy(compiled, { listUpTo: 0, ...watch });
  return {
    findings: judge({ house, worstCase, limitSet }),
    drafts:
      flueSets === undefined
        ? new Map()
        : await draftAfterCure(compiled, { worstCase, limitSets: flueSets, ...watch }),
  };
}

/**
 * Of each appliance the worst of several houses.
 *
 * @param houses - the houses
 * @param asked - limits, signal
 * @returns by appliance
 */
export async function worstOutcomes(
  houses: readonly House[],
  asked: OutcomesAsked,
): Promise<Outcomes> {
  const margin = ({ judged }: Finding): number => judged?.marginPa ?? Infinity;
  const worst = new Map<string, Finding>();
  const drafts = new Map<string, DraftAfterCure>();
  for (const house of houses) {
    const outcomes = await outcomesOf(house, asked);
    for (const finding of outcomes.findings) {
      const before = worst.get(finding.appliance);
      if (before === undefined || margin(finding) < margin(before)) {
        worst.set(finding.appliance, finding);
      }
    }
    for (const [appliance, draft] of outcomes.drafts) {
      drafts.set(appliance, worseDraft(drafts.get(appliance), draft));
    }
  }
  return { findings: [...worst.values()], drafts };
}

/**
 * Whether a cure is enough for an appliance: its suction within the limit, and its flue, where that is to be cured,
 * drafting from cold or no opening of the house any more. It is no clearance: what is built is to be tested.
 *
 * @param outcomes - of the house with the cure
 * @param appliance - id
 * @param ofFlue - its flue is to be cured too
 * @returns true where nothing that was computed is beyond or near its limit
 */
export function isEnough(
  { findings, drafts }: Outcomes,
  appliance: string,
  ofFlue: boolean,
): boolean {
  const verdict = findings.find((each) => each.appliance === appliance)?.verdict;
  const draft = ofFlue ? drafts.get(appliance) : undefined;
  if (draft?.verdict === undefined) return verdict === 'within the limit';
  return (
    (verdict === 'within the limit' || verdict === 'not judged') &&
    draft.verdict === 'drafts from cold' &&
    draft.findings.every(
      ({ finding }) =>
        finding.verdict !== 'beyond the limit' && finding.verdict !== 'near the limit',
    )
  );
}

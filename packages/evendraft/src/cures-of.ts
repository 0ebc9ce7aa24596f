import type { House } from '@evendraft/house';
import { cureFindings } from '@evendraft/remedies';
import type { CureResults, DraftResults } from '@evendraft/report';
import type { Finding, LimitSet, Verdict } from '@evendraft/rules';
import type { WorstCaseStudy } from '@evendraft/studies';
import { setsForFlues } from './draft-of.js';

/** Whether cures are solved: where they take few solves, in any case, or not at all. */
export type WhenCures = 'if quick' | 'always' | 'never';

/**
 * A worst case that took more solves than this is not gone through again and again unasked: cures and sizes take
 * it some thirty times.
 */
const mostSolves = 150;
/** Flues that took more situations than this are not solved again with every cure unasked. */
const mostFlueSituations = 24;

/** What cures are solved for. */
export interface CuresInput {
  readonly house: House;
  readonly worstCase: WorstCaseStudy;
  readonly findings: readonly Finding[];
  readonly limitSet: LimitSet;
  /** Sets that were asked for beside it. */
  readonly beside: readonly LimitSet[];
  /** What was found of flues; absent where the house has none. */
  readonly draft: DraftResults | undefined;
  readonly when: WhenCures | undefined;
}

/**
 * Solves the cures of what is beyond or near its limit, and of flues that do not draft from cold.
 *
 * @param input - house, its worst case and findings, when to solve
 * @param options - signal and progress
 * @returns cures with their numbers, or why there are none
 */
export async function curesOf(
  input: CuresInput,
  options: {
    readonly signal?: AbortSignal;
    readonly onProgress?: (done: number, of: number) => void;
  },
): Promise<CureResults> {
  const { house, worstCase, findings, limitSet, beside, draft, when = 'if quick' } = input;
  const flues = pressingFlues(draft);
  const pressing = findings.some(({ verdict }) => isPressing(verdict));
  if (!pressing && flues.length === 0) return { status: 'nothing to cure' };
  if (when === 'never') return { status: 'not solved', why: 'Cures were not asked for.' };
  const { solves } = worstCase.counts;
  if (when === 'if quick' && solves > mostSolves) {
    return {
      status: 'not solved',
      why: `The worst case alone took ${solves} solves, and cures take it some thirty times: ask for them with --cures always.`,
    };
  }
  const situations = draft?.status === 'solved' ? draft.situations : 0;
  const fluesToo = when === 'always' || situations <= mostFlueSituations;
  const cured = await cureFindings(house, limitSet, {
    findings,
    ...(fluesToo && flues.length > 0
      ? { flues: { appliances: flues, limitSets: setsForFlues([limitSet, ...beside]) } }
      : {}),
    ...options,
  });
  return {
    status: 'solved',
    ...(fluesToo
      ? {}
      : {
          fluesNotSolved: `The flues took ${situations} situations, and each cure takes them all again: ask for it with --cures always.`,
        }),
    appliances: cured
      .filter(({ cures }) => cures.length > 0)
      .map(({ finding, cures }) => ({ appliance: finding.appliance, cures })),
  };
}

function isPressing(verdict: Verdict): boolean {
  return verdict === 'beyond the limit' || verdict === 'near the limit';
}

/** Appliances whose flue does not take all gas from cold, or is beyond or near a limit of draft, spillage or gas. */
function pressingFlues(draft: DraftResults | undefined): readonly string[] {
  if (draft?.status !== 'solved') return [];
  return draft.appliances
    .filter(
      ({ worst, findings }) =>
        (worst !== undefined && worst.verdict !== 'drafts from cold') ||
        findings.some(({ finding }) => isPressing(finding.verdict)),
    )
    .map(({ appliance }) => appliance);
}

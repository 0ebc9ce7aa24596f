import type { House } from '@evendraft/house';
import { cureFindings } from '@evendraft/remedies';
import type { CureResults } from '@evendraft/report';
import type { Finding, LimitSet } from '@evendraft/rules';
import type { StateBalance, WorstCaseStudy } from '@evendraft/studies';

/** Whether cures are solved: where they take few solves, in any case, or not at all. */
export type WhenCures = 'if quick' | 'always' | 'never';

/**
 * A worst case that took more solves than this is not gone through again and again unasked: cures and sizes take
 * it some thirty times.
 */
const mostSolves = 150;

/** What cures are solved for. */
export interface CuresInput {
  readonly house: House;
  readonly worstCase: WorstCaseStudy;
  readonly findings: readonly Finding[];
  readonly limitSet: LimitSet;
  /** Whose weather and doors exhaust curves share; no curves where none was solved. */
  readonly worst: StateBalance | undefined;
  readonly when: WhenCures | undefined;
}

/**
 * Solves the cures of what is beyond or near its limit.
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
  const { house, worstCase, findings, limitSet, worst, when = 'if quick' } = input;
  const pressing = findings.some(
    ({ verdict }) => verdict === 'beyond the limit' || verdict === 'near the limit',
  );
  if (!pressing) return { status: 'nothing to cure' };
  if (when === 'never') return { status: 'not solved', why: 'Cures were not asked for.' };
  const { solves } = worstCase.counts;
  if (when === 'if quick' && solves > mostSolves) {
    return {
      status: 'not solved',
      why: `The worst case alone took ${solves} solves, and cures take it some thirty times: ask for them with --cures always.`,
    };
  }
  const { findings: cured, makeUpCurves } = await cureFindings(house, limitSet, {
    findings,
    ...(worst === undefined ? {} : { curvesIn: worst }),
    ...options,
  });
  return {
    status: 'solved',
    appliances: cured
      .filter(({ cures }) => cures.length > 0)
      .map(({ finding, cures }) => ({ appliance: finding.appliance, cures })),
    ...(makeUpCurves === undefined ? {} : { makeUpCurves }),
  };
}

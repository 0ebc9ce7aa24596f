import type { House } from '@evendraft/house';
import { cureFindings } from '@evendraft/remedies';
import type { CureResults } from '@evendraft/report';
import type { Finding, LimitSet } from '@evendraft/rules';
import type { StateBalance, StudyOptions, WorstCaseStudy } from '@evendraft/studies';
import type { Unfinished } from './unfinished-parts.js';

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
 * @param options - signal, what a stop gives, progress
 * @returns cures with their numbers, or why there are none; and how far the work came where it was stopped
 */
export async function curesOf(
  input: CuresInput,
  options: StudyOptions,
): Promise<Unfinished<CureResults>> {
  const { house, worstCase, findings, limitSet, worst, when = 'if quick' } = input;
  const whole = worstCase.stopped === undefined;
  const pressing = findings.some(
    ({ verdict }) => verdict === 'beyond the limit' || verdict === 'near the limit',
  );
  if (findings.length === 0 || (whole && !pressing)) {
    return { result: { status: 'nothing to cure' } };
  }
  if (when === 'never') {
    return { result: { status: 'not solved', why: 'Cures were not asked for.' } };
  }
  // Of a worst case that may not be the worst, cures would be too few and too small.
  if (!whole) return notBegun;
  const { solves } = worstCase.counts;
  if (when === 'if quick' && solves > mostSolves) {
    return {
      result: {
        status: 'not solved',
        why: `The worst case alone took ${solves} solves, and cures take it some thirty times: ask for them with --cures always.`,
      },
    };
  }
  if (isOver(options)) return notBegun;
  let reached: { readonly done: number; readonly of?: number } = { done: 0 };
  const { findings: cured, makeUpCurves } = await cureFindings(house, limitSet, {
    findings,
    ...(worst === undefined ? {} : { curvesIn: worst }),
    ...options,
    onProgress(done, of) {
      reached = { done, of };
      options.onProgress?.(done, of);
    },
  });
  return {
    result: {
      status: 'solved',
      appliances: cured
        .filter(({ cures }) => cures.length > 0)
        .map(({ finding, cures }) => ({ appliance: finding.appliance, cures })),
      ...(makeUpCurves === undefined ? {} : { makeUpCurves }),
    },
    ...(isOver(options) && reached.done !== reached.of ? { stopped: reached } : {}),
  };
}

const notBegun: Unfinished<CureResults> = {
  result: { status: 'not solved', why: 'The work was stopped before the cures were solved.' },
  stopped: { done: 0 },
};

function isOver({ signal, whenStopped }: StudyOptions): boolean {
  return whenStopped === 'keep' && signal?.aborted === true;
}

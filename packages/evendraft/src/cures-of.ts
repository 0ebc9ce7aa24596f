import type { House } from '@evendraft/house';
import { cureFindings } from '@evendraft/remedies';
import { spillsSomewhere, type CureResults, type DraftResults } from '@evendraft/report';
import type { Finding, LimitSet, Verdict } from '@evendraft/rules';
import type { StateBalance, StudyOptions, WorstCaseStudy } from '@evendraft/studies';
import { setsForFlues } from './draft-of.js';
import type { Unfinished } from './unfinished-parts.js';

/** Whether cures are solved: where they take few solves, in any case, or not at all. */
export type WhenCures = 'if quick' | 'always' | 'never';

/**
 * A worst case that took more solves than this is not gone through again and again unasked: cures and sizes take
 * it some thirty times.
 */
const mostSolves = 300;
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
  /** Whose weather and doors exhaust curves share; no curves where none was solved. */
  readonly worst: StateBalance | undefined;
  readonly when: WhenCures | undefined;
}

/**
 * Solves the cures of what is beyond or near its limit, and of flues that do not draft from cold.
 *
 * @param input - house, its worst case and findings, when to solve
 * @param options - signal, what a stop gives, progress
 * @returns cures with their numbers, or why there are none; and how far the work came where it was stopped
 */
export async function curesOf(
  input: CuresInput,
  options: StudyOptions,
): Promise<Unfinished<CureResults>> {
  const { house, worstCase, findings, limitSet, beside, draft, worst, when = 'if quick' } = input;
  const whole = worstCase.stopped === undefined;
  const flues = pressingFlues(draft);
  const pressing = flues.length > 0 || findings.some(({ verdict }) => isPressing(verdict));
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
  const situations = draft?.status === 'solved' ? draft.situations : 0;
  const fluesToo = when === 'always' || situations <= mostFlueSituations;
  let reached: { readonly done: number; readonly of?: number } = { done: 0 };
  const { findings: cured, makeUpCurves } = await cureFindings(house, limitSet, {
    findings,
    ...(fluesToo && flues.length > 0
      ? { flues: { appliances: flues, limitSets: setsForFlues([limitSet, ...beside]) } }
      : {}),
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
      ...(fluesToo
        ? {}
        : {
            fluesNotSolved: `The flues took ${situations} situations, and each cure takes them all again: ask for it with --cures always.`,
          }),
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

function isPressing(verdict: Verdict): boolean {
  return verdict === 'beyond the limit' || verdict === 'near the limit';
}

/** Appliances whose flue does not take all gas from cold, or is beyond or near a limit of draft, spillage or gas. */
function pressingFlues(draft: DraftResults | undefined): readonly string[] {
  if (draft?.status !== 'solved') return [];
  return draft.appliances
    .filter(
      (found) =>
        spillsSomewhere(found) || found.findings.some(({ finding }) => isPressing(finding.verdict)),
    )
    .map(({ appliance }) => appliance);
}

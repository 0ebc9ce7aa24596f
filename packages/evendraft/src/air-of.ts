import type { CompiledHouse, House } from '@evendraft/house';
import { airStudy, failureRows, howFar, judgeAir } from '@evendraft/remedies';
import type { AirResults } from '@evendraft/report';
import type { AirFacts, LimitSet } from '@evendraft/rules';
import {
  closedDamperLeakage,
  dryerStudy,
  type DryerStudy,
  type StudyOptions,
  type WorstCaseStudy,
} from '@evendraft/studies';
import type { Unfinished } from './unfinished-parts.js';

/** Whether the air beside the appliances is solved: where it takes few solves, in any case, or not at all. */
export type WhenAir = 'if quick' | 'always' | 'never';

/** Work beyond this is not done unasked: solves of the worst case, once for each question. */
const mostWork = 600;
/** A house with columns that stand two ways is solved so many times for one of another. */
const columnsCost = 8;

/** What the air is solved for. */
export interface AirInput {
  readonly compiled: CompiledHouse;
  readonly worstCase: WorstCaseStudy;
  readonly limitSet: LimitSet;
  readonly facts: AirFacts;
  readonly when: WhenAir | undefined;
}

/**
 * Solves what the air does beside the appliances, on both signs of pressure, and how far the house may go.
 *
 * @param input - compiled house, its worst case, limits, what the house file does not say, when to solve
 * @param options - signal, what a stop gives, progress
 * @returns the results, or why there are none, undefined where they were not asked for; and how far the work came
 *   where it was stopped
 */
export async function airOf(
  input: AirInput,
  options: StudyOptions,
): Promise<Unfinished<AirResults | undefined>> {
  const { compiled, worstCase, limitSet, facts, when = 'if quick' } = input;
  const { house } = compiled;
  if (when === 'never') return { result: undefined };
  const { solves } = worstCase.counts;
  const questions = house.appliances.length + 2;
  const work = solves * questions * (compiled.twoStateLinks.length > 0 ? columnsCost : 1);
  if (when === 'if quick' && work > mostWork) {
    return {
      result: {
        status: 'not solved',
        why: `The worst case alone took ${solves} solves, and each of ${questions} questions takes it some thirty times: ask for them with --air always.`,
      },
    };
  }
  const { signal, whenStopped, onProgress } = options;
  const watched = signal === undefined ? {} : { signal };
  let done = 0;
  const parts = 4;
  const next = <T>(part: T): T => {
    done += 1;
    onProgress?.(done, parts);
    return part;
  };
  try {
    signal?.throwIfAborted();
    const study = next(await airStudy(compiled, watched));
    return {
      result: {
        status: 'solved',
        guidance: judgeAir(compiled, study, facts),
        howFar: next(await howFar(house, limitSet, watched)),
        dryers: next(await dryersOf(house, watched)),
        failures: next(await failureRows(house, watched)),
        closedDampers: closedDamperLeakage(house),
      },
    };
  } catch (error) {
    if (whenStopped !== 'keep' || signal?.aborted !== true) throw error;
    // A part of these answers would be of no use: each rests on going through all situations.
    return {
      result: { status: 'not solved', why: 'The work was stopped before this was solved.' },
      stopped: { done, of: parts },
    };
  }
}

async function dryersOf(
  house: House,
  watched: { readonly signal?: AbortSignal },
): Promise<readonly DryerStudy[]> {
  const dryers = house.devices.filter(
    ({ kind, direction, speeds }) =>
      kind === 'dryer' && direction === 'exhaust' && speeds.length > 0,
  );
  const studies: DryerStudy[] = [];
  for (const { id } of dryers) studies.push(await dryerStudy(house, { dryer: id }, watched));
  return studies;
}

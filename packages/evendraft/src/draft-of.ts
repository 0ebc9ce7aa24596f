import type { CompiledHouse, House } from '@evendraft/house';
import { spillsSomewhere, type ApplianceDraft, type DraftResults } from '@evendraft/report';
import {
  defaultLimitSet,
  judgeCombustion,
  limitSetById,
  type CombustionFinding,
  type LimitSet,
} from '@evendraft/rules';
import {
  combustionStudy,
  draftVerdicts,
  type ApplianceCombustion,
  type StudyOptions,
  type WorstCaseStudy,
} from '@evendraft/studies';
import type { Unfinished } from './unfinished-parts.js';

/** Whether flues are solved: where they take few situations, in any case, or not at all. */
export type WhenDraft = 'if quick' | 'always' | 'never';

/** So many situations, by the flues in each, take some ten seconds; a house with more is not solved unasked. */
const mostFlueStates = 260;

/** Later set without any limit of pressure: the one whose 2 and 5 minutes of spillage are always shown. */
const spillageSet = 'spillage-and-co-2015';

/** Times at which the course of carbon monoxide is told: a quarter of an hour, an hour, eight hours [s]. */
const toldTimesS = [900, 3600, 28800];

/** What flues are solved for. */
export interface DraftInput {
  readonly compiled: CompiledHouse;
  readonly worstCase: WorstCaseStudy;
  /** Sets that were asked for. */
  readonly limitSets: readonly LimitSet[];
  readonly when: WhenDraft | undefined;
}

/**
 * Solves the flues of a house with the house, and holds draft, spillage and carbon monoxide against limits.
 *
 * @param input - compiled house, its worst case, limit sets, when to solve
 * @param options - signal, what a stop gives, progress
 * @returns the results, or why there are none, undefined where no appliance has a flue in the house file; and how far
 *   the work came where it was stopped
 */
export async function draftOf(
  input: DraftInput,
  options: StudyOptions,
): Promise<Unfinished<DraftResults | undefined>> {
  const { compiled, worstCase, when = 'if quick' } = input;
  const { house } = compiled;
  if (house.appliances.every(({ flue }) => flue === undefined)) return { result: undefined };
  if (when === 'never') {
    return { result: { status: 'not solved', why: 'Flues were not asked for.' } };
  }
  const most = situationsAtMost(house);
  const flues = house.appliances.filter(({ flue }) => flue !== undefined).length;
  // A situation takes the longer the more flues there are in it.
  if (when === 'if quick' && most * flues > mostFlueStates) {
    return {
      result: {
        status: 'not solved',
        why: `The flues take up to ${most} situations, which is long: ask for them with --draft always.`,
      },
    };
  }
  if (options.whenStopped === 'keep' && options.signal?.aborted === true) {
    return {
      result: { status: 'not solved', why: 'The work was stopped before the flues were solved.' },
      stopped: { done: 0 },
    };
  }
  const study = await combustionStudy(compiled, { worstCase, ...options });
  const limitSets = setsForFlues(input.limitSets);
  const findings = limitSets.flatMap((limitSet) => judgeCombustion({ limitSet, house, study }));
  return {
    result: {
      status: 'solved',
      situations: study.situations,
      limitSets: limitSets.map(({ id, name, edition }) => ({ id, name, edition })),
      appliances: study.appliances.map((found) => applianceDraft(found, findings)),
      notStudied: study.notStudied,
    },
    ...(study.stopped === undefined ? {} : { stopped: study.stopped }),
  };
}

/**
 * Appliances whose flue leaves gas in the room in a situation that was solved, though it be only from cold.
 *
 * @param draft - the results
 * @returns ids, and whether it does so with nothing running
 */
export function spillingAppliances(
  draft: DraftResults | undefined,
): readonly { readonly appliance: string; readonly withNothingRunning: boolean }[] {
  if (draft?.status !== 'solved') return [];
  return draft.appliances
    .filter(spillsSomewhere)
    .map(({ appliance, spillsWithNothingRunning }) => ({
      appliance,
      withNothingRunning: spillsWithNothingRunning,
    }));
}

/**
 * Three in each weather and one more for each door, each door and air handler of the house the other way; each stage alone and with others on its
 * chimney, and those with doors as usual twice more where there are flues beside it.
 */
function situationsAtMost({ appliances, weathers, doors, forcedAir = [] }: House): number {
  const states = (3 + doors.length) * weathers.length + doors.length + forcedAir.length;
  const firings = appliances.flatMap(({ id, flue }) => {
    if (flue === undefined) return [];
    const owner = flue.joins ?? id;
    const shared = appliances.some(
      (other) => other.id !== id && (other.flue?.joins ?? other.id) === owner,
    );
    const beside = appliances.some(
      (other) => other.flue !== undefined && (other.flue.joins ?? other.id) !== owner,
    );
    const burning = flue.stages.filter(({ ventFlowKgPerS }) => ventFlowKgPerS > 0);
    const usual = burning.filter(({ name }) => !name.includes(','));
    return [burning.length * (shared ? 2 : 1) + (beside ? 2 * usual.length : 0)];
  });
  return states * firings.reduce((sum, each) => sum + each, 0);
}

/**
 * Sets that are held against flues: those that were asked for, with those of the default set where none of them limits
 * draft, and the 2 and 5 minutes of spillage beside them.
 *
 * @param asked - the sets that were asked for
 * @returns sets that limit draft, spillage time or carbon monoxide, each once
 */
export function setsForFlues(asked: readonly LimitSet[]): readonly LimitSet[] {
  const withDraft = asked.some(({ draftLimits }) => (draftLimits?.length ?? 0) > 0)
    ? asked
    : [...asked, defaultLimitSet];
  const spillage = limitSetById(spillageSet);
  const all = spillage === undefined ? withDraft : [...withDraft, spillage];
  return all.filter(
    (set, i) =>
      all.findIndex(({ id }) => id === set.id) === i &&
      [set.draftLimits, set.spillageTimes, set.ambientCo].some((limits) => limits !== undefined),
  );
}

function applianceDraft(
  found: ApplianceCombustion,
  findings: readonly CombustionFinding[],
): ApplianceDraft {
  const { appliance, zone, situations, courses, spilled, byTemperature } = found;
  const worst = worstOf(found);
  const reasons = [...new Set(found.unjudged.map(({ reason }) => reason))];
  return {
    appliance,
    zone,
    ...(worst === undefined ? {} : { worst }),
    verdicts: draftVerdicts
      .map((verdict) => ({
        verdict,
        situations: situations.filter((each) => each.verdict === verdict).length,
      }))
      .filter((each) => each.situations > 0),
    spillsWithNothingRunning: situations.some(
      ({ state, verdict }) =>
        verdict !== 'drafts from cold' && Object.keys(state.running).length === 0,
    ),
    unjudged: reasons.map((reason) => ({
      reason,
      situations: found.unjudged.filter((each) => each.reason === reason).length,
    })),
    starts: courses.map(({ start, spillageS, settled, rows }) => ({
      start,
      spillageS,
      settled,
      followedS: rows.at(-1)?.timeS ?? 0,
    })),
    ...(spilled === undefined ? {} : { spilled: spilledAir(spilled) }),
    byTemperature,
    findings: findings.filter((each) => each.appliance === appliance),
  };
}

function worstOf({ appliance, situations }: ApplianceCombustion): ApplianceDraft['worst'] {
  const [worst] = situations;
  if (worst === undefined) return undefined;
  const { label, weather, airtightness, firing, verdict, heldByFan, states, thresholds } = worst;
  const reading = (state: number) =>
    states[state]?.flues.find((flue) => flue.appliance === appliance);
  const [fromCold, fromWarm] = [reading(worst.fromCold), reading(worst.fromWarm)];
  if (fromCold === undefined || fromWarm === undefined) return undefined;
  return {
    ...{ label, weather, airtightness, firing, verdict, heldByFan },
    tapDraftPa: fromWarm.tapDraftPa,
    spilledShare: { fromCold: fromCold.spilledShare, fromWarm: fromWarm.spilledShare },
    ...(thresholds === undefined ? {} : { thresholds }),
  };
}

function spilledAir(
  spilled: NonNullable<ApplianceCombustion['spilled']>,
): NonNullable<ApplianceDraft['spilled']> {
  const { label, weather, airtightness, firing, carbonMonoxideAirFreePpm, timesS } = spilled;
  const told = toldTimesS.flatMap((wanted) => {
    const index = timesS.findIndex((timeS) => Math.abs(timeS - wanted) < 1);
    return index < 0 ? [] : [index];
  });
  return {
    ...{ label, weather, airtightness, firing, carbonMonoxideAirFreePpm },
    timesS: told.map((index) => timesS[index]!),
    zones: spilled.zones.map((zone) => ({
      ...zone,
      carbonMonoxideCoursePpm: told.map((index) => zone.carbonMonoxideCoursePpm[index]!),
    })),
  };
}

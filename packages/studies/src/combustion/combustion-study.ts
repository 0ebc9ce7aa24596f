import {
  houseWeather,
  type Appliance,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { nextTurn } from '../internal/next-turn.js';
import { resolveColumns } from '../resolve-columns.js';
import type { Situation } from '../state-balance.js';
import { stopCheck } from '../internal/stop-check.js';
import type { Stopped, StudyOptions } from '../study-options.js';
import type { WorstCaseStudy } from '../worst-case-study.js';
import {
  combustionSituation,
  draftVerdicts,
  type CombustionSituation,
  type SolvedCombustion,
} from './combustion-situation.js';
import { draftByTemperature, type DraftAtTemperature } from './draft-by-temperature.js';
import type { FlueSituation } from './flues-of-situation.js';
import { houseWithoutFlues, type HouseWithoutFlues } from './house-without-flues.js';
import {
  situationsToStudy,
  type SituationReason,
  type SituationToStudy,
} from './internal/situations-to-study.js';
import { spilledInRooms, type SpilledInRooms } from './spilled-in-rooms.js';
import { statesOfFlues, type StatesOfFlues } from './states-of-flues.js';
import { startCourse, type StartCourse } from './start-course.js';

export type { SituationReason } from './internal/situations-to-study.js';

/** What a combustion study is asked. */
export interface CombustionOptions extends StudyOptions {
  /** Extremes of the zones in which appliances stand. */
  readonly worstCase: Pick<WorstCaseStudy, 'appliances'>;
  /**
   * Carbon monoxide in the dry gas without excess air, by appliance [ppm]. Absent, 400 ppm of gas and oil, the most that
   * common action levels accept of several kinds of appliance (from memory), and 5,000 ppm of wood and pellets (no
   * source); both are our choice as a start.
   */
  readonly carbonMonoxideAirFreePpm?: Readonly<Record<string, number>>;
  /** Temperatures for draft against temperature [°C]; from −30 to 35 in steps of 5 when absent. */
  readonly temperaturesC?: readonly number[];
}

/** One situation of an appliance, and why it was looked at. */
export interface StudiedSituation extends CombustionSituation {
  readonly why: SituationReason;
}

/** A situation that could not be judged. */
export interface UnjudgedSituation extends SituationToStudy {
  readonly appliance: string;
  readonly firing: Readonly<Record<string, string>>;
  readonly reason: string;
}

/** An appliance with a flue, over the situations that were looked at. */
export interface ApplianceCombustion {
  readonly appliance: string;
  readonly zone: string;
  /** The least favourable first. */
  readonly situations: readonly StudiedSituation[];
  readonly unjudged: readonly UnjudgedSituation[];
  /** Courses of the least favourable situation. */
  readonly courses: readonly StartCourse[];
  /**
   * Gas in rooms in the situation that holds most carbon monoxide in a zone, flues as they come to rest from cold;
   * absent where nothing spills. It is seldom the situation with most suction, which airs the house.
   */
  readonly spilled?: SpilledInRooms &
    Situation & { readonly firing: Readonly<Record<string, string>> };
  /** With nothing running, and as in the least favourable situation; walls at rest. */
  readonly byTemperature: readonly {
    readonly what: 'nothing running' | 'least favourable';
    readonly rows: readonly DraftAtTemperature[];
  }[];
}

/** Combustion safety of a house; plain JSON. It screens for risk: no number in it clears an appliance. */
export interface CombustionStudy {
  readonly question: 'combustion';
  readonly appliances: readonly ApplianceCombustion[];
  /** Appliances that are not in it, and why. */
  readonly notStudied: readonly { readonly appliance: string; readonly reason: string }[];
  /** How many situations were looked at, in all; states beyond these were not. */
  readonly situations: number;
  /** Present where the study was stopped: appliances that it had not finished then are not in it. */
  readonly stopped?: Stopped;
}

const usualAirFreePpm = { burner: 400, wood: 5000 };
const usualTemperaturesC: readonly number[] = Array.from({ length: 14 }, (_, i) => -30 + 5 * i);

/**
 * Whether each appliance of a house drafts, spills or runs backwards, in the situations that press it most.
 *
 * For each appliance with a flue: every state in which flow and temperature agree, the draft at the test tap, the
 * suctions at which a cold flue still establishes draft and a hot one reverses, how long it spills when it starts cold
 * and warm, what spilled gas makes of the rooms, and the draft against outdoor temperature. Where several appliances
 * share a chimney each fires alone and all together; a hearth in each stage of its fire.
 *
 * Quasi-steady, one temperature over each cross section, gas as heavy as air of its temperature, rooms well mixed, no
 * gusts, no inertia. The states of the house are those named in `why`, not all: depth at an appliance is proved over
 * all states by the worst case, the verdict over those listed.
 *
 * @param compiled - the compiled house
 * @param options - worst case, carbon monoxide, temperatures
 * @returns the study
 */
export async function combustionStudy(
  compiled: CompiledHouse,
  options: CombustionOptions,
): Promise<CombustionStudy> {
  const { house } = compiled;
  const withFlue = house.appliances.filter(({ flue }) => flue !== undefined);
  const without = house.appliances.filter(({ flue }) => flue === undefined);
  const notStudied = without.map(({ id }) => ({ appliance: id, reason: 'no flue is described' }));
  const rest = houseWithoutFlues(compiled);
  if ('withoutAir' in rest) {
    const reason = `without flues air has no other way at ${rest.withoutAir.join(', ')}`;
    const all = withFlue.map(({ id }) => ({ appliance: id, reason }));
    return {
      question: 'combustion',
      appliances: [],
      notStudied: [...notStudied, ...all],
      situations: 0,
    };
  }
  const tasks = withFlue.map((appliance) => ({
    appliance,
    situations: situationsToStudy(house, appliance, options.worstCase).flatMap((each) =>
      firingsOf(withFlue, appliance).map((firing) => ({ ...each, firing })),
    ),
  }));
  const total = tasks.reduce((sum, { situations }) => sum + situations.length, 0);
  const weathers = new Map(
    house.weathers.map((weather) => [weather.name, houseWeather(house, weather)]),
  );
  const statesOf = statesOfFlues(compiled, rest);
  let done = 0;
  const stopped = stopCheck(options);
  const appliances: ApplianceCombustion[] = [];
  for (const { appliance, situations } of tasks) {
    if (stopped()) break;
    const judged: { why: SituationReason; solved: SolvedCombustion }[] = [];
    const unjudged: UnjudgedSituation[] = [];
    for (const each of situations) {
      if (stopped()) break;
      const solved = solveSituation(compiled, statesOf, { ...each, appliance, weathers });
      if ('reason' in solved) {
        unjudged.push({ ...each, appliance: appliance.id, reason: solved.reason });
      } else judged.push({ why: each.why, solved });
      done += 1;
      options.onProgress?.(done, total);
      await nextTurn();
    }
    if (judged.length + unjudged.length < situations.length) break;
    appliances.push(summary(compiled, rest, { appliance, judged, unjudged, weathers, options }));
  }
  const unfinished = tasks.slice(appliances.length).map(({ appliance }) => ({
    appliance: appliance.id,
    reason: 'the work was stopped before all of its situations were solved',
  }));
  return {
    question: 'combustion',
    appliances,
    notStudied: [...notStudied, ...unfinished],
    situations: done,
    ...(unfinished.length > 0 ? { stopped: { done, of: total } } : {}),
  };
}

type Weathers = ReadonlyMap<string, HouseWeather>;

function solveSituation(
  compiled: CompiledHouse,
  statesOf: (situation: FlueSituation) => StatesOfFlues,
  of: SituationToStudy & {
    readonly appliance: Appliance;
    readonly firing: Readonly<Record<string, string>>;
    readonly weathers: Weathers;
  },
): SolvedCombustion | { readonly reason: string } {
  const { appliance, firing, state, weathers } = of;
  const weather = weathers.get(of.weather);
  const airtightnessCase = compiled.house.airtightness.cases.findIndex(
    ({ name }) => name === of.airtightness,
  );
  if (weather === undefined || airtightnessCase < 0) return { reason: 'unknown situation' };
  const columns = shaftColumns(compiled, { state, weather, airtightnessCase });
  return combustionSituation(compiled, statesOf, {
    ...{ appliance: appliance.id, state, firing, weather, airtightnessCase },
    ...(columns === undefined ? {} : { columns }),
  });
}

/** How the columns of shafts stand in the least favourable balance of a situation; those of flues do not matter. */
function shaftColumns(
  compiled: CompiledHouse,
  situation: {
    readonly state: OperatingState;
    readonly weather: HouseWeather;
    readonly airtightnessCase: number;
  },
): readonly ('upward' | 'downward')[] | undefined {
  const { twoStateLinks, links } = compiled;
  if (twoStateLinks.every(({ index }) => links[index]!.role.kind === 'flue')) return undefined;
  const { columns } = resolveColumns(compiled, situation);
  return twoStateLinks.map(({ id }) =>
    columns?.states.find(({ link }) => link === id)?.state === 'downward' ? 'downward' : 'upward',
  );
}

/**
 * Alone in each of its stages that burns, doors open and shut, and with all that share its chimney. With flues beside
 * it, in each stage with doors as usual: all of those burning as strongly as they can, and all of those idle but open,
 * the dampers of hearths left open and the rest standing warm.
 */
function firingsOf(
  all: readonly Appliance[],
  appliance: Appliance,
): readonly Readonly<Record<string, string>>[] {
  const stagesOf = ({ flue }: Appliance): readonly string[] =>
    (flue?.stages ?? []).filter(({ ventFlowKgPerS }) => ventFlowKgPerS > 0).map(({ name }) => name);
  const owner = ({ id, flue }: Appliance): string => flue?.joins ?? id;
  const others = all.filter(
    (other) => other.id !== appliance.id && owner(other) === owner(appliance),
  );
  const beside = all.filter((other) => owner(other) !== owner(appliance));
  return stagesOf(appliance).flatMap((stage) => {
    const alone = { [appliance.id]: stage };
    const together = others.flatMap((other) => {
      const [first] = stagesOf(other);
      return first === undefined ? [] : [[other.id, first] as const];
    });
    const withPartners = { ...alone, ...Object.fromEntries(together) };
    const own = together.length === 0 ? [alone] : [alone, withPartners];
    if (beside.length === 0 || stage.includes(',')) return own;
    const burning = Object.fromEntries(beside.flatMap(strongestStage));
    const idle = Object.fromEntries(beside.flatMap(idleStage));
    return [...own, { ...withPartners, ...burning }, { ...alone, ...idle }];
  });
}

/** The stage in which a flue draws most. */
function strongestStage({ id, flue }: Appliance): readonly (readonly [string, string])[] {
  const [first, ...rest] = flue?.stages ?? [];
  if (first === undefined) return [];
  const { name } = rest.reduce(
    (most, each) => (each.ventFlowKgPerS > most.ventFlowKgPerS ? each : most),
    first,
  );
  return [[id, name]];
}

/** A stage without fire in which a flue still draws: its damper left open, or warm from before. */
function idleStage({ id, flue }: Appliance): readonly (readonly [string, string])[] {
  const names = (flue?.stages ?? []).map(({ name }) => name);
  const idle = ['damper open', 'standing warm'].find((name) => names.includes(name));
  return idle === undefined ? [] : [[id, idle]];
}

function summary(
  compiled: CompiledHouse,
  rest: HouseWithoutFlues,
  of: {
    readonly appliance: Appliance;
    readonly judged: readonly {
      readonly why: SituationReason;
      readonly solved: SolvedCombustion;
    }[];
    readonly unjudged: readonly UnjudgedSituation[];
    readonly weathers: Weathers;
    readonly options: CombustionOptions;
  },
): ApplianceCombustion {
  const { appliance, unjudged, weathers, options } = of;
  const judged = [...of.judged].sort((a, b) => leastFavourable(a.solved, b.solved));
  const worst = judged[0];
  const base = {
    appliance: appliance.id,
    zone: appliance.zone,
    situations: judged.map(({ why, solved }): StudiedSituation => ({ ...solved.situation, why })),
    unjudged,
  };
  if (worst === undefined) return { ...base, courses: [], byTemperature: [] };
  const { situation, set } = worst.solved;
  const index = set.flues.findIndex((flue) => flue.appliance.id === appliance.id);
  const inFile = compiled.house.weathers.find(({ name }) => name === situation.weather)!;
  const airtightnessCase = compiled.house.airtightness.cases.findIndex(
    ({ name }) => name === situation.airtightness,
  );
  const spilled = mostSpilled(
    judged.flatMap(({ solved }) => spilledIn(compiled, solved, { weathers, options }) ?? []),
  );
  const byTemperature = (state: OperatingState): readonly DraftAtTemperature[] =>
    draftByTemperature(compiled, rest, {
      ...{ appliance: appliance.id, state, firing: situation.firing, weather: inFile },
      airtightnessCase,
      temperaturesC: options.temperaturesC ?? usualTemperaturesC,
    });
  return {
    ...base,
    courses: (['cold', 'warm'] as const).flatMap((start) => {
      const course = startCourse(compiled, worst.solved, { start, index });
      return course === undefined ? [] : [course];
    }),
    ...(spilled === undefined ? {} : { spilled }),
    byTemperature: [
      {
        what: 'nothing running',
        rows: byTemperature({ running: {}, doors: situation.state.doors }),
      },
      { what: 'least favourable', rows: byTemperature(situation.state) },
    ],
  };
}

type Spilled = NonNullable<ApplianceCombustion['spilled']>;

/** Spilled gas in one situation, as flues come to rest from cold. */
function spilledIn(
  compiled: CompiledHouse,
  { situation, set, balances }: SolvedCombustion,
  of: { readonly weathers: Weathers; readonly options: CombustionOptions },
): Spilled | undefined {
  const balance = balances[situation.fromCold];
  const weather = of.weathers.get(situation.weather);
  const { spilledShare, massFlowKgPerS } = readingOf(situation, situation.fromCold);
  if (spilledShare <= 1e-6) return undefined;
  // What leaks from a vent under pressure is not in the balance, which takes all of it up.
  const own = set.flues.find((flue) => flue.appliance.id === situation.appliance);
  if (own?.leaksUnderPressure === true && massFlowKgPerS > 0) return undefined;
  if (balance === undefined || weather === undefined) return undefined;
  const { state, label, airtightness, firing, appliance } = situation;
  const { fuel, vent } = compiled.house.appliances.find(({ id }) => id === appliance)!;
  const burnsWood =
    fuel === 'wood' ||
    fuel === 'pellets' ||
    (fuel === 'not stated' && (vent === 'open hearth' || vent === 'closed stove'));
  const carbonMonoxideAirFreePpm =
    of.options.carbonMonoxideAirFreePpm?.[appliance] ??
    usualAirFreePpm[burnsWood ? 'wood' : 'burner'];
  return {
    ...{ state, label, weather: situation.weather, airtightness, firing },
    ...spilledInRooms(compiled, { balance, weather, flues: set.flues, carbonMonoxideAirFreePpm }),
  };
}

function mostSpilled(all: readonly Spilled[]): Spilled | undefined {
  const most = ({ zones }: Spilled): number =>
    Math.max(...zones.map(({ carbonMonoxidePpm }) => carbonMonoxidePpm ?? Infinity));
  return all.reduce<Spilled | undefined>(
    (worst, each) => (worst === undefined || most(each) > most(worst) ? each : worst),
    undefined,
  );
}

/** Its own reading in one of the states of a situation. */
function readingOf(situation: CombustionSituation, state: number) {
  const { flues } = situation.states[state]!;
  return flues.find(({ appliance }) => appliance === situation.appliance)!;
}

/** By verdict, then by what spills from cold, then by the weaker draft of the hot flue. */
function leastFavourable(one: SolvedCombustion, other: SolvedCombustion): number {
  const rank = ({ situation }: SolvedCombustion): number =>
    draftVerdicts.indexOf(situation.verdict);
  const spilled = ({ situation }: SolvedCombustion): number =>
    readingOf(situation, situation.fromCold).spilledShare;
  const draft = ({ situation }: SolvedCombustion): number =>
    readingOf(situation, situation.fromWarm).tapDraftPa;
  return (
    rank(one) - rank(other) ||
    Math.round(1e3 * (spilled(other) - spilled(one))) ||
    draft(other) - draft(one)
  );
}

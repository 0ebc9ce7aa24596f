import {
  houseWeather,
  insideZoneKinds,
  operatingStates,
  type Appliance,
  type CompiledHouse,
  type OperatingState,
  type Zone,
} from '@evendraft/house';
import { balanceStudy, baselineStudy, type BaselineResult } from './balance-study.js';
import type { Situation, StateBalance, UnsolvedState, ZonePressure } from './state-balance.js';

/** The lowest pressure that one zone reaches, and where. */
export interface ZoneWorst {
  readonly zone: string;
  /** Situation with the lowest pressure against outdoors. */
  readonly lowest: WorstPressure;
  /** Situation with the largest fall below its own baseline. */
  readonly largestFall: WorstPressure;
}

/** One extreme with its situation. */
export interface WorstPressure extends Situation {
  readonly pressurePa: number;
  readonly changeFromBaselinePa: number;
  /** Pressure of the zone in the baseline that belongs to it [Pa]. */
  readonly baselinePa: number;
}

/** The worst situation for one appliance: that of the zone it stands in. */
export interface ApplianceWorst {
  readonly appliance: string;
  readonly zone: string;
  readonly lowest: WorstPressure;
  readonly largestFall: WorstPressure;
}

/** All states in all weathers at all airtightness cases; plain JSON. */
export interface WorstCaseStudy {
  readonly question: 'worst case';
  /** The deepest of all, deepest first, by the lowest pressure of any living zone, basement or closet. */
  readonly situations: readonly StateBalance[];
  readonly unsolved: readonly UnsolvedState[];
  readonly zones: readonly ZoneWorst[];
  readonly appliances: readonly ApplianceWorst[];
  readonly counts: {
    readonly states: number;
    readonly weathers: number;
    readonly airtightnessCases: number;
    readonly solves: number;
  };
  /** The weakest proof among all solves. */
  readonly proof: {
    readonly largestRelativeResidual: number;
    readonly largestEnclosureRadiusPa: number | null;
    readonly notEnclosed: number;
    readonly mostIterations: number;
  };
}

/** How a long study is watched and stopped. */
export interface StudyOptions {
  /** Stops the study; it then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
  /** How many situations the result lists; extremes are over all of them. 2,000 when absent. */
  readonly keep?: number;
}

/** Solves between two looks at the signal, so that a page or a terminal stays alive. */
const solvesPerTurn = 200;

/**
 * Goes through every operating state in every weather at every airtightness case and keeps the extremes.
 *
 * A baseline is solved once for each weather, door position and airtightness case.
 *
 * @param compiled - the compiled house
 * @param options - signal, progress, how many situations to list
 * @returns the study; situations that could not be solved are listed apart
 */
export async function worstCaseStudy(
  compiled: CompiledHouse,
  options: StudyOptions = {},
): Promise<WorstCaseStudy> {
  const { house } = compiled;
  const { signal, onProgress, keep = 2000 } = options;
  const states = operatingStates(house);
  const cases = house.airtightness.cases.length;
  const total = states.length * house.weathers.length * cases;
  const solved: StateBalance[] = [];
  const unsolved: UnsolvedState[] = [];
  const baselines = new Map<string, BaselineResult>();
  let done = 0;

  for (let airtightnessCase = 0; airtightnessCase < cases; airtightnessCase += 1) {
    for (const weather of house.weathers.map((each) => houseWeather(house, each))) {
      for (const state of states) {
        const question = { state, weather, airtightnessCase };
        const key = baselineKey(question);
        const baseline = baselines.get(key) ?? baselineStudy(compiled, question);
        baselines.set(key, baseline);
        const balance = balanceStudy(compiled, question, baseline);
        if (balance.status === 'solved') solved.push(balance);
        else unsolved.push(balance);
        done += 1;
        if (done % solvesPerTurn === 0) {
          onProgress?.(done, total);
          await nextTurn();
          signal?.throwIfAborted();
        }
      }
    }
  }
  onProgress?.(done, total);

  const depth = depthOf(house.zones);
  const deepestFirst = solved
    .map((balance) => ({ balance, depth: inTies(depth(balance)) }))
    .sort((a, b) => a.depth - b.depth)
    .map(({ balance }) => balance);
  const zones = house.zones.flatMap((_, index) => zoneWorst(index, deepestFirst));
  return {
    question: 'worst case',
    situations: deepestFirst.slice(0, keep),
    unsolved,
    zones,
    appliances: house.appliances.flatMap((appliance) => applianceWorst(appliance, zones)),
    counts: {
      states: states.length,
      weathers: house.weathers.length,
      airtightnessCases: cases,
      solves: done + baselines.size,
    },
    proof: weakestProof(deepestFirst),
  };
}

/**
 * Pressures this close count as equal, far above what the proof leaves open and far below what is printed [Pa].
 * States that tie, such as a fan beyond its shut-off and the same fan off, then keep the order in which they
 * were studied, whatever the last bit of a solve.
 */
const tiePa = 1e-4;

function inTies(pressurePa: number): number {
  return Math.round(pressurePa / tiePa);
}

function baselineKey(question: {
  readonly state: OperatingState;
  readonly weather: { readonly name: string };
  readonly airtightnessCase: number;
}): string {
  return JSON.stringify([
    question.airtightnessCase,
    question.weather.name,
    Object.entries(question.state.doors),
  ]);
}

/** Lets other work run between blocks of solves; a timer is the one way that every runtime has. */
function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}

function depthOf(zones: readonly Zone[]): (balance: StateBalance) => number {
  const inside = zones.map((z) => insideZoneKinds.includes(z.kind));
  return (balance) =>
    balance.zones.reduce(
      (least, z, i) => (inside[i] ? Math.min(least, z.pressurePa) : least),
      Infinity,
    );
}

/** The worst readings of the zone at an index, the first of those that tie. */
function zoneWorst(index: number, balances: readonly StateBalance[]): readonly ZoneWorst[] {
  const worst = (of: (reading: ZonePressure) => number): WorstPressure | undefined => {
    let found: { balance: StateBalance; reading: ZonePressure } | undefined;
    for (const balance of balances) {
      const reading = balance.zones[index];
      if (reading === undefined) continue;
      if (found === undefined || inTies(of(reading)) < inTies(of(found.reading))) {
        found = { balance, reading };
      }
    }
    return found === undefined ? undefined : worstPressure(found.balance, found.reading);
  };
  const lowest = worst((reading) => reading.pressurePa);
  const largestFall = worst((reading) => reading.changeFromBaselinePa);
  const zone = balances[0]?.zones[index]?.zone;
  if (zone === undefined || lowest === undefined || largestFall === undefined) return [];
  return [{ zone, lowest, largestFall }];
}

function worstPressure(balance: StateBalance, reading: ZonePressure): WorstPressure {
  const { state, label, weather, airtightness } = balance;
  const { pressurePa, changeFromBaselinePa } = reading;
  return {
    state,
    label,
    weather,
    airtightness,
    pressurePa,
    changeFromBaselinePa,
    baselinePa: pressurePa - changeFromBaselinePa,
  };
}

function applianceWorst(
  appliance: Appliance,
  zones: readonly ZoneWorst[],
): readonly ApplianceWorst[] {
  const worst = zones.find((zone) => zone.zone === appliance.zone);
  return worst === undefined ? [] : [{ appliance: appliance.id, ...worst }];
}

function weakestProof(solved: readonly StateBalance[]): WorstCaseStudy['proof'] {
  const radii = solved.flatMap(({ proof }) => proof.enclosureRadiusPa ?? []);
  const largest = (values: readonly number[]): number =>
    values.reduce((most, value) => Math.max(most, value), 0);
  return {
    largestRelativeResidual: largest(solved.map(({ proof }) => proof.largestRelativeResidual)),
    largestEnclosureRadiusPa: radii.length === 0 ? null : largest(radii),
    notEnclosed: solved.length - radii.length,
    mostIterations: largest(solved.map(({ proof }) => proof.iterations)),
  };
}

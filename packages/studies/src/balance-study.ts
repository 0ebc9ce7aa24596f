import {
  baselineOf,
  stateLabel,
  type CompiledHouse,
  type FollowedState,
  type OperatingState,
  type HouseWeather,
} from '@evendraft/house';
import type { Balance, SolveResult } from '@evendraft/network';
import { lawRangeWarnings } from './law-range-warnings.js';
import { resolveColumns, type ResolvedSituation } from './resolve-columns.js';
import type {
  BalanceCount,
  ColumnFindings,
  DeliveredFlow,
  MakeUpFlow,
  ProofSummary,
  Situation,
  StateBalance,
  UnsolvedState,
} from './state-balance.js';

/** What one balance is asked for. */
export interface BalanceQuestion {
  readonly state: OperatingState;
  /** As `houseWeather` works it out, once for all states. */
  readonly weather: HouseWeather;
  /** Index into the house's airtightness cases; the first when absent. */
  readonly airtightnessCase?: number;
}

/** Pressures of the baseline that belongs to a question, zone by zone [Pa], or why it has none. */
export type BaselineResult =
  | {
      readonly status: 'solved';
      readonly pressuresPa: readonly number[];
      /** Present where air in a shaft or flue may go either way. */
      readonly columns?: BalanceCount;
    }
  | { readonly status: 'not solved'; readonly unsolved: UnsolvedState };

/**
 * Pressures with everything off, in the same weather, doors and airtightness as a question.
 *
 * A fall is counted from the baseline. Where air in shafts and flues can stand in several ways each zone takes its
 * highest pressure over all stable balances, so that no fall is counted too small.
 *
 * @param compiled - the compiled house
 * @param question - the state whose baseline is wanted
 * @returns zone pressures in the house's order [Pa], or why there are none
 */
export function baselineStudy(compiled: CompiledHouse, question: BalanceQuestion): BaselineResult {
  const baseline = { ...question, state: baselineOf(question.state) };
  const { result, span, columns } = solve(compiled, baseline);
  if (result.status !== 'solved') {
    const situation = situationOf(compiled, baseline);
    return { status: 'not solved', unsolved: unsolvedState(compiled, situation, result) };
  }
  const pressuresPa =
    span?.highestPa ?? result.pressuresPa.subarray(0, compiled.house.zones.length);
  return {
    status: 'solved',
    pressuresPa: Array.from(pressuresPa),
    ...(columns === undefined ? {} : { columns: countOf(columns) }),
  };
}

/**
 * One state in one weather: the pressure of every zone, what every device delivers, and the proof.
 *
 * @param compiled - the compiled house
 * @param question - state, weather and airtightness case
 * @param baseline - its baseline, where the caller has solved it already
 * @returns the balance, or why there is none
 */
export function balanceStudy(
  compiled: CompiledHouse,
  question: BalanceQuestion,
  baseline: BaselineResult = baselineStudy(compiled, question),
): StateBalance | UnsolvedState {
  if (baseline.status === 'not solved') return baseline.unsolved;
  const situation = situationOf(compiled, question);
  const { result, span, followed, scenario, columns } = solve(compiled, question);
  if (result.status !== 'solved') return unsolvedState(compiled, situation, result);
  const { lowestPa } = span ?? { lowestPa: result.pressuresPa };
  const warnings = lawRangeWarnings(compiled, result, scenario);
  return {
    ...situation,
    status: 'solved',
    zones: compiled.house.zones.map((zone, i) => {
      const pressurePa = lowestPa[i] ?? Number.NaN;
      return {
        zone: zone.id,
        pressurePa,
        changeFromBaselinePa: pressurePa - (baseline.pressuresPa[i] ?? Number.NaN),
      };
    }),
    devices: deliveredFlows(compiled, { followed, question, balance: result }),
    makeUp: makeUpFlows(compiled, followed, result),
    ...(columns === undefined ? {} : { columns }),
    ...(baseline.columns === undefined ? {} : { baselineColumns: baseline.columns }),
    ...(warnings.length === 0 ? {} : { warnings }),
    proof: proofSummary(compiled, result, columns),
  };
}

function solve(compiled: CompiledHouse, question: BalanceQuestion): ResolvedSituation {
  const { state, weather, airtightnessCase = 0 } = question;
  return resolveColumns(compiled, { state, weather, airtightnessCase });
}

function countOf({ stableBalances, counted, complete }: ColumnFindings): BalanceCount {
  return { stableBalances, counted, complete };
}

function situationOf(compiled: CompiledHouse, question: BalanceQuestion): Situation {
  return {
    state: question.state,
    label: stateLabel(compiled.house, question.state),
    weather: question.weather.name,
    airtightness: compiled.leakage[question.airtightnessCase ?? 0]?.name ?? 'tested',
  };
}

function unsolvedState(
  compiled: CompiledHouse,
  situation: Situation,
  result: Exclude<SolveResult, { readonly status: 'solved' }>,
): UnsolvedState {
  return {
    ...situation,
    status: 'not solved',
    reason: result.status,
    concerns: [...new Set(result.zones.map((zone) => inHouse(compiled, zone)))],
    hint: result.hint,
  };
}

function deliveredFlows(
  compiled: CompiledHouse,
  of: {
    readonly followed: FollowedState;
    readonly question: BalanceQuestion;
    readonly balance: Balance;
  },
): readonly DeliveredFlow[] {
  return compiled.links.flatMap(({ role }, i) => {
    if (role.kind !== 'device' || of.followed.running.get(role.id) !== role.speed) return [];
    const device = compiled.house.devices.find((d) => d.id === role.id);
    const speed = device?.speeds.find((s) => s.name === role.speed);
    if (device === undefined || speed === undefined) return [];
    return [
      {
        device: role.id,
        speed: role.speed,
        ratedFlowM3PerS: speed.ratedFlowM3PerS,
        deliveredFlowM3PerS: of.balance.links.volumeFlowM3PerS[i] ?? Number.NaN,
        interlocked: of.question.state.running[role.id] === undefined,
      },
    ];
  });
}

function makeUpFlows(
  compiled: CompiledHouse,
  followed: FollowedState,
  balance: Balance,
): readonly MakeUpFlow[] {
  return compiled.house.makeUpOpenings.map((opening) => {
    const damper = followed.openMakeUp.has(opening.id) ? 'open' : 'closed';
    const index = compiled.links.findIndex(
      ({ role }) => role.kind === 'make-up' && role.id === opening.id && role.damper === damper,
    );
    const outward = index < 0 ? 0 : (balance.links.volumeFlowM3PerS[index] ?? 0);
    const from = compiled.links[index]?.description.from;
    const flowM3PerS = from === opening.zone ? 0 - outward : outward;
    const { faceAreaM2 } = opening;
    return {
      opening: opening.id,
      damper,
      flowM3PerS,
      ...(faceAreaM2 === undefined ? {} : { faceVelocityMPerS: flowM3PerS / faceAreaM2 }),
    };
  });
}

/** A place between parts in series is no zone of the house: the item that it belongs to is named instead. */
function inHouse(compiled: CompiledHouse, zone: string): string {
  return compiled.junctions.find(({ id }) => id === zone)?.item ?? zone;
}

function proofSummary(
  compiled: CompiledHouse,
  { proof }: Balance,
  columns: ColumnFindings | undefined,
): ProofSummary {
  // With its columns the other way a situation has another balance, which no enclosure of this one holds.
  const only = columns === undefined || (columns.stableBalances === 1 && columns.complete);
  return {
    iterations: proof.iterations,
    largestRelativeResidual: proof.largestRelativeResidual,
    unique: proof.unique && only,
    regularisationPa: proof.regularisationPa,
    ...(proof.enclosureRadiusPa === undefined
      ? {}
      : { enclosureRadiusPa: proof.enclosureRadiusPa }),
    ...(proof.worstZone === undefined ? {} : { worstZone: inHouse(compiled, proof.worstZone) }),
    ...(proof.worstLink === undefined ? {} : { worstLink: proof.worstLink }),
  };
}

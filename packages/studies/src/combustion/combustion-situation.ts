import {
  stateLabel,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import { solveNetwork, type Balance } from '@evendraft/network';
import type { Situation } from '../state-balance.js';
import { draftThresholds, type DraftThresholds } from './draft-thresholds.js';
import type { DraftRoot } from './find-draft-roots.js';
import { flueReadings, type FlueReading } from './flue-readings.js';
import type { FlueSituation, FluesOfSituation } from './flues-of-situation.js';
import { gasOfRoot } from './gas-of-root.js';
import { scenarioWithGas } from './scenario-with-gas.js';
import { settleFlues } from './settle-flues.js';
import type { StatesOfFlues } from './states-of-flues.js';

/**
 * What a flue does when its appliance fires: takes all gas even from cold, takes it only once it is warm, leaves a part
 * in the room in every state, or runs backwards. None of them is a clearance.
 */
export type DraftVerdict =
  'drafts from cold' | 'drafts only once warm' | 'spills in part' | 'reversed';

/** Every verdict, the least favourable first. */
export const draftVerdicts: readonly DraftVerdict[] = [
  'reversed',
  'spills in part',
  'drafts only once warm',
  'drafts from cold',
];

/** One state of all flues in which flow, temperature and pressure agree. */
export interface FlueState {
  readonly stable: boolean;
  readonly flues: readonly FlueReading[];
  readonly closure: {
    /** Greatest difference between what a flue asks and the house gives [Pa]. */
    readonly gapPa: number;
    /** Heat that enters vents less heat that leaves, by the sum of both [-]. */
    readonly heatImbalance: number;
    /** Greatest imbalance of a zone of the whole house with this gas, by the flow through it [-]. */
    readonly massImbalance: number;
    /**
     * Greatest difference of a flow from that in the balance of the whole house, by the greatest flow [-]. It is rounding
     * but where a chimney's gas comes down a connector: there the network takes the density of the chimney's mean.
     */
    readonly flowDifference: number;
  };
}

/** One appliance in one situation: what fires, and what its flue does. */
export interface CombustionSituation extends Situation {
  readonly appliance: string;
  /** Id of every appliance that fires to its stage. */
  readonly firing: Readonly<Record<string, string>>;
  readonly verdict: DraftVerdict;
  /** A fan of the burner holds its flow; no room air enters, and the vent may be above the pressure of the room. */
  readonly heldByFan: boolean;
  /** Every state, in rising order of the flow of the first flue. */
  readonly states: readonly FlueState[];
  /** No state can have been missed. */
  readonly complete: boolean;
  /** Place among `states` where the flue comes to rest from cold. */
  readonly fromCold: number;
  /** Place among `states` where a flue that is already warm comes to rest: the stable one with its greatest flow. */
  readonly fromWarm: number;
  /** The appliance's flue not firing, cold, in the least favourable stable state; absent where a damper shuts it then. */
  readonly cold?: FlueReading;
  /** Absent where a fan holds the flow. */
  readonly thresholds?: DraftThresholds;
}

/** A situation with what its flues need to be followed in time. */
export interface SolvedCombustion {
  readonly situation: CombustionSituation;
  readonly set: FluesOfSituation;
  readonly coldSet: FluesOfSituation;
  /** Flows of the flues while nothing fires, and in each state [kg/s]. */
  readonly coldFlows: readonly number[];
  readonly roots: readonly DraftRoot[];
  /** Flues with the fire at its full, before it burnt down, and their flows then; absent unless it burns down [kg/s]. */
  readonly fullFire?: { readonly set: FluesOfSituation; readonly flows: readonly number[] };
  /** Of the whole house, by root. */
  readonly balances: readonly (Balance | undefined)[];
}

/** Share of spilled gas that counts as none: rounding. */
const nothing = 1e-6;

/**
 * Every state of the flues of a house in one situation, and the verdict on one appliance.
 *
 * @param compiled - the compiled house
 * @param statesOf - finds the states of its flues, as `statesOfFlues` makes it
 * @param question - appliance, and what stands how
 * @returns the situation, or why it is not judged
 */
export function combustionSituation(
  compiled: CompiledHouse,
  statesOf: (situation: FlueSituation) => StatesOfFlues,
  question: {
    readonly appliance: string;
    readonly state: OperatingState;
    readonly firing: Readonly<Record<string, string>>;
    readonly weather: HouseWeather;
    readonly airtightnessCase: number;
    readonly columns?: readonly ('upward' | 'downward')[];
  },
): SolvedCombustion | { readonly reason: string } {
  const { appliance, state, firing, weather, airtightnessCase, columns } = question;
  const { house } = compiled;
  const base: FlueSituation = {
    state: { ...state, firing },
    weather,
    airtightnessCase,
    ...(columns === undefined ? {} : { columns }),
  };
  const { set, found: hot } = statesOf(base);
  const { set: coldSet, found: cold } = statesOf({ ...base, state: withoutFiring(state) });
  const index = set.flues.findIndex((flue) => flue.appliance.id === appliance);
  if (index < 0) return { reason: 'its flue is shut in this state' };
  const stable = hot.roots.flatMap((root, i) => (root.stable ? [i] : []));
  const coldIndex = coldSet.flues.findIndex((flue) => flue.appliance.id === appliance);
  const coldRoot = leastOf(
    cold.roots.filter((root) => root.stable),
    coldIndex,
  );
  if (stable.length === 0 || coldRoot === undefined) {
    return {
      reason: hot.complete
        ? 'no stable state was found'
        : 'air has no balance without its flue, or the search ended before it was complete',
    };
  }
  const solved = hot.roots.map((root) => stateOf(compiled, set, root));
  const states = solved.map(({ state: each }) => each);
  const fromWarm = stable.reduce((best, i) =>
    hot.roots[i]!.flows[index]! > hot.roots[best]!.flows[index]! ? i : best,
  );
  const startFlows = set.flues.map((flue, k) => {
    const at = coldSet.flues.findIndex((each) => each.appliance.id === flue.appliance.id);
    return coldRoot.flows[at] ?? hot.roots[fromWarm]!.flows[k]!;
  });
  const settled = stable.length > 1 ? settleFlues(compiled, set, startFlows) : undefined;
  // Where it does not come to rest, the least favourable stable state stands for it.
  const fromCold = nearest(hot.roots, stable, settled ?? startFlows);
  const share = (i: number): number => states[i]!.flues[index]!.spilledShare;
  const { member } = set.flues[index]!;
  const thresholds = draftThresholds(set, index, hot.roots[fromWarm]!.flows);
  const roomPa = coldSet.roomPressures(coldRoot.flows);
  const coldReading = flueReadings(coldSet, { ...coldRoot, roomPa: roomPa ?? [] })[coldIndex];
  const situation: CombustionSituation = {
    appliance,
    state,
    label: stateLabel(house, state),
    weather: weather.name,
    airtightness: house.airtightness.cases[airtightnessCase]?.name ?? '',
    firing,
    verdict: verdictOf(
      stable.map((i) => ({
        share: share(i),
        rises: hot.roots[i]!.flows[index]! > 0,
        leaks: set.flues[index]!.leaksUnderPressure,
      })),
      share(fromCold),
    ),
    heldByFan: member.inlets.length === 0,
    states,
    complete: hot.complete && cold.complete,
    fromCold,
    fromWarm,
    ...(coldReading === undefined ? {} : { cold: coldReading }),
    ...(thresholds === undefined ? {} : { thresholds }),
  };
  const fullFire = fullFireBefore(statesOf, base, { appliance, index });
  return {
    situation,
    set,
    coldSet,
    coldFlows: startFlows,
    roots: hot.roots,
    ...(fullFire === undefined ? {} : { fullFire }),
    balances: solved.map(({ balance }) => balance),
  };
}

/** The hottest flues from which a fire that burns down has come; none where they did not draw. */
function fullFireBefore(
  statesOf: (situation: FlueSituation) => StatesOfFlues,
  base: FlueSituation,
  { appliance, index }: { readonly appliance: string; readonly index: number },
): SolvedCombustion['fullFire'] {
  const { firing = {} } = base.state;
  if (firing[appliance]?.startsWith('burn-down') !== true) return undefined;
  const { set, found } = statesOf({
    ...base,
    state: { ...base.state, firing: { ...firing, [appliance]: 'full fire' } },
  });
  const flows = found.roots
    .filter((root) => root.stable && root.flows[index]! > 0)
    .reduce<DraftRoot | undefined>(
      (most, root) => (most === undefined || root.flows[index]! > most.flows[index]! ? root : most),
      undefined,
    )?.flows;
  return flows && { set, flows };
}

function withoutFiring({ running, doors }: OperatingState): OperatingState {
  return { running, doors };
}

function verdictOf(
  stable: readonly {
    readonly share: number;
    readonly rises: boolean;
    /** Its vent leaks under pressure, and how much is not known. */
    readonly leaks: boolean;
  }[],
  coldShare: number,
): DraftVerdict {
  if (coldShare <= nothing) return 'drafts from cold';
  if (stable.some(({ share }) => share <= nothing)) return 'drafts only once warm';
  return stable.some(({ share, rises, leaks }) => rises && (share < 1 || leaks))
    ? 'spills in part'
    : 'reversed';
}

function leastOf(roots: readonly DraftRoot[], index: number): DraftRoot | undefined {
  return roots.reduce<DraftRoot | undefined>(
    (least, root) =>
      least === undefined || root.flows[index]! < least.flows[index]! ? root : least,
    undefined,
  );
}

function nearest(
  roots: readonly DraftRoot[],
  stable: readonly number[],
  flows: readonly number[],
): number {
  const distance = (i: number): number =>
    roots[i]!.flows.reduce((sum, flow, k) => sum + Math.abs(flow - flows[k]!), 0);
  return stable.reduce((best, i) => (distance(i) < distance(best) ? i : best));
}

/** Readings of a state, held against a balance of the whole house with its gas. */
function stateOf(
  compiled: CompiledHouse,
  set: FluesOfSituation,
  root: DraftRoot,
): { readonly state: FlueState; readonly balance: Balance | undefined } {
  const { network } = compiled;
  const scenario = scenarioWithGas(compiled, set, gasOfRoot(root.systems));
  const balance = solveNetwork(network, scenario, { enclosure: false, tolerance: 1e-11 });
  const roomPa = set.roomPressures(root.flows) ?? [];
  const links = set.systems.flatMap(({ members }) => members.map(({ vent }) => vent.link));
  const solved = balance.status === 'solved' ? balance : undefined;
  const greatest = Math.max(1e-6, ...root.flows.map(Math.abs));
  const flowDifference = Math.max(
    ...root.flows.map((flow, k) => {
      const whole = solved?.links.massFlowKgPerS[network.linkIndex.get(links[k]!) ?? -1];
      return Math.abs((whole ?? Infinity) - flow) / greatest;
    }),
  );
  return {
    state: {
      stable: root.stable,
      flues: flueReadings(set, { ...root, roomPa }),
      closure: {
        gapPa: root.gapPa,
        heatImbalance: Math.max(...root.systems.map((each) => Math.abs(each.heatImbalance))),
        massImbalance: solved?.proof.largestRelativeResidual ?? 1,
        flowDifference: Math.min(1, flowDifference),
      },
    },
    balance: solved,
  };
}

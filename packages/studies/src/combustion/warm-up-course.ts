import { airAsFlueGas, flueWallAtRest, warmFlue, type FlueWall } from '@evendraft/airflow';
import type { CompiledHouse } from '@evendraft/house';
import { pressureAt, solveNetwork, type Balance, type Scenario } from '@evendraft/network';
import type { FluesOfSituation } from './flues-of-situation.js';
import { scenarioWithGas, type GasInFlue, type GasInFlues } from './scenario-with-gas.js';
import { countedShare, spillShares } from './spill-shares.js';
import { tapDraft } from './tap-draft.js';
import { airOfTemperature, riseOf } from './vent-gas.js';
import type { Vent, VentMember } from './vent-system.js';
import { dilutedTemperature } from './vents-at-flows.js';

/** One flue at one time of a course. */
export interface CourseFlue {
  /** Upwards positive [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Vent minus room at the test tap, negative where it draws [Pa]. */
  readonly tapDraftPa: number;
  /** Share of its gas that does not leave at the top [-]. */
  readonly spilledShare: number;
  /** At the top of its flue or chimney while gas rises, at its collar while air comes down [°C]. */
  readonly outletTemperatureC: number;
  /** Room at the collar's height minus outdoors [Pa]. */
  readonly roomPa: number;
}

/** Flues at one time. */
export interface CourseStep {
  /** Since the burners started [s]. */
  readonly timeS: number;
  /** In the order of the situation's flues. */
  readonly flues: readonly CourseFlue[];
}

/** How flues come to draft, or do not. */
export interface WarmUpCourse {
  readonly steps: readonly CourseStep[];
  /** Flows hardly move any more at the end. */
  readonly settled: boolean;
}

/** Walls of all vents, in the order of the systems: members, then the chimney. */
export type FlueWalls = readonly {
  readonly members: readonly FlueWall[];
  readonly chimney?: FlueWall;
}[];

/** Cells of each piece of wall. */
const cells = 16;
/** So long that a wall is at rest after it [s]. */
const forever = 1e10;
/** Greatest time that is followed [s]. */
const longest = 6 * 3600;

/**
 * How the flues of a situation warm from given walls when their appliances fire.
 *
 * Quasi-steady: in each step air balances at once with the gas that is in the flues, gas follows within the time in
 * which it passes its flue, and walls warm by `warmFlue`. Only what enters a vent heats it: in downflow all gas spills
 * and the vent stays cold. Inertia of air, the pulse of lighting and wind gusts are not in it.
 *
 * @param compiled - the compiled house
 * @param set - flues in the situation, with what fires
 * @param start - walls, and flows at the start, which decide which way a flue goes that could go both [kg/s]
 * @returns the course, in steps of a second at first that grow; `undefined` where air has no balance
 *
 * Source: energy and mass balances (derived).
 */
export function warmUpCourse(
  compiled: CompiledHouse,
  set: FluesOfSituation,
  start: { readonly walls: FlueWalls; readonly flows: readonly number[] },
): WarmUpCourse | undefined {
  let { walls } = start;
  let flows = start.flows;
  let gas = gasBeside(set, { walls, flows, durationS: 1e-6 }).gas;
  const steps: CourseStep[] = [];
  let timeS = 0;
  let quiet = 0;
  let lastPressures: Float64Array | undefined;
  while (timeS <= longest) {
    const scenario = scenarioWithGas(compiled, set, gas);
    const balance = solveNetwork(compiled.network, scenario, {
      enclosure: false,
      ...(lastPressures === undefined ? {} : { start: lastPressures }),
    });
    if (balance.status !== 'solved') return undefined;
    lastPressures = balance.pressuresPa;
    const before = flows;
    flows = ventFlows(compiled, set, balance.links.massFlowKgPerS);
    const durationS = stepAt(timeS);
    const next = gasBeside(set, { walls, flows, durationS });
    steps.push({ timeS, flues: readStep(compiled, set, { flows, next, scenario, balance }) });
    const moved = Math.max(
      ...flows.map((flow, k) => Math.abs(flow - before[k]!) / (Math.abs(flow) + 1e-4)),
    );
    quiet = moved < 1e-5 && timeS > 600 ? quiet + 1 : 0;
    if (quiet >= 4) return { steps, settled: true };
    walls = next.walls;
    gas = followed(set, gas, { ...next, durationS });
    timeS += durationS;
  }
  return { steps, settled: false };
}

/**
 * Walls of flues that have long had given flows.
 *
 * @param set - flues in the situation
 * @param flows - by flue [kg/s]
 * @returns walls at rest
 */
export function wallsAtRest(set: FluesOfSituation, flows: readonly number[]): FlueWalls {
  const walls = set.systems.map(({ members, chimney }) => ({
    members: members.map(({ vent }) => flueWallAtRest(vent.pieces, cells)),
    ...(chimney === undefined ? {} : { chimney: flueWallAtRest(chimney.pieces, cells) }),
  }));
  return gasBeside(set, { walls, flows, durationS: forever }).walls;
}

/** Seconds at first, while draft is decided; then longer and longer. */
function stepAt(timeS: number): number {
  if (timeS < 60) return 1;
  if (timeS < 300) return 2;
  if (timeS < 600) return 5;
  return Math.min(300, 5 + (timeS - 600) / 20);
}

interface GasBeside {
  readonly walls: FlueWalls;
  readonly gas: GasInFlues;
  /** By flue, where gas leaves its flue or chimney [°C]. */
  readonly outletsC: readonly number[];
}

/** Gas beside walls, and the walls after a step. */
function gasBeside(
  { systems }: FluesOfSituation,
  at: { readonly walls: FlueWalls; readonly flows: readonly number[]; readonly durationS: number },
): GasBeside {
  const { walls, durationS } = at;
  const after: FlueWalls[number][] = [];
  const members: GasInFlue[] = [];
  const chimneys: GasInFlues['chimneys'][number][] = [];
  const outletsC: number[] = [];
  systems.forEach((system, s) => {
    const own = walls[s]!;
    const flows = at.flows.slice(members.length, members.length + system.members.length);
    const pass = (
      [vent, wall]: readonly [Vent, FlueWall],
      flow: number,
      inletTemperatureC: number,
    ) => {
      const { state, wall: next } = warmFlue({
        pieces: vent.pieces,
        wall,
        durationS,
        massFlowKgPerS: flow,
        gas: airAsFlueGas,
        inletTemperatureC,
        outdoorTemperatureC: flow < 0 ? inletTemperatureC : system.outdoorAir.temperatureC,
        pressurePa: system.pressurePa,
      });
      const lawAir =
        flow < 0 ? airOfTemperature(inletTemperatureC, system.pressurePa) : state.meanGas;
      const { columnDensityKgPerM3, outletTemperatureC } = state;
      return { next, massFlowKgPerS: flow, lawAir, columnDensityKgPerM3, outletTemperatureC };
    };
    type Passed = ReturnType<typeof pass>;
    const topC = system.topAir.temperatureC;
    const rising = system.members.map((member, k) =>
      flows[k]! >= 0
        ? pass([member.vent, own.members[k]!], flows[k]!, dilutedTemperature(member, flows[k]!))
        : undefined,
    );
    let junctionC = topC;
    let shared: Passed | undefined;
    if (system.chimney !== undefined && own.chimney !== undefined) {
      const total = flows.reduce((sum, flow) => sum + flow, 0);
      if (total < 0) shared = pass([system.chimney, own.chimney], total, topC);
      const arriving = [...rising, shared].filter((stream) => stream !== undefined);
      const mass = arriving.reduce((sum, { massFlowKgPerS }) => sum + Math.abs(massFlowKgPerS), 0);
      const heat = arriving.reduce(
        (sum, { massFlowKgPerS, outletTemperatureC }) =>
          sum + Math.abs(massFlowKgPerS) * outletTemperatureC,
        0,
      );
      junctionC = mass > 0 ? heat / mass : topC;
      shared ??= pass([system.chimney, own.chimney], total, junctionC);
    }
    const passed = system.members.map(
      (member, k): Passed =>
        rising[k] ?? pass([member.vent, own.members[k]!], flows[k]!, junctionC),
    );
    passed.forEach((gas, k) => {
      members.push({ ...gas, collarTemperatureC: collarOf(system.members[k]!, gas) });
      outletsC.push(
        gas.massFlowKgPerS > 0 && shared !== undefined && shared.massFlowKgPerS > 0
          ? shared.outletTemperatureC
          : gas.outletTemperatureC,
      );
    });
    chimneys.push(shared && { ...shared, junctionTemperatureC: junctionC });
    after.push({
      members: passed.map(({ next }) => next),
      ...(shared === undefined ? {} : { chimney: shared.next }),
    });
  });
  return { walls: after, gas: { members, chimneys }, outletsC };
}

function collarOf(
  member: VentMember,
  gas: { readonly massFlowKgPerS: number; readonly outletTemperatureC: number },
): number {
  const { massFlowKgPerS, outletTemperatureC } = gas;
  if (massFlowKgPerS >= 0) return dilutedTemperature(member, massFlowKgPerS);
  const { gasFlowKgPerS, gasTemperatureC } = member;
  const down = -massFlowKgPerS;
  return (down * outletTemperatureC + gasFlowKgPerS * gasTemperatureC) / (down + gasFlowKgPerS);
}

/** The columns after a step: what was in a flue leaves it at the pace of its flow. */
function followed(
  { systems }: FluesOfSituation,
  before: GasInFlues,
  { gas, durationS }: { readonly gas: GasInFlues; readonly durationS: number },
): GasInFlues {
  type Held = Pick<GasInFlue, 'massFlowKgPerS' | 'columnDensityKgPerM3'>;
  const density = (vent: Vent, was: Held, becomes: Held): number => {
    const heldKg =
      was.columnDensityKgPerM3 *
      vent.pieces.reduce((sum, { areaM2, lengthM }) => sum + areaM2 * lengthM, 0);
    const left = riseOf(vent) === 0 ? 0 : (Math.abs(becomes.massFlowKgPerS) * durationS) / heldKg;
    return (
      becomes.columnDensityKgPerM3 +
      (was.columnDensityKgPerM3 - becomes.columnDensityKgPerM3) * Math.exp(-left)
    );
  };
  const vents = systems.flatMap(({ members }) => members.map(({ vent }) => vent));
  return {
    members: gas.members.map((own, k) => ({
      ...own,
      columnDensityKgPerM3: density(vents[k]!, before.members[k]!, own),
    })),
    chimneys: gas.chimneys.map((shared, s) => {
      const { chimney } = systems[s]!;
      const was = before.chimneys[s];
      if (shared === undefined || was === undefined || chimney === undefined) return shared;
      return { ...shared, columnDensityKgPerM3: density(chimney, was, shared) };
    }),
  };
}

function ventFlows(
  { network }: CompiledHouse,
  { systems }: FluesOfSituation,
  massFlowKgPerS: Float64Array,
): readonly number[] {
  return systems.flatMap(({ members }) =>
    members.map(({ vent }) => massFlowKgPerS[network.linkIndex.get(vent.link) ?? -1]!),
  );
}

function readStep(
  { network }: CompiledHouse,
  { flues, systems }: FluesOfSituation,
  at: {
    readonly flows: readonly number[];
    readonly next: GasBeside;
    readonly scenario: Scenario;
    readonly balance: Balance;
  },
): readonly CourseFlue[] {
  const { flows, next, scenario, balance } = at;
  let first = 0;
  const shares = systems.flatMap((system) => {
    const own = flows.slice(first, first + system.members.length);
    first += system.members.length;
    return spillShares(system, own);
  });
  return flues.map((flue, k): CourseFlue => {
    const { collarHeightM: heightM, collarZone, appliance } = flue;
    const roomPa = pressureAt(network, balance, { zoneId: appliance.zone, heightM, scenario });
    const inletSuctionPa = roomPa - balance.pressuresPa[collarZone]!;
    const tapDraftPa = tapDraft(flue, { ...next.gas.members[k]!, inletSuctionPa });
    return {
      massFlowKgPerS: flows[k]!,
      tapDraftPa,
      spilledShare: countedShare(flue, { tapDraftPa, spilledShare: shares[k]! }),
      outletTemperatureC: next.outletsC[k]!,
      roomPa,
    };
  });
}

import { compileHouse, houseWeather, type Device, type House } from '@evendraft/house';
import { balanceStudy } from './balance-study.js';
import { doorForce, usualDoorLeaf, type DoorLeaf } from './door-force.js';
import { dryerArrangements, type DryerArrangement } from './internal/dryer-arrangements.js';
import { nextTurn } from './internal/next-turn.js';
import { plainDoors } from './internal/plain-doors.js';
import { pressureRangeStudy } from './pressure-range-study.js';
import type { StateBalance } from './state-balance.js';
import type { DuctRun } from './sized/duct-run.js';
import { StudyArgumentError } from './study-argument-error.js';

export type { DryerArrangement } from './internal/dryer-arrangements.js';

/** What a study of a dryer is told. */
export interface DryerQuestion {
  /** Id of a dryer of the house. */
  readonly dryer: string;
  /** Way of its own make-up duct; 3 m with two bends when absent, our choice. */
  readonly run?: DuctRun;
  /** Inner diameter of that duct; 6 in. when absent, our choice [m]. */
  readonly diameterM?: number;
  /** Door of the closet or of the dryer's room. */
  readonly leaf?: DoorLeaf;
}

/** A dryer in one arrangement. */
export interface DryerRow {
  readonly arrangement: DryerArrangement['name'];
  /** Zone in which the dryer stands. */
  readonly zone: string;
  /** Flow that it exhausts while it runs alone; 0 for one that exhausts nothing [m³/s]. */
  readonly deliveredFlowM3PerS: number;
  /** Pressure of its zone against outdoors while it runs alone, in the weather in which that is lowest [Pa]. */
  readonly alonePa: number;
  readonly weather: string;
  /** Lowest pressure of its zone against outdoors over all states [Pa]. */
  readonly lowestPa: number;
  /** Pressure over the shut door of its zone while it runs alone; over a door to outdoors where it has none [Pa]. */
  readonly doorPa: number;
  /** Force at the handle of that door [N]. */
  readonly doorForceN: number;
  /** Whether every state was covered. */
  readonly proved: boolean;
}

/** A dryer in its arrangements side by side; plain JSON. */
export interface DryerStudy {
  readonly question: 'dryer';
  readonly dryer: string;
  readonly rows: readonly DryerRow[];
  /** Arrangements that do not compile or were not solved. */
  readonly notSolved: readonly string[];
}

/**
 * Lays a dryer side by side as it is, with its own make-up duct, with one that exhausts nothing, and in a closet
 * whose door is shut, without and with openings in the door.
 *
 * The closet is a zone of its own with no leaks but its door: its undercut is 1 cm high, our choice.
 *
 * @param house - the house
 * @param question - which dryer, its make-up duct, the door
 * @param options - signal
 * @returns one row an arrangement
 * @throws StudyArgumentError where the house has no such dryer that exhausts air
 */
export async function dryerStudy(
  house: House,
  question: DryerQuestion,
  options: { readonly signal?: AbortSignal } = {},
): Promise<DryerStudy> {
  const { run = { lengthM: 3, elbows: 2 }, diameterM = 0.1524, leaf = usualDoorLeaf } = question;
  const dryer = house.devices.find(({ id }) => id === question.dryer);
  if (dryer?.direction !== 'exhaust' || dryer.speeds.length === 0) {
    throw new StudyArgumentError('dryer', question.dryer, 'the id of an exhaust device');
  }
  const rows: DryerRow[] = [];
  const notSolved: string[] = [];
  for (const arrangement of dryerArrangements(house, { dryer, run, diameterM, leaf })) {
    const row = await rowOf(arrangement, { dryer, leaf, signal: options.signal });
    if (row === undefined) notSolved.push(arrangement.name);
    else rows.push(row);
    await nextTurn();
    options.signal?.throwIfAborted();
  }
  return { question: 'dryer', dryer: dryer.id, rows, notSolved };
}

async function rowOf(
  { name, house, zone }: DryerArrangement,
  of: { readonly dryer: Device; readonly leaf: DoorLeaf; readonly signal: AbortSignal | undefined },
): Promise<DryerRow | undefined> {
  const { dryer, leaf, signal } = of;
  const result = compileHouse(house);
  if (!result.ok) return undefined;
  const { compiled } = result;
  const door = house.doors.find(({ between }) => between.includes(zone));
  const doors = { ...plainDoors(house), ...(door ? { [door.id]: 'shut' as const } : {}) };
  const runs = house.devices.some(({ id, speeds }) => id === dryer.id && speeds.length > 0);
  const running = runs ? { [dryer.id]: dryer.speeds.at(-1)!.name } : {};
  const balances = house.weathers.map((weather) =>
    balanceStudy(compiled, { state: { running, doors }, weather: houseWeather(house, weather) }),
  );
  const solved = balances.filter((balance): balance is StateBalance => balance.status === 'solved');
  const at = (balance: StateBalance, id: string): number =>
    balance.zones.find((each) => each.zone === id)?.pressurePa ?? 0;
  const [lowest] = [...solved].sort((one, other) => at(one, zone) - at(other, zone));
  const range = await pressureRangeStudy(compiled, signal ? { signal } : {});
  const worst = range.zones.find((each) => each.zone === zone);
  if (lowest === undefined || worst === undefined) return undefined;
  const beyond = door?.between.find((each) => each !== zone);
  const alonePa = at(lowest, zone);
  const doorPa = alonePa - (beyond === undefined ? 0 : at(lowest, beyond));
  return {
    arrangement: name,
    zone,
    deliveredFlowM3PerS:
      lowest.devices.find(({ device }) => device === dryer.id)?.deliveredFlowM3PerS ?? 0,
    alonePa,
    weather: lowest.weather,
    lowestPa: worst.lowest.pressurePa,
    doorPa,
    doorForceN: doorForce(doorPa, leaf),
    proved: range.coverage.proved,
  };
}

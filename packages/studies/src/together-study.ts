import { baselineOf, houseWeather, type CompiledHouse } from '@evendraft/house';
import { nextTurn } from './internal/next-turn.js';
import { solveStates } from './internal/solve-states.js';
import { combinationsOf, doorSwitchesOf, stateOf, switchesOf } from './internal/switches.js';
import type { PressureTarget } from './pressure-target.js';
import { StudyArgumentError } from './study-argument-error.js';

/** Which devices may run together at their highest speeds; plain JSON. */
export interface TogetherStudy {
  readonly question: 'what may run together';
  readonly devices: readonly string[];
  /** Sets that keep every target in every weather and with every door, and to which none can be added. */
  readonly largestThatKeep: readonly (readonly string[])[];
  /** Sets that break a target although each smaller set of the same devices keeps them all. */
  readonly smallestThatBreak: readonly (readonly string[])[];
  readonly solves: number;
}

/** Up to this many devices every set is solved. */
const mostDevices = 12;

/**
 * Finds which devices may run together without breaking a target.
 *
 * Every set is solved with its devices at their highest speeds, in every weather, at every airtightness and with
 * every door either way; what follows by interlock follows. A set that breaks a target in one of them breaks it.
 *
 * @param compiled - the compiled house
 * @param targets - targets of zones of the house
 * @param options - signal
 * @returns the sets
 * @throws StudyArgumentError where more than twelve devices are switched, or a zone is unknown
 */
export async function togetherStudy(
  compiled: CompiledHouse,
  targets: readonly PressureTarget[],
  options: { readonly signal?: AbortSignal } = {},
): Promise<TogetherStudy> {
  const { house } = compiled;
  const switches = switchesOf(house);
  if (switches.length > mostDevices) {
    throw new StudyArgumentError('devices', switches.length, `up to ${mostDevices}`);
  }
  const zoneOf = (target: PressureTarget): number => {
    const zone = house.zones.findIndex(({ id }) => id === target.zone);
    if (zone < 0) throw new StudyArgumentError('targets', target.zone, 'the id of a zone');
    return zone;
  };
  const held = targets.map((target) => ({ ...target, index: zoneOf(target) }));
  const sets = Array.from({ length: 2 ** switches.length }, (_, bits) =>
    Object.fromEntries(
      switches.map(({ id, settings }, place) => [
        id,
        ((bits >> place) & 1) === 1 ? settings.at(-1)! : settings[0]!,
      ]),
    ),
  );
  const keeps = sets.map(() => true);
  let solves = 0;
  for (const airtightnessCase of house.airtightness.cases.keys()) {
    for (const weather of house.weathers.map((each) => houseWeather(house, each))) {
      for (const doors of combinationsOf(doorSwitchesOf(house))) {
        const place = { compiled, weather, airtightnessCase };
        const states = sets.map((set) => stateOf(set, doors));
        const [baseline] = solveStates(place, [baselineOf(states[0]!)]);
        const rows = solveStates(place, states);
        solves += rows.length + 1;
        rows.forEach((row, bits) => {
          keeps[bits] &&= held.every(({ quantity, side, limitPa, index }) => {
            if (row === undefined || baseline === undefined) return false;
            const change = quantity === 'change from baseline';
            // Of several balances the baseline takes the one that makes the change greatest.
            return side === 'not below'
              ? row.lowestPa[index]! - (change ? baseline.highestPa[index]! : 0) >= limitPa
              : row.highestPa[index]! - (change ? baseline.lowestPa[index]! : 0) <= limitPa;
          });
        });
        await nextTurn();
        options.signal?.throwIfAborted();
      }
    }
  }
  const names = (bits: number): readonly string[] =>
    switches.filter((_, place) => ((bits >> place) & 1) === 1).map(({ id }) => id);
  const places = [...keeps.keys()];
  return {
    question: 'what may run together',
    devices: switches.map(({ id }) => id),
    largestThatKeep: places
      .filter(
        (bits) => keeps[bits] && !places.some((other) => isWithin(bits, other) && keeps[other]),
      )
      .map(names),
    smallestThatBreak: places.filter((bits) => !keeps[bits] && keepsBelow(bits, keeps)).map(names),
    solves,
  };
}

/** Whether a set is a proper part of another. */
function isWithin(part: number, whole: number): boolean {
  return part !== whole && (part & whole) === part;
}

/** Whether every proper part of a set keeps the targets. */
function keepsBelow(bits: number, keeps: readonly boolean[]): boolean {
  for (let part = (bits - 1) & bits; part > 0; part = (part - 1) & bits) {
    if (!keeps[part]) return false;
  }
  return bits === 0 || keeps[0]!;
}

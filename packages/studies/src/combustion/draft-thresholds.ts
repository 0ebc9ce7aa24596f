import type { FluesOfSituation } from './flues-of-situation.js';
import { largestFlows } from './internal/largest-flows.js';
import { ventsAtFlows } from './vents-at-flows.js';

/** Pressure of the room at the collar's height minus outdoors at which something turns, and the house's own there. */
export interface DraftThreshold {
  /** [Pa] */
  readonly roomPa: number;
  /** What the house gives at the flow at which it turns; the draft holds while this is higher [Pa]. */
  readonly houseGivesPa: number;
  /** Flow at which it turns, upwards positive [kg/s]. */
  readonly massFlowKgPerS: number;
}

/** At which suction of its room a flue turns, other flues held as they flow. */
export interface DraftThresholds {
  /** A cold flue in which outdoor air comes down just still turns to draft when its appliance fires. */
  readonly coldEstablishes: DraftThreshold;
  /** A hot flue just still takes all gas. */
  readonly hotSpills: DraftThreshold;
  /** A hot flue reverses. */
  readonly hotReverses: DraftThreshold;
}

/** Places at which the curve is looked at, either way from zero; the turns are refined after. */
const places = 240;

/**
 * Suctions at which the flue of an appliance turns, from the curve of what it asks of its room.
 *
 * Where the curve rises with the flow it is stable. The branch of rising gas begins at the last trough: a room with
 * more suction than that reverses even a hot flue. Below it stands the greatest crest: a room with less suction than
 * that has no state but draft, so that even a cold flue establishes it. Between the two both states exist. A flue
 * whose curve has no such turn reverses where its flow is zero. Walls are at rest in this; how long a cold wall
 * takes is the warm-up course's.
 *
 * @param set - flues in the situation
 * @param index - which flue
 * @param flows - of all, those of the others are held [kg/s]
 * @returns thresholds; `undefined` where the flue has no way for room air or the house has no balance
 */
export function draftThresholds(
  set: FluesOfSituation,
  index: number,
  flows: readonly number[],
): DraftThresholds | undefined {
  const { systems, flues, response, roomPressures } = set;
  const { member } = flues[index]!;
  const given = response(flows);
  const room = roomPressures(flows);
  if (member.inlets.length === 0 || given === undefined || room === undefined) return undefined;
  let first = 0;
  const system = systems.find(({ members }) => {
    const holds = index < first + members.length;
    if (!holds) first += members.length;
    return holds;
  })!;
  const own = flows.slice(first, first + system.members.length);
  const asked = (flow: number): number => {
    const all = own.map((each, k) => (k === index - first ? flow : each));
    return ventsAtFlows(system, all).members[index - first]!.neededPa;
  };
  const reach = largestFlows(systems, given)[index]!;
  const flowAt = (place: number): number => reach * Math.sign(place) * (place / places) ** 4;
  const curve = Array.from({ length: 2 * places + 1 }, (_, i) => asked(flowAt(i - places)));
  // The place where the flue ends has the pressure that the room has beyond what is given.
  const topPa = room[index]! - given[index]!;
  const threshold = (flow: number): DraftThreshold | undefined => {
    const all = flows.map((each, k) => (k === index ? flow : each));
    const gives = roomPressures(all);
    return (
      gives && { roomPa: asked(flow) + topPa, houseGivesPa: gives[index]!, massFlowKgPerS: flow }
    );
  };
  const troughPlace = lastTrough(curve);
  const between = (place: number): readonly [number, number] => [
    flowAt(Math.max(0, place - 1) - places),
    flowAt(Math.min(2 * places, place + 1) - places),
  ];
  // A curve that rises throughout, or from below zero on, turns where its flow does.
  const reversesAt =
    troughPlace <= places ? 0 : extreme((flow) => -asked(flow), between(troughPlace));
  const crestPlace = curve
    .slice(0, Math.max(troughPlace, places) + 1)
    .reduce((best, asks, place) => (asks > curve[best]! ? place : best), 0);
  const crest = extreme(asked, between(crestPlace));
  const coldEstablishes = threshold(Math.min(crest, reversesAt));
  const hotReverses = threshold(reversesAt);
  const hotSpills = threshold(Math.max(reversesAt, member.gasFlowKgPerS));
  if (coldEstablishes === undefined || hotReverses === undefined || hotSpills === undefined) {
    return undefined;
  }
  return { coldEstablishes, hotSpills, hotReverses };
}

/** The last place before which the curve falls; 0 where it rises throughout. */
function lastTrough(curve: readonly number[]): number {
  return curve.findLastIndex((asks, place) => place > 0 && curve[place - 1]! > asks);
}

/** Place of the greatest value between two places with one crest, by the golden section. */
function extreme(of: (x: number) => number, [low, high]: readonly [number, number]): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [low, high];
  let c = b - golden * (b - a);
  let d = a + golden * (b - a);
  let atC = of(c);
  let atD = of(d);
  for (let step = 0; step < 80 && b - a > 1e-12; step++) {
    if (atC > atD) {
      b = d;
      [d, atD] = [c, atC];
      c = b - golden * (b - a);
      atC = of(c);
    } else {
      a = c;
      [c, atC] = [d, atD];
      d = a + golden * (b - a);
      atD = of(d);
    }
  }
  return (a + b) / 2;
}

import type { Balance, BuiltNetwork } from '@evendraft/network';
import { solveLinear } from './internal/solve-linear.js';

/** Something that comes into the air of one place. */
export interface ProductSource {
  /** Place among the zones of the network. */
  readonly zone: number;
  /** In units of the product by second. */
  readonly perS: number;
}

/** Air of a solved house, and what comes into it. */
export interface RoomProductsQuestion {
  readonly network: BuiltNetwork;
  readonly balance: Balance;
  /** Mass of air by zone of the network; 0 for a place without volume [kg]. */
  readonly airKg: readonly number[];
  readonly sources: readonly ProductSource[];
  /** Ends of equal steps; none when absent. */
  readonly course?: { readonly durationS: number; readonly steps: number };
}

/** A product in the air of every zone, in its unit by kilogram of air, beyond that outdoors. */
export interface RoomProducts {
  /** By zone, when it has come to rest; infinite where no air passes and something comes in. */
  readonly steady: readonly number[];
  /** One row a step: time from the start in clean air [s], and by zone. */
  readonly course: readonly { readonly timeS: number; readonly content: readonly number[] }[];
}

/** First stage of the two-stage method, 1 − 1/√2 [-]. */
const stage = 1 - Math.SQRT1_2;

/**
 * Content of a product in the air of every zone: V dc/dt = sum of inflows × their content − outflow × c + source.
 *
 * Every zone is well mixed, which a room with a spilling appliance is not: near the hood and under the ceiling there is
 * more. Both streams of doorways count; air from outdoors brings nothing. In time a diagonally implicit method of
 * second order, stable for steps of any length.
 *
 * @param question - balance, air, sources and times
 * @returns steady content and its course
 *
 * Source: mass balance (derived); method of Alexander (1977), two stages, from memory.
 */
export function roomProducts(question: RoomProductsQuestion): RoomProducts {
  const { airKg, sources, course } = question;
  const exchange = exchangeOf(question);
  const source = airKg.map((_, zone) =>
    sources.reduce((sum, each) => (each.zone === zone ? sum + each.perS : sum), 0),
  );
  const steady = steadyContent(exchange, source);
  if (course === undefined) return { steady, course: [] };
  const { durationS, steps } = course;
  const stepS = durationS / steps;
  const implicit = exchange.map((row, i) =>
    row.map((rate, j) => {
      const held = i === j ? airKg[i]! + guard(rate, airKg[i]!) : 0;
      return held + stage * stepS * rate;
    }),
  );
  const rateOf = (content: readonly number[]): readonly number[] =>
    // Slope times the mass of air, at the state that a stage ends in.
    exchange.map(
      (row, i) => source[i]! - row.reduce((sum, rate, j) => sum + rate * content[j]!, 0),
    );
  let content: readonly number[] = airKg.map(() => 0);
  const rows = [{ timeS: 0, content }];
  for (let step = 1; step <= steps; step++) {
    const held = airKg.map((kg, i) => kg * content[i]!);
    const first = solveLinear(
      implicit,
      held.map((kg, i) => kg + stage * stepS * source[i]!),
    );
    const slope = rateOf(first);
    content = solveLinear(
      implicit,
      held.map((kg, i) =>
        // A place without volume has no memory: its balance holds at the end of the step.
        airKg[i] === 0
          ? stage * stepS * source[i]!
          : kg + (1 - stage) * stepS * slope[i]! + stage * stepS * source[i]!,
      ),
    );
    rows.push({ timeS: step * stepS, content });
  }
  return { steady, course: rows };
}

/** A zone without volume and without flow keeps its content instead of making the system singular. */
function guard(rate: number, airKg: number): number {
  return airKg === 0 && rate === 0 ? 1 : 0;
}

/** By row the zone: what leaves it on the diagonal, what others bring beside it [kg/s]. */
function exchangeOf({ network, balance, airKg }: RoomProductsQuestion): number[][] {
  const { description, zoneIndex } = network;
  const { forwardKgPerS, backwardKgPerS } = balance.links;
  const matrix = airKg.map(() => airKg.map(() => 0));
  const carry = (from: number | undefined, to: number | undefined, flow: number): void => {
    if (from !== undefined) matrix[from]![from]! += flow;
    if (from !== undefined && to !== undefined) matrix[to]![from]! -= flow;
  };
  description.links.forEach((link, i) => {
    const from = zoneIndex.get(link.from);
    const to = zoneIndex.get(link.to);
    carry(from, to, forwardKgPerS[i]!);
    carry(to, from, backwardKgPerS[i]!);
  });
  return matrix;
}

function steadyContent(
  exchange: readonly (readonly number[])[],
  source: readonly number[],
): readonly number[] {
  const reached = exchange.map((row, i) => row[i]! > 0);
  const content = solveLinear(
    exchange.map((row, i) => row.map((rate, j) => (i === j && !reached[i]! ? 1 : rate))),
    source.map((perS, i) => (reached[i]! ? perS : 0)),
  );
  return content.map((each, i) => {
    if (reached[i]!) return Number.isFinite(each) ? each : Infinity;
    return source[i]! > 0 ? Infinity : 0;
  });
}

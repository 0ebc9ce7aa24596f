import { flowLawOf, inletAir, type AirState, type FlowLawDescription } from '@evendraft/airflow';

/** A link between two places as seen from the first: laws add up where several stand side by side. */
export interface SeenLaw {
  readonly law: FlowLawDescription;
  /** Factor on its flow [-]. */
  readonly scale: number;
  /** True where the link's own direction is from the second place to the first. */
  readonly reversed: boolean;
}

/** Air of two places. */
export interface EndAirs {
  readonly first: AirState;
  readonly second: AirState;
}

/** Flow from the first place to the second through links side by side. */
export interface ComparedFlow {
  /** At a pressure difference from first to second [kg/s]. */
  at(pressureDifferencePa: number): number;
  /** Bounds over all pressure differences [kg/s]. */
  readonly least: number;
  readonly most: number;
}

/**
 * What may be missing from the outflow where two laws touch, so that rounding cannot upset a proof [kg/s].
 * A leak at 1 Pa in the tightest house carries some million times as much.
 */
export const shownWithinKgPerS = 1e-9;

/** Parts that one proof may look at before it is given up. */
const mostParts = 5000;

/**
 * Shows, or does not, that one flow is at least another at every pressure difference of a range.
 *
 * Both are non-decreasing, so that on a part [l, r] it is enough that more(l) ≥ less(r); a part where this fails
 * is halved.
 *
 * @param more - the flow that should be larger
 * @param less - the other
 * @param range - first and last pressure difference [Pa]
 * @returns true where it is shown, to within {@link shownWithinKgPerS}
 */
export function shownBetween(
  more: ComparedFlow,
  less: ComparedFlow,
  range: readonly [number, number],
): boolean {
  const open = [range];
  for (let parts = 0; parts < mostParts; parts += 1) {
    const part = open.pop();
    if (part === undefined) return true;
    const [left, right] = part;
    if (more.at(left) >= less.at(right) - shownWithinKgPerS) continue;
    if (more.at(left) < less.at(left) - shownWithinKgPerS) return false;
    if (more.at(right) < less.at(right) - shownWithinKgPerS) return false;
    const middle = (left + right) / 2;
    if (middle === left || middle === right) return false;
    open.push([left, middle], [middle, right]);
  }
  return false;
}

/**
 * The flow through links side by side.
 *
 * @param laws - the links
 * @param air - air of the first place and of the second
 * @returns the flow at any pressure difference, and its bounds
 */
export function flowOf(laws: readonly SeenLaw[], air: EndAirs): ComparedFlow {
  const parts = laws
    .filter(({ scale }) => scale > 0)
    .map(({ law: description, scale, reversed }) => {
      const law = flowLawOf(description);
      const from = inletAir(reversed ? air.second : air.first);
      const to = inletAir(reversed ? air.first : air.second);
      const recordLength = law.recordLength(description);
      const records = new Float64Array(recordLength);
      law.prepare(description, { from, to, scale, records, at: 0 });
      const group = { records, recordLength, begin: 0, end: 1 };
      const state = {
        pressureDifferencePa: new Float64Array(1),
        massFlowKgPerS: new Float64Array(1),
        slopeKgPerSPa: new Float64Array(1),
      };
      const reach = law.reach(description, from, to);
      return {
        least: scale * (reversed ? -reach.mostKgPerS : reach.leastKgPerS),
        most: scale * (reversed ? -reach.leastKgPerS : reach.mostKgPerS),
        at: (pressureDifferencePa: number): number => {
          state.pressureDifferencePa[0] = reversed ? -pressureDifferencePa : pressureDifferencePa;
          law.block(group, state);
          return reversed ? -state.massFlowKgPerS[0]! : state.massFlowKgPerS[0]!;
        },
      };
    });
  return {
    at: (x) => parts.reduce((sum, part) => sum + part.at(x), 0),
    least: parts.reduce((sum, part) => sum + part.least, 0),
    most: parts.reduce((sum, part) => sum + part.most, 0),
  };
}

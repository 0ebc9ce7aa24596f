import { flowLawOf, inletAir, type AirState, type FlowLawDescription } from '@evendraft/airflow';

/** A link between two places as seen from the first: laws add up where several stand side by side. */
export interface SeenLaw {
  readonly law: FlowLawDescription;
  /** Factor on its flow [-]. */
  readonly scale: number;
  /** True where the link's own direction is from the second place to the first. */
  readonly reversed: boolean;
}

/** Where the proof holds, as the pressure difference from first place to second [Pa]. */
export interface ShownRange {
  readonly fromPa: number;
  readonly toPa: number;
}

/**
 * What may be missing from the outflow where two laws touch, so that rounding cannot upset a proof [kg/s].
 * A leak at 1 Pa in the tightest house carries some million times as much.
 */
const shownWithinKgPerS = 1e-9;

/** Ends of the range that are tried to either side of zero, the widest first [Pa]. */
const triedEndsPa = [5000, 1000, 300, 100, 30, 10];

/** Parts that one proof may look at before it is given up. */
const mostParts = 20_000;

/**
 * Shows, or does not, that one set of links carries outward at least what another carries, at every
 * pressure difference of a range.
 *
 * Every law is non-decreasing in its pressure difference. On a part [l, r] it is therefore enough that
 * larger(l) ≥ smaller(r); a part where this fails is halved. What is shown holds for every real number of
 * the range, to within a billionth of a kilogram a second, not only at points that were tried.
 *
 * @param pair - links of the setting that should carry more outward, and those of the other setting, between
 * the same two places
 * @param air - air of the first place and of the second
 * @param needed - the range in which it must be shown
 * @returns the widest range in which it was shown, infinite to a side where the laws' own reach shows it;
 * undefined where it could not be shown in the range needed
 */
export function carriesAtLeast(
  pair: { readonly larger: readonly SeenLaw[]; readonly smaller: readonly SeenLaw[] },
  air: { readonly first: AirState; readonly second: AirState },
  needed: ShownRange,
): ShownRange | undefined {
  const more = sumOf(pair.larger, air);
  const less = sumOf(pair.smaller, air);
  const widest = (neededPa: number, shown: (endPa: number) => boolean): number | undefined =>
    [...triedEndsPa.filter((end) => end > neededPa), neededPa].find(shown);
  const below = widest(Math.max(0, -needed.fromPa), (end) =>
    shownBetween(more.at, less.at, [-end, 0]),
  );
  const above = widest(Math.max(0, needed.toPa), (end) => shownBetween(more.at, less.at, [0, end]));
  if (below === undefined || above === undefined) return undefined;
  return {
    fromPa: more.least >= less.at(-below) - shownWithinKgPerS ? -Infinity : -below,
    toPa: more.at(above) >= less.most - shownWithinKgPerS ? Infinity : above,
  };
}

type Flow = (pressureDifferencePa: number) => number;

function shownBetween(more: Flow, less: Flow, range: readonly [number, number]): boolean {
  const open = [range];
  for (let parts = 0; parts < mostParts; parts += 1) {
    const part = open.pop();
    if (part === undefined) return true;
    const [left, right] = part;
    if (more(left) >= less(right) - shownWithinKgPerS) continue;
    if (more(left) < less(left) - shownWithinKgPerS) return false;
    if (more(right) < less(right) - shownWithinKgPerS) return false;
    const middle = (left + right) / 2;
    if (middle === left || middle === right) return false;
    open.push([left, middle], [middle, right]);
  }
  return false;
}

/** Outflow of links side by side, and its bounds over all pressure differences. */
function sumOf(
  laws: readonly SeenLaw[],
  air: { readonly first: AirState; readonly second: AirState },
): { readonly at: Flow; readonly least: number; readonly most: number } {
  const parts = laws
    .filter(({ scale }) => scale > 0)
    .map(({ law: description, scale, reversed }) => {
      const law = flowLawOf(description);
      const from = inletAir(reversed ? air.second : air.first);
      const to = inletAir(reversed ? air.first : air.second);
      const recordLength = law.recordLength(description);
      const records = new Float64Array(recordLength);
      law.prepare(description, { from, to, scale, records, at: 0 });
      const group = { records, recordLength, recordClass: 0, begin: 0, end: 1 };
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

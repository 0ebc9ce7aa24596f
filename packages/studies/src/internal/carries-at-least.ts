import {
  flowOf,
  shownBetween,
  shownWithinKgPerS,
  type EndAirs,
  type SeenLaw,
} from './compared-flows.js';

/** Where the proof holds, as the pressure difference from first place to second [Pa]. */
export interface ShownRange {
  readonly fromPa: number;
  readonly toPa: number;
}

/** Ends of the range that are tried to either side of zero, the widest first [Pa]. */
const triedEndsPa = [5000, 1000, 300, 100, 30, 10];

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
  air: EndAirs,
  needed: ShownRange,
): ShownRange | undefined {
  const more = flowOf(pair.larger, air);
  const less = flowOf(pair.smaller, air);
  const widest = (neededPa: number, shown: (endPa: number) => boolean): number | undefined =>
    [...triedEndsPa.filter((end) => end > neededPa), neededPa].find(shown);
  const below = widest(Math.max(0, -needed.fromPa), (end) => shownBetween(more, less, [-end, 0]));
  const above = widest(Math.max(0, needed.toPa), (end) => shownBetween(more, less, [0, end]));
  if (below === undefined || above === undefined) return undefined;
  return {
    fromPa: more.least >= less.at(-below) - shownWithinKgPerS ? -Infinity : -below,
    toPa: more.at(above) >= less.most - shownWithinKgPerS ? Infinity : above,
  };
}

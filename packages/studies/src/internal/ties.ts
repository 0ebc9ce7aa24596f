import { insideZoneKinds, type Zone } from '@evendraft/house';

/**
 * Pressures this close count as equal, far above what the proof leaves open and far below what is printed [Pa].
 * States that tie, such as a fan beyond its shut-off and the same fan off, then keep the order in which they
 * were studied, whatever the last bit of a solve.
 */
const tiePa = 1e-4;

/**
 * Pressures in steps so coarse that those which tie are equal.
 *
 * @param pressurePa - a pressure [Pa]
 * @returns the number of its step [-]
 */
export function inTies(pressurePa: number): number {
  return Math.round(pressurePa / tiePa);
}

/**
 * The lowest pressure of any living zone, basement or closet [Pa].
 *
 * @param zones - the house's zones
 * @returns a function of the zones' pressures, in their order [Pa]
 */
export function depthOf(zones: readonly Zone[]): (pressuresPa: ArrayLike<number>) => number {
  const inside = zones.flatMap(({ kind }, index) =>
    insideZoneKinds.includes(kind) ? [index] : [],
  );
  return (pressuresPa) =>
    inside.reduce((least, index) => Math.min(least, pressuresPa[index] ?? Infinity), Infinity);
}

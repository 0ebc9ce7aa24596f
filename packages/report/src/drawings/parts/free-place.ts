import type { Box } from './marks.js';

/** Steps at which a curve is looked at [px]. */
const step = 3;

/**
 * The place, of several, at which a text stands clear of curves; the least covered where none is.
 *
 * @param places - boxes for the text, the preferred first [px]
 * @param curves - points of each curve, in order [px]
 * @returns one of the places
 */
export function freePlace<Place extends Box>(
  places: readonly [Place, ...Place[]],
  curves: readonly (readonly (readonly [number, number])[])[],
): Place {
  const covered = ({ x, y, width, height }: Box): number =>
    curves.reduce(
      (sum, curve) =>
        sum +
        along(curve).filter(
          ([left, top]) => left >= x && left <= x + width && top >= y && top <= y + height,
        ).length,
      0,
    );
  let [best] = places;
  let least = covered(best);
  for (const place of places.slice(1)) {
    const count = covered(place);
    if (count >= least) continue;
    best = place;
    least = count;
  }
  return best;
}

/** Points along a curve, closer than a letter is wide. */
function along(
  curve: readonly (readonly [number, number])[],
): readonly (readonly [number, number])[] {
  return curve.flatMap((to, index) => {
    const from = curve[index - 1] ?? to;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const pieces = Math.max(1, Math.ceil(Math.hypot(dx, dy) / step));
    return Array.from(
      { length: pieces },
      (_, piece) =>
        [from[0] + (dx * (piece + 1)) / pieces, from[1] + (dy * (piece + 1)) / pieces] as const,
    );
  });
}

import type { Box } from './marks.js';

/** Steps at which a curve is looked at [px]. */
const step = 3;

/** What a text keeps clear of. */
export interface InTheWay {
  /** Points of each curve, in order [px]. */
  readonly curves: readonly (readonly (readonly [number, number])[])[];
  /** Boxes of other texts, which count for more than any curve [px]. */
  readonly texts: readonly Box[];
}

/** An overlap with another text, in points of curves [-]. */
const textCounts = 10_000;

/**
 * The place, of several, at which a text stands clear of other texts and of curves; the least covered where none is.
 *
 * @param places - boxes for the text, the preferred first [px]
 * @param inTheWay - curves and texts
 * @returns one of the places
 */
export function freePlace<Place extends Box>(
  places: readonly [Place, ...Place[]],
  { curves, texts }: InTheWay,
): Place {
  const covered = (box: Box): number =>
    textCounts * texts.filter((text) => overlap(box, text)).length + crossed(box);
  const crossed = ({ x, y, width, height }: Box): number =>
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

function overlap(one: Box, other: Box): boolean {
  return (
    one.x < other.x + other.width &&
    other.x < one.x + one.width &&
    one.y < other.y + other.height &&
    other.y < one.y + one.height
  );
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

import { markup, type Markup } from '../../internal/markup.js';
import { ink, label, line, px, type Box } from './marks.js';

/** Half of a number's disc [px]. */
const radius = 8.5;

type Place = readonly [number, number];

/** A point and where its number stands: on it, or beside it where another is in the way. */
export interface NumberedPoint {
  readonly at: Place;
  readonly number: number;
  readonly disc: Place;
}

/**
 * Places the numbers of points so that none hides another: the first of two that meet stands on its point, the
 * second beside it with a line that leads there.
 *
 * @param points - in the order of their numbers, from 1 [px]
 * @param area - what discs stay within [px]
 * @returns each point with the place of its disc
 */
export function placedPoints(points: readonly Place[], area: Box): readonly NumberedPoint[] {
  const placed: NumberedPoint[] = [];
  for (const [index, at] of points.entries()) {
    const free = (disc: Place): boolean =>
      placed.every((other) => distance(other.disc, disc) > 2 * radius + 1);
    const around = [1, 2, 3].flatMap((ring) =>
      directions.map(([dx, dy]): Place => [at[0] + dx * ring * 24, at[1] + dy * ring * 24]),
    );
    const disc = [at, ...around.filter((each) => within(each, area))].find(free) ?? at;
    placed.push({ at, number: index + 1, disc });
  }
  return placed;
}

/**
 * A numbered point; where its number stands beside it, a dot marks the point.
 *
 * @param point - point, number and place of the number
 * @returns SVG
 */
export function numberedPoint({ at, number, disc }: NumberedPoint): Markup {
  const beside = distance(at, disc) > 0.5;
  return markup`${[
    ...(beside
      ? [
          line(at, disc, { color: ink.line }),
          markup`<circle cx="${px(at[0])}" cy="${px(at[1])}" r="3" fill="${ink.line}"/>`,
        ]
      : []),
    markup`<circle cx="${px(disc[0])}" cy="${px(disc[1])}" r="${radius}" fill="${ink.paper}" stroke="${ink.line}" stroke-width="1.6"/>`,
    label(String(number), { x: disc[0], y: disc[1] + 4, anchor: 'middle', bold: true, size: 11 }),
  ]}`;
}

/**
 * The number of a point as a legend shows it.
 *
 * @param number - the point's number
 * @returns draws it beside a row whose baseline is given
 */
export function numberKey(number: number): (y: number) => Markup {
  return (y) => numberedPoint({ at: [15, y - 4], number, disc: [15, y - 4] });
}

/**
 * What a numbered point covers.
 *
 * @param point - as it is placed
 * @returns the box of its disc [px]
 */
export function pointBox({ disc }: NumberedPoint): Box {
  return { x: disc[0] - radius, y: disc[1] - radius, width: 2 * radius, height: 2 * radius };
}

/** Up and to the sides first: curves fall to the right, and axes lie below. */
const directions: readonly Place[] = [
  [0.7, -0.7],
  [-0.7, -0.7],
  [0, -1],
  [1, 0],
  [-1, 0],
  [0.7, 0.7],
  [-0.7, 0.7],
];

function distance(one: Place, other: Place): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1]);
}

function within([x, y]: Place, area: Box): boolean {
  return (
    x >= area.x + radius &&
    x <= area.x + area.width - radius &&
    y >= area.y + radius &&
    y <= area.y + area.height - radius
  );
}

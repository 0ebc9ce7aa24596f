import { markup, type Markup } from '../../internal/markup.js';
import { ink, line, polyline, px, strokes } from './marks.js';

/** Half the size of a mark [px]. */
const half = 4.2;
/** Marks on one curve, so that it can be followed and still be seen. */
const marksPerCurve = 4;

/**
 * The dress of a curve by its place among others.
 *
 * @param index - from 0
 * @returns colour and dashes
 */
function strokeOf(index: number): (typeof strokes)[number] {
  return strokes[index % strokes.length] ?? { color: ink.line, dash: 'none' };
}

/**
 * A curve that is told from others by its dashes and by the shape of its marks, with or without colour.
 *
 * @param points - at least one [px]
 * @param index - the curve's place among others, from 0
 * @returns SVG
 */
export function markedCurve(
  points: readonly (readonly [number, number])[],
  index: number,
): readonly Markup[] {
  // Marks of different curves stand at different places, so that curves that meet do not hide each other's.
  const marks = Array.from({ length: marksPerCurve }, (_, mark) => {
    const place = ((mark + 0.5 + 0.13 * index) / marksPerCurve) * (points.length - 1);
    return points[Math.min(points.length - 1, Math.round(place))];
  });
  return [
    polyline(points, strokeOf(index)),
    ...[...new Set(marks)].flatMap((at) => (at === undefined ? [] : [curveMark(at, index)])),
  ];
}

/**
 * A piece of a curve, as a legend shows it.
 *
 * @param index - the curve's place among others
 * @returns draws the piece beside a row whose baseline is given
 */
export function curveKey(index: number): (y: number) => Markup {
  return (y) =>
    markup`${line([0, y - 4], [30, y - 4], { ...strokeOf(index), width: 2 })}${curveMark([15, y - 4], index)}`;
}

/** Shapes around a middle [px], by the place of the curve; the first is a disc. */
const shapes: readonly (readonly (readonly [number, number])[] | 'disc')[] = [
  'disc',
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ],
  [
    [0, -1.2],
    [1.2, 1],
    [-1.2, 1],
  ],
  [
    [0, -1.4],
    [1.4, 0],
    [0, 1.4],
    [-1.4, 0],
  ],
  [
    [0, 1.2],
    [1.2, -1],
    [-1.2, -1],
  ],
];

function curveMark([x, y]: readonly [number, number], index: number): Markup {
  const { color } = strokeOf(index);
  const shape = shapes[index % shapes.length] ?? 'disc';
  if (shape === 'disc') {
    return markup`<circle cx="${px(x)}" cy="${px(y)}" r="${px(half * 0.9)}" fill="${color}"/>`;
  }
  const corners = shape.map(([dx, dy]) => `${px(x + half * dx)},${px(y + half * dy)}`).join(' ');
  return markup`<polygon points="${corners}" fill="${ink.paper}" stroke="${color}" stroke-width="1.6"/>`;
}

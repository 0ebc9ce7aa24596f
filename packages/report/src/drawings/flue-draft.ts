import { markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { chartFrame } from './parts/chart-frame.js';
import { curveKey, markedCurve } from './parts/curve-marks.js';
import { legend } from './parts/legend.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';

/** A point of a draft curve. */
export interface DraftPoint {
  readonly outdoorTemperatureC: number;
  /** Room minus vent at the test tap: positive draws out of the house [Pa]. */
  readonly draftPa: number;
}

/**
 * What a flue draws in the house over the outdoor temperature, the suction of its room taken off, and the weakest
 * draft that is asked for.
 */
export interface FlueDraftDrawingData {
  /** The flue and the state of the house, in words. */
  readonly flue: string;
  /** The appliances on it. */
  readonly appliances: readonly string[];
  /** Firing, come to rest from a cold flue. */
  readonly cold: readonly DraftPoint[];
  /** Firing, come to rest from a warm flue. */
  readonly warm: readonly DraftPoint[];
  /** The weakest draft that is asked for, over the same temperatures. */
  readonly weakest: readonly DraftPoint[];
  /** Who asks for it, as the end of a sentence that begins `weaker than`. */
  readonly weakestBy: string;
}

const chartHeight = 260;

/**
 * Draft of a flue against outdoor temperature, from cold and from warm, with the weakest that is asked for: where a
 * curve lies in the hatched part it is weaker; below zero the flue runs backwards.
 *
 * @param data - curves
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawFlueDraft(data: FlueDraftDrawingData, options: DrawingOptions): string {
  const { width, id, system } = options;
  const degrees = (celsius: number): number => inColumnUnit(celsius, 'temperature', system);
  const { weakest, weakestBy } = data;
  const curves = [data.warm, data.cold, weakest];
  const all = curves.flat();
  const temperatures = all.map((point) => degrees(point.outdoorTemperatureC));
  const drafts = all.map(({ draftPa }) => draftPa);
  const frame = chartFrame(
    { x: 0, y: 0, width, height: chartHeight },
    {
      x: {
        title: `Outdoors, ${unitWords('temperature', system)}`,
        domain: [Math.min(...temperatures, 1e3), Math.max(...temperatures, -1e3)],
      },
      y: { title: 'Draft, Pa', domain: [Math.min(0, ...drafts), Math.max(1, ...drafts)] },
    },
  );
  const at = (point: DraftPoint): [number, number] => [
    frame.x(degrees(point.outdoorTemperatureC)),
    frame.y(point.draftPa),
  ];
  const base = frame.area.y + frame.area.height;
  const [first, last] = [weakest[0], weakest.at(-1)];
  const under =
    first === undefined || last === undefined
      ? undefined
      : markup`<polygon points="${[[at(first)[0], base], ...weakest.map(at), [at(last)[0], base]].map(([x, y]) => `${x?.toFixed(1)},${y?.toFixed(1)}`).join(' ')}" fill="${hatchFill(id, 'beyond')}"/>`;
  const texts = [
    'draft, come to rest from a warm flue',
    'draft, come to rest from a cold flue',
    `hatched: weaker than ${weakestBy}`,
  ];
  const { drawn, end } = legend(
    texts.map((text, index) => ({ text, key: curveKey(order[index] ?? 0) })),
    { width, top: chartHeight + 16 },
  );
  return svgDrawing({
    id,
    width,
    height: end + 6,
    title: `Draft of ${data.flue} against outdoor temperature`,
    description: `${data.appliances.join(', ')}. ${texts.join('; ')}. Below zero the flue runs backwards.`,
    body: [
      markup`${under}`,
      frame.drawn,
      ...curves.flatMap((curve, index) => markedCurve(curve.map(at), order[index] ?? 0)),
      drawn,
    ],
  });
}

/** Strokes of warm, cold, weakest: the last takes the colour of what is beyond a limit. */
const order = [0, 2, 1] as const;

import { markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { curveKey, strokeOf } from './exhaust-curve.js';
import { chartFrame } from './parts/chart-frame.js';
import { fitText } from './parts/fit-text.js';
import { ink, label, polyline, textSize } from './parts/marks.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';

/** A point of a draft curve. */
export interface DraftPoint {
  readonly outdoorTemperatureC: number;
  /** Draft of the flue [Pa]; positive draws out of the house. */
  readonly draftPa: number;
}

/**
 * What a flue can draw, against what the house takes. Wanted of a study of draft: the draft of the
 * flue cold and warm over the outdoor temperature, and the suction of its zone in the worst state.
 */
export interface FlueDraftDrawingData {
  readonly flue: string;
  /** The appliances on it. */
  readonly appliances: readonly string[];
  readonly cold: readonly DraftPoint[];
  readonly warm: readonly DraftPoint[];
  /** How far its zone stands below outdoors in the worst state, as a size, over the same temperatures [Pa]. */
  readonly suction: readonly { readonly outdoorTemperatureC: number; readonly suctionPa: number }[];
}

const chartHeight = 260;

/**
 * Draft of a flue against outdoor temperature, cold and warm, with the suction it has to overcome:
 * where a draft curve lies in the hatched part, the house draws harder than the flue.
 *
 * @param data - curves
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawFlueDraft(data: FlueDraftDrawingData, options: DrawingOptions): string {
  const { width, id, system } = options;
  const degrees = (celsius: number): number => inColumnUnit(celsius, 'temperature', system);
  const suction = data.suction.map(({ outdoorTemperatureC, suctionPa }) => ({
    outdoorTemperatureC,
    draftPa: suctionPa,
  }));
  const curves = [data.warm, data.cold, suction];
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
      y: { title: 'Pa', domain: [Math.min(0, ...drafts), Math.max(1, ...drafts)] },
    },
  );
  const at = (point: DraftPoint): [number, number] => [
    frame.x(degrees(point.outdoorTemperatureC)),
    frame.y(point.draftPa),
  ];
  const base = frame.area.y + frame.area.height;
  const [first, last] = [suction[0], suction.at(-1)];
  const under =
    first === undefined || last === undefined
      ? undefined
      : markup`<polygon points="${[[at(first)[0], base], ...suction.map(at), [at(last)[0], base]].map(([x, y]) => `${x?.toFixed(1)},${y?.toFixed(1)}`).join(' ')}" fill="${hatchFill(id, 'beyond')}"/>`;
  const legend = [
    'draft of the warm flue',
    'draft of the cold flue',
    'suction of the house in the worst state',
  ];
  return svgDrawing({
    id,
    width,
    height: chartHeight + 12 + legend.length * 18,
    title: `Draft of ${data.flue} against outdoor temperature`,
    description: `${data.appliances.join(', ')}. ${legend.join('; ')}. In the hatched part the house draws harder than the flue.`,
    body: [
      markup`${under}`,
      frame.drawn,
      ...curves.map((curve, index) => polyline(curve.map(at), strokeOf(order[index] ?? 0))),
      ...legend.map((text, index) => {
        const y = chartHeight + 16 + index * 18;
        return markup`${curveKey(order[index] ?? 0)(y)}${label(fitText(text, width - 44, textSize), { x: 38, y, color: ink.line })}`;
      }),
    ],
  });
}

/** Strokes of warm, cold, suction: the suction takes the colour of what is beyond a limit. */
const order = [0, 2, 1] as const;

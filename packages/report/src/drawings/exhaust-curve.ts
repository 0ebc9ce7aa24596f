import { markup, type Markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { chartFrame, tickWords, type ChartFrame } from './parts/chart-frame.js';
import { fitText } from './parts/fit-text.js';
import { ink, label, line, polyline, px, strokes, textSize } from './parts/marks.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';

/**
 * Pressure of a zone against exhaust flow. Wanted of a study: the zone's pressure for a rising exhaust
 * flow, without and with each make-up option, and the points at which the devices work.
 */
export interface ExhaustCurveDrawingData {
  readonly zone: string;
  /** Weather and airtightness of the curves, in words. */
  readonly condition: string;
  readonly curves: readonly {
    /** E.g. `no make-up air`. */
    readonly name: string;
    readonly points: readonly {
      readonly exhaustFlowM3PerS: number;
      /** Zone minus outdoors [Pa]. */
      readonly pressurePa: number;
    }[];
  }[];
  /** Where speeds of devices and make-up options come to rest on their curve. */
  readonly operatingPoints: readonly {
    readonly name: string;
    readonly exhaustFlowM3PerS: number;
    readonly pressurePa: number;
  }[];
  /** Limits that are on the same quantity as the curves. */
  readonly limits: readonly { readonly appliance: string; readonly limitPa: number }[];
}

const chartHeight = 280;
const rowHeight = 21;

/**
 * Pressure against exhaust flow: curves, numbered operating points, limits as lines across.
 *
 * @param data - curves, points and limits
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawExhaustCurve(data: ExhaustCurveDrawingData, options: DrawingOptions): string {
  const { width, id, system } = options;
  const flow = (si: number): number => inColumnUnit(si, 'volumeFlow', system);
  const points = [...data.curves.flatMap((curve) => curve.points), ...data.operatingPoints];
  const pressures = [
    ...points.map(({ pressurePa }) => pressurePa),
    ...data.limits.map(({ limitPa }) => limitPa),
  ];
  const frame = chartFrame(
    { x: 0, y: 0, width, height: chartHeight },
    {
      x: {
        title: `Exhaust, ${unitWords('volumeFlow', system)}`,
        domain: [0, Math.max(1, ...points.map((each) => flow(each.exhaustFlowM3PerS)))],
      },
      y: {
        title: 'Pa, zone minus outdoors',
        domain: [Math.min(-1, ...pressures), Math.max(0, ...pressures)],
      },
    },
  );
  const at = (point: { exhaustFlowM3PerS: number; pressurePa: number }): [number, number] => [
    frame.x(flow(point.exhaustFlowM3PerS)),
    frame.y(point.pressurePa),
  ];
  const legend = legendRows(data, {
    width,
    top: chartHeight + 16,
    flow,
    unit: unitWords('volumeFlow', system),
  });
  return svgDrawing({
    id,
    width,
    height: chartHeight + 10 + legend.length * rowHeight,
    title: `Pressure of ${data.zone} against exhaust flow`,
    description: describe(data),
    body: [
      frame.drawn,
      ...data.curves.map(({ points: own }, index) => polyline(own.map(at), strokeOf(index))),
      ...limitLines(data, frame),
      ...data.operatingPoints.map((point, index) => numberedPoint(at(point), index + 1)),
      ...legend,
    ],
  });
}

/**
 * A numbered point on a curve.
 *
 * @param at - where [px]
 * @param number - its number in the legend
 * @returns SVG
 */
export function numberedPoint(at: readonly [number, number], number: number): Markup {
  return markup`<circle cx="${px(at[0])}" cy="${px(at[1])}" r="8.5" fill="${ink.paper}" stroke="${ink.line}" stroke-width="1.6"/>${label(String(number), { x: at[0], y: at[1] + 4, anchor: 'middle', bold: true, size: 11 })}`;
}

/**
 * The dress of a curve by its place among others.
 *
 * @param index - from 0
 * @returns colour and dashes
 */
export function strokeOf(index: number): (typeof strokes)[number] {
  return strokes[index % strokes.length] ?? { color: ink.line, dash: 'none' };
}

function limitLines({ limits }: ExhaustCurveDrawingData, frame: ChartFrame): readonly Markup[] {
  const { area } = frame;
  const sorted = [...limits].sort((a, b) => b.limitPa - a.limitPa);
  let last = Number.NEGATIVE_INFINITY;
  return sorted.map(({ appliance, limitPa }) => {
    const y = frame.y(limitPa);
    const rule = line([area.x, y], [area.x + area.width, y], { width: 2.4 });
    if (y - last < 15) return rule;
    last = y;
    const words = fitText(`limit ${tickWords(limitPa)}, ${appliance}`, area.width * 0.7, 11);
    return markup`${rule}${label(words, { x: area.x + area.width - 2, y: y - 4, anchor: 'end', size: 11, halo: true })}`;
  });
}

function legendRows(
  data: ExhaustCurveDrawingData,
  place: {
    readonly width: number;
    readonly top: number;
    readonly flow: (si: number) => number;
    readonly unit: string;
  },
): readonly Markup[] {
  const rows = [
    ...data.curves.map(({ name }, index) => ({ name, key: curveKey(index) })),
    ...data.operatingPoints.map(({ name, exhaustFlowM3PerS, pressurePa }, index) => ({
      name: `${place.flow(exhaustFlowM3PerS).toFixed(0)} ${place.unit}, ${tenths(pressurePa)} Pa: ${name}`,
      key: (y: number) => numberedPoint([15, y - 4], index + 1),
    })),
  ].slice(0, 14);
  return rows.map(({ name, key }, index) => {
    const y = place.top + index * rowHeight;
    return markup`${key(y)}${label(fitText(name, place.width - 44, textSize), { x: 38, y })}`;
  });
}

/**
 * A piece of a curve, as a legend shows it.
 *
 * @param index - the curve's place among others
 * @returns draws the piece beside a row whose baseline is given
 */
export function curveKey(index: number): (y: number) => Markup {
  return (y) => line([0, y - 4], [30, y - 4], { ...strokeOf(index), width: 2 });
}

function describe({ condition, curves, operatingPoints }: ExhaustCurveDrawingData): string {
  const points = operatingPoints
    .slice(0, 8)
    .map(({ name, pressurePa }) => `${name} at ${tenths(pressurePa)} Pa`)
    .join('; ');
  return `${condition}. Curves: ${curves.map(({ name }) => name).join(', ')}. Operating points: ${points}.`;
}

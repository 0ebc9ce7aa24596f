import type { LimitedQuantity } from '@evendraft/rules';
import { markup, type Markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { chartFrame, tickWords, type ChartFrame } from './parts/chart-frame.js';
import { curveKey, markedCurve } from './parts/curve-marks.js';
import { fitText, textWidth } from './parts/fit-text.js';
import { freePlace, type InTheWay } from './parts/free-place.js';
import { ink, label, line, px, textSize, type Box } from './parts/marks.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';

/**
 * Pressure of a zone against exhaust flow. Wanted of a study: the zone's pressure for a rising exhaust
 * flow, without and with each make-up option, and the points at which the devices work.
 */
export interface ExhaustCurveDrawingData {
  readonly zone: string;
  /** What is drawn, and what the limits are on. */
  readonly quantity: LimitedQuantity;
  /** Weather and airtightness of the curves, in words. */
  readonly condition: string;
  readonly curves: readonly {
    /** E.g. `no make-up air`. */
    readonly name: string;
    readonly points: readonly {
      readonly exhaustFlowM3PerS: number;
      /** By the quantity [Pa]. */
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
const limitSize = 11;
const pointRadius = 8.5;

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
        title: `Pa, ${data.quantity === 'zone minus outdoors' ? data.quantity : 'fall from baseline below zero'}`,
        domain: [Math.min(-1, ...pressures), Math.max(0, ...pressures)],
      },
    },
  );
  const at = (point: { exhaustFlowM3PerS: number; pressurePa: number }): [number, number] => [
    frame.x(flow(point.exhaustFlowM3PerS)),
    frame.y(point.pressurePa),
  ];
  const curves = data.curves.map(({ points: own }) => own.map(at));
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
      ...curves.flatMap(markedCurve),
      ...limitLines(data, frame, {
        curves,
        texts: data.operatingPoints.map((each) => around(at(each))),
      }),
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
  return markup`<circle cx="${px(at[0])}" cy="${px(at[1])}" r="${pointRadius}" fill="${ink.paper}" stroke="${ink.line}" stroke-width="1.6"/>${label(String(number), { x: at[0], y: at[1] + 4, anchor: 'middle', bold: true, size: 11 })}`;
}

function limitLines(
  { limits }: ExhaustCurveDrawingData,
  frame: ChartFrame,
  { curves, texts }: InTheWay,
): readonly Markup[] {
  const { area } = frame;
  const named = new Map<number, string[]>();
  for (const { appliance, limitPa } of limits) {
    named.set(limitPa, [...(named.get(limitPa) ?? []), appliance]);
  }
  const taken: Box[] = [...texts];
  return [...named].map(([limitPa, appliances]) => {
    const y = frame.y(limitPa);
    const rule = line([area.x, y], [area.x + area.width, y], { width: 2.4 });
    const words = fitText(
      `limit ${tickWords(limitPa)}, ${appliances.join(', ')}`,
      area.width * 0.6,
      limitSize,
    );
    const width = textWidth(words, limitSize);
    const room = area.width - width - 8;
    const place = (share: number, top: number) => ({
      x: area.x + 4 + share * room,
      y: top,
      width,
      height: limitSize + 3,
    });
    const above = y - limitSize - 5;
    const below = y + 3;
    const [first, ...others] = [1, 0.75, 0.5, 0.25, 0].flatMap((share) => [
      place(share, above),
      place(share, below),
    ]);
    if (first === undefined) return rule;
    const box = freePlace([first, ...others], { curves, texts: taken });
    taken.push(box);
    return markup`${rule}${label(words, { x: box.x, y: box.y + limitSize, size: limitSize, halo: true })}`;
  });
}

/** The box of a numbered point. */
function around([x, y]: readonly [number, number]): Box {
  return {
    x: x - pointRadius,
    y: y - pointRadius,
    width: 2 * pointRadius,
    height: 2 * pointRadius,
  };
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

function describe({ condition, curves, operatingPoints }: ExhaustCurveDrawingData): string {
  const points = operatingPoints
    .slice(0, 8)
    .map(({ name, pressurePa }) => `${name} at ${tenths(pressurePa)} Pa`)
    .join('; ');
  return `${condition}. Curves: ${curves.map(({ name }) => name).join(', ')}. Operating points: ${points}.`;
}

import type { LimitedQuantity } from '@evendraft/rules';
import { markup, type Markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { chartFrame, tickWords, type ChartFrame } from './parts/chart-frame.js';
import { curveKey, markedCurve } from './parts/curve-marks.js';
import { textWidth } from './parts/fit-text.js';
import { freePlace, type InTheWay } from './parts/free-place.js';
import { legend, type LegendRow } from './parts/legend.js';
import { label, line, type Box } from './parts/marks.js';
import { numberedPoint, numberKey, placedPoints, pointBox } from './parts/numbered-points.js';
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
const limitSize = 11;
/** A number of curves, points and limits that a legend holds. */
const rowsAtMost = 16;

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
  const placed = placedPoints(data.operatingPoints.map(at), frame.area);
  const limits = limitLines(data, frame, { curves, texts: placed.map(pointBox) });
  const rows = [...legendRows(data, options), ...limits.flatMap(({ row }) => row ?? [])];
  const shown = rows.slice(0, rowsAtMost);
  const { drawn, end } = legend(shown, { width, top: chartHeight + 16 });
  const more = rows.length - shown.length;
  return svgDrawing({
    id,
    width,
    height: end + (more > 0 ? 24 : 6),
    title: `Pressure of ${data.zone} against exhaust flow`,
    description: describe(data),
    body: [
      frame.drawn,
      ...curves.flatMap(markedCurve),
      ...limits.map((limit) => limit.drawn),
      ...placed.map(numberedPoint),
      drawn,
      ...(more > 0 ? [label(`and ${more} more in the table`, { x: 38, y: end + 17 })] : []),
    ],
  });
}

function limitLines(
  { limits }: ExhaustCurveDrawingData,
  frame: ChartFrame,
  { curves, texts }: InTheWay,
): readonly { readonly drawn: Markup; readonly row?: LegendRow }[] {
  const { area } = frame;
  const named = new Map<number, string[]>();
  for (const { appliance, limitPa } of limits) {
    named.set(limitPa, [...(named.get(limitPa) ?? []), appliance]);
  }
  const taken: Box[] = [...texts];
  return [...named].map(([limitPa, appliances]) => {
    const y = frame.y(limitPa);
    const rule = line([area.x, y], [area.x + area.width, y], limitDress);
    const all = `limit ${tickWords(limitPa)}, ${appliances.join(', ')}`;
    // Names that have no room on the line go on in the legend.
    const fits = textWidth(all, limitSize) <= area.width * 0.6;
    const words = fits ? all : `limit ${tickWords(limitPa)}`;
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
    if (first === undefined) return { drawn: rule };
    const box = freePlace([first, ...others], { curves, texts: taken });
    taken.push(box);
    const drawn = markup`${rule}${label(words, { x: box.x, y: box.y + limitSize, size: limitSize, halo: true })}`;
    return fits
      ? { drawn }
      : {
          drawn,
          row: {
            key: limitKey,
            text: `limit ${tickWords(limitPa)} Pa of ${appliances.join(', ')}`,
          },
        };
  });
}

const limitDress = { width: 2.4 } as const;

function limitKey(y: number): Markup {
  return line([0, y - 4], [30, y - 4], limitDress);
}

function legendRows(
  data: ExhaustCurveDrawingData,
  { system }: DrawingOptions,
): readonly LegendRow[] {
  const unit = unitWords('volumeFlow', system);
  return [
    ...data.curves.map(({ name }, index) => ({ text: name, key: curveKey(index) })),
    ...data.operatingPoints.map(({ name, exhaustFlowM3PerS, pressurePa }, index) => {
      const flow = inColumnUnit(exhaustFlowM3PerS, 'volumeFlow', system).toFixed(0);
      return {
        text: `${flow} ${unit}, ${tenths(pressurePa)} Pa: ${name}`,
        key: numberKey(index + 1),
      };
    }),
  ];
}

function describe({ condition, curves, operatingPoints }: ExhaustCurveDrawingData): string {
  const points = operatingPoints
    .slice(0, 8)
    .map(({ name, pressurePa }) => `${name} at ${tenths(pressurePa)} Pa`)
    .join('; ');
  return `${condition}. Curves: ${curves.map(({ name }) => name).join(', ')}. Operating points: ${points}.`;
}

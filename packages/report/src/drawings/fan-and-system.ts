import { markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { chartFrame } from './parts/chart-frame.js';
import { curveKey, markedCurve } from './parts/curve-marks.js';
import { legend } from './parts/legend.js';
import { numberedPoint, numberKey, placedPoints } from './parts/numbered-points.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';

/** A point of a curve: flow through a fan or a duct, and the pressure that goes with it. */
export interface FlowPressurePoint {
  readonly flowM3PerS: number;
  /** Rise over the fan, or drop over what it works against [Pa]. */
  readonly pressurePa: number;
}

/**
 * One fan against its duct and the house. Wanted of a study, for one speed of one device: its curve,
 * the drop over its duct alone, the same with the house's suction on top, and the flow delivered.
 */
export interface FanAndSystemDrawingData {
  readonly device: string;
  readonly speed: string;
  readonly fanCurve: readonly FlowPressurePoint[];
  /** Duct, damper and cap alone. */
  readonly system: readonly FlowPressurePoint[];
  /** The same with the house's suction added, as it is in the worst state. */
  readonly systemWithHouse: readonly FlowPressurePoint[];
  /** How far below outdoors the zone stands there, as a size [Pa]. */
  readonly houseSuctionPa: number;
  /** Where the fan works with the house at outdoor pressure. */
  readonly withoutSuction: FlowPressurePoint;
  /** Where it works in the worst state. */
  readonly delivered: FlowPressurePoint;
}

const chartHeight = 260;

/**
 * Fan curve and system curve, without and with the suction of the house; the delivered flow is marked.
 *
 * @param data - curves and points
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawFanAndSystem(data: FanAndSystemDrawingData, options: DrawingOptions): string {
  const { width, id, system } = options;
  const flow = (si: number): number => inColumnUnit(si, 'volumeFlow', system);
  const curves = [data.fanCurve, data.system, data.systemWithHouse];
  const all = [...curves.flat(), data.withoutSuction, data.delivered];
  const unit = unitWords('volumeFlow', system);
  // Beyond the fan's shut-off nothing can work; the duct's own curve may rise far above it.
  const highest = 1.15 * Math.max(1, ...data.fanCurve.map(({ pressurePa }) => pressurePa));
  const frame = chartFrame(
    { x: 0, y: 0, width, height: chartHeight },
    {
      x: {
        title: `Flow, ${unit}`,
        domain: [0, Math.max(1, ...all.map((each) => flow(each.flowM3PerS)))],
      },
      y: { title: 'Pa, rise over the fan', domain: [0, highest] },
    },
  );
  const { area } = frame;
  const at = (point: FlowPressurePoint): [number, number] => [
    frame.x(flow(point.flowM3PerS)),
    frame.y(point.pressurePa),
  ];
  const words = (point: FlowPressurePoint): string =>
    `${flow(point.flowM3PerS).toFixed(0)} ${unit}`;
  const keys = [
    { key: curveKey(0), text: `fan, ${data.speed}` },
    { key: curveKey(1), text: 'duct alone' },
    {
      key: curveKey(2),
      text: `duct and house suction of ${tenths(data.houseSuctionPa)} Pa`,
    },
    {
      key: numberKey(1),
      text: `${words(data.withoutSuction)} with the house at outdoor pressure`,
    },
    {
      key: numberKey(2),
      text: `${words(data.delivered)} delivered in the worst state`,
    },
  ];
  const { drawn, end } = legend(keys, { width, top: chartHeight + 16 });
  const points = placedPoints([at(data.withoutSuction), at(data.delivered)], area);
  return svgDrawing({
    id,
    width,
    height: end + 6,
    title: `Fan and system of ${data.device}`,
    description: `${keys.map(({ text }) => text).join('; ')}.`,
    body: [
      markup`<clipPath id="${id}-area"><rect x="${area.x}" y="${area.y}" width="${area.width}" height="${area.height}"/></clipPath>`,
      frame.drawn,
      markup`<g clip-path="url(#${id}-area)">${curves.flatMap((curve, index) => markedCurve(curve.map(at), index))}</g>`,
      ...points.map(numberedPoint),
      drawn,
    ],
  });
}

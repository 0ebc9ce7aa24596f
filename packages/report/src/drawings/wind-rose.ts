import { markup, type Markup } from '../internal/markup.js';
import { inColumnUnit, unitWords } from '../tables/report-table.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { ink, label, line, px } from './parts/marks.js';
import { roundTicks, straightScale } from './parts/scale.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { textLines, textRows } from './parts/text-rows.js';
import { tenths } from './parts/tenths.js';

/** The worst pressure with the wind from each side. */
export interface WindRoseDrawingData {
  readonly winds: readonly {
    readonly weather: string;
    /** Clockwise from north [°]. */
    readonly windFromDeg: number;
    readonly windSpeedMPerS: number;
    /** Deepest zone in the worst state of this weather, zone minus outdoors [Pa]. */
    readonly pressurePa: number;
  }[];
  /** The deepest without wind [Pa]; drawn as a ring. */
  readonly stillPressurePa?: number;
}

const radius = 104;
const compass = ['N', 'E', 'S', 'W'] as const;

/**
 * A wind rose of the worst pressure: each spoke points to where the wind comes from, and is as long
 * as the house goes deep; the dashed ring is still air.
 *
 * @param data - the worst of each windy weather
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawWindRose(data: WindRoseDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const depths = [...data.winds, ...still(data)].map(({ pressurePa }) => Math.max(0, -pressurePa));
  const ticks = roundTicks([0, Math.max(1, ...depths)], 3).filter((tick) => tick > 0);
  const wide = width >= 520;
  const centre = { x: wide ? radius + 40 : width / 2, y: radius + 42 };
  const r = straightScale([0, ticks.at(-1) ?? 1], [0, radius]);
  const at = (deg: number, length: number): readonly [number, number] => [
    centre.x + length * Math.sin((deg * Math.PI) / 180),
    centre.y - length * Math.cos((deg * Math.PI) / 180),
  ];
  const list = { x: wide ? 2 * radius + 110 : 0, y: wide ? 60 : 2 * radius + 96 };
  const { rows, end } = textRows(listRows(data, options), {
    width: width - list.x - 4,
    top: list.y,
  });
  return svgDrawing({
    id,
    width,
    height: Math.max(2 * radius + 76, end - 8),
    title: 'Worst pressure by the direction of the wind',
    description: describe(data),
    body: [
      ...ticks.map((tick) => ring(centre, r(tick), { color: ink.rule })),
      ...compass.map((name, index) => {
        const [x, y] = at(index * 90, radius + 16);
        return label(name, { x, y: y + 4, anchor: 'middle', bold: name === 'N' });
      }),
      ...still(data).map(({ pressurePa }) =>
        ring(centre, r(Math.max(0, -pressurePa)), { color: ink.line, dash: '5 4' }),
      ),
      ...data.winds.map(({ windFromDeg, pressurePa }, index) => {
        const [x, y] = at(windFromDeg, r(Math.max(0, -pressurePa)));
        return markup`${[
          line([centre.x, centre.y], [x, y], { color: ink.deep, width: 3 }),
          markup`<circle cx="${px(x)}" cy="${px(y)}" r="9" fill="${ink.paper}" stroke="${ink.deep}" stroke-width="2"/>`,
          label(String(index + 1), { x, y: y + 4, anchor: 'middle', bold: true, size: 11 }),
        ]}`;
      }),
      ...ticks.map((tick) => {
        const [x, y] = at(45, r(tick));
        return label(`${tickWords(-tick)} Pa`, {
          x: x + 2,
          y: y - 2,
          size: 11,
          color: ink.soft,
          halo: true,
        });
      }),
      label('Deepest zone in the worst state, zone minus outdoors', {
        x: list.x,
        y: list.y - 20,
        color: ink.soft,
      }),
      ...rows.map(({ lines, y }) => textLines(lines, { x: list.x, y })),
    ],
  });
}

function still({ stillPressurePa }: WindRoseDrawingData): readonly { pressurePa: number }[] {
  return stillPressurePa === undefined ? [] : [{ pressurePa: stillPressurePa }];
}

function ring(
  centre: { readonly x: number; readonly y: number },
  r: number,
  dress: { readonly color: string; readonly dash?: string },
): Markup {
  return markup`<circle cx="${px(centre.x)}" cy="${px(centre.y)}" r="${px(r)}" fill="none" stroke="${dress.color}" stroke-dasharray="${dress.dash ?? 'none'}"/>`;
}

function listRows(data: WindRoseDrawingData, { system }: DrawingOptions): readonly string[] {
  const unit = unitWords('speed', system);
  const shown = data.winds
    .slice(0, 12)
    .map(({ weather, windFromDeg, windSpeedMPerS, pressurePa }, index) => {
      const speed = inColumnUnit(windSpeedMPerS, 'speed', system).toFixed(0);
      return `${index + 1}. ${tenths(pressurePa)} Pa: ${speed} ${unit} from ${windFromDeg.toFixed(0)}°, ${weather}`;
    });
  return [
    ...shown,
    ...still(data).map(({ pressurePa }) => `${tenths(pressurePa)} Pa: still air, the dashed ring`),
  ];
}

function describe(data: WindRoseDrawingData): string {
  const winds = data.winds
    .slice(0, 12)
    .map(
      ({ windFromDeg, pressurePa }) => `from ${windFromDeg.toFixed(0)}° ${tenths(pressurePa)} Pa`,
    );
  return `Deepest zone in the worst state, by wind: ${winds.join(', ')}.`;
}

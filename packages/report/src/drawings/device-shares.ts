import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { ink, label, line, rectangle } from './parts/marks.js';
import { straightScale } from './parts/scale.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
import { lineHeight, textLines, textRows } from './parts/text-rows.js';
import { tenths } from './parts/tenths.js';

/** What each running device adds to the fall of one zone. Wanted of a study of attribution. */
export interface DeviceSharesDrawingData {
  readonly zone: string;
  /** The situation in words. */
  readonly situation: string;
  /** Largest first; what pushes air in has a positive change. */
  readonly shares: readonly {
    readonly device: string;
    /** Its part of the zone's change from the baseline [Pa]. */
    readonly changePa: number;
    /** Its part of the whole change [-]. */
    readonly share: number;
  }[];
}

/** Room for the bar under a name [px]. */
const barRoom = 16;
const shownAtMost = 12;

/**
 * The share of each device in the fall of a zone, as bars.
 *
 * @param data - devices with their parts
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawDeviceShares(data: DeviceSharesDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const shown = data.shares.slice(0, shownAtMost);
  const more = data.shares.length - shown.length;
  const sizes = shown.map(({ changePa }) => changePa);
  const x = straightScale(
    [Math.min(0, ...sizes), Math.max(0, ...sizes, Math.min(0, ...sizes) === 0 ? 1 : 0)],
    [width - 10, 4],
  );
  const { rows, end } = textRows(
    shown.map(({ device }) => device),
    { width: width - 150, top: 20, gap: barRoom + 3 },
  );
  const bars = shown.map((each, index): Markup => {
    const { lines = [], y = 0 } = rows[index] ?? {};
    const value = `${tenths(each.changePa)} Pa, ${(100 * each.share).toFixed(0)} %`;
    const [from, to] = [Math.min(x(0), x(each.changePa)), Math.max(x(0), x(each.changePa))];
    const box = {
      x: from,
      y: y + (lines.length - 1) * lineHeight + 5,
      width: Math.max(1, to - from),
      height: 10,
    };
    return markup`${[
      textLines(lines, { x: 10, y, bold: true, halo: true }),
      label(value, { x: width - 10, y, anchor: 'end', halo: true }),
      rectangle(box, { fill: each.changePa <= 0 ? ink.deep : ink.paper, edge: ink.deep }),
      rectangle(box, { fill: each.changePa <= 0 ? 'none' : hatchFill(id, 'light') }),
    ]}`;
  });
  const bottom = end - 12;
  return svgDrawing({
    id,
    width,
    height: bottom + (more > 0 ? 24 : 6),
    title: `Share of each device in the fall of ${data.zone}`,
    description: `With ${data.situation}: ${shown
      .map(({ device, changePa }) => `${device} ${tenths(changePa)} Pa`)
      .join(', ')}.`,
    body: [
      line([x(0), 8], [x(0), bottom], { color: ink.line }),
      ...bars,
      ...(more > 0
        ? [label(`and ${more} more in the table`, { x: 10, y: bottom + 16, color: ink.soft })]
        : []),
    ],
  });
}

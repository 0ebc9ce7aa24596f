import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { fitText } from './parts/fit-text.js';
import { ink, label, line, rectangle, textSize } from './parts/marks.js';
import { straightScale } from './parts/scale.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
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

const rowHeight = 34;
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
    [width - 10, 10],
  );
  const bars = shown.map((each, index): Markup => {
    const y = 8 + index * rowHeight;
    const value = `${tenths(each.changePa)} Pa, ${(100 * each.share).toFixed(0)} %`;
    const [from, to] = [Math.min(x(0), x(each.changePa)), Math.max(x(0), x(each.changePa))];
    const box = { x: from, y: y + 17, width: Math.max(1, to - from), height: 10 };
    return markup`${[
      label(fitText(each.device, width - 140, textSize), { x: 10, y: y + 12, bold: true }),
      label(value, { x: width - 10, y: y + 12, anchor: 'end' }),
      rectangle(box, { fill: each.changePa <= 0 ? ink.deep : ink.paper, edge: ink.deep }),
      rectangle(box, { fill: each.changePa <= 0 ? 'none' : hatchFill(id, 'light') }),
    ]}`;
  });
  const bottom = 8 + shown.length * rowHeight;
  return svgDrawing({
    id,
    width,
    height: bottom + (more > 0 ? 24 : 6),
    title: `Share of each device in the fall of ${data.zone}`,
    description: `With ${data.situation}: ${shown
      .map(({ device, changePa }) => `${device} ${tenths(changePa)} Pa`)
      .join(', ')}.`,
    body: [
      ...bars,
      line([x(0), 8], [x(0), bottom], { color: ink.line }),
      ...(more > 0
        ? [label(`and ${more} more in the table`, { x: 10, y: bottom + 16, color: ink.soft })]
        : []),
    ],
  });
}

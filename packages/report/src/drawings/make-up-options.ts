import type { Verdict } from '@evendraft/rules';
import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { fitText, textWidth } from './parts/fit-text.js';
import { ink, label, line, px, textSize } from './parts/marks.js';
import { roundTicks, straightScale, type Scale } from './parts/scale.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';

/** Make-up options with what each leaves of the suction. Wanted of a study of sizing. */
export interface MakeUpOptionsDrawingData {
  /** What all options are held against, in words. */
  readonly situation: string;
  /** The strictest limit among the appliances [Pa]; absent where there is none. */
  readonly limitPa?: number;
  readonly options: readonly {
    readonly name: string;
    /** Present on the one that is recommended: why. */
    readonly recommended?: string;
    /** Worst pressure with it: zone minus outdoors or change, as the limit is [Pa]. */
    readonly worstPressurePa: number;
    /** The least favourable verdict with it. */
    readonly verdict: Verdict;
    readonly makeUpFlowM3PerS?: number;
    readonly openingAreaM2?: number;
    readonly faceVelocityMPerS?: number;
    readonly heatingPowerW?: number;
    /** What happens when it fails, in words. */
    readonly whenItFails?: string;
  }[];
}

const shownAtMost = 12;

/**
 * Make-up options compared: what each leaves of the suction, on one scale with the strictest limit.
 *
 * @param data - options
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawMakeUpOptions(data: MakeUpOptionsDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const shown = data.options.slice(0, shownAtMost);
  const pressures = [...shown.map(({ worstPressurePa }) => worstPressurePa), data.limitPa ?? 0];
  const ticks = roundTicks(
    [Math.min(-1, ...pressures), Math.max(0, ...pressures)],
    width < 500 ? 4 : 6,
  );
  // Outdoor pressure on the left, so that a longer line is a deeper house.
  const x = straightScale([ticks.at(-1) ?? 0, ticks[0] ?? -1], [14, width - 24]);
  // On a narrow drawing a name has a line of its own: cut short, a word may say something else.
  const rowHeight = width < 500 ? 58 : 40;
  const bottom = shown.length * rowHeight + 4;
  const limit = data.limitPa;
  return svgDrawing({
    id,
    width,
    height: bottom + (limit === undefined ? 24 : 42),
    title: 'Make-up options compared',
    description: `${data.situation}: ${shown
      .map(
        ({ name, worstPressurePa, verdict }) => `${name} ${tenths(worstPressurePa)} Pa, ${verdict}`,
      )
      .join('; ')}.`,
    body: [
      ...ticks.map(
        (tick) =>
          markup`${line([x(tick), 0], [x(tick), bottom], { color: ink.rule })}${label(tickWords(tick), { x: x(tick), y: bottom + 15, anchor: 'middle', color: ink.soft })}`,
      ),
      ...(limit === undefined
        ? []
        : [
            ...shown.map((_, index) =>
              line(
                [x(limit), (index + 1) * rowHeight - 21],
                [x(limit), (index + 1) * rowHeight - 4],
                {
                  width: 2.6,
                },
              ),
            ),
            line([x(limit), bottom], [x(limit), bottom + 20], { width: 2.6 }),
            label(`limit ${tickWords(limit)} Pa`, {
              x: x(limit) + (x(limit) > width / 2 ? 4 : -4),
              y: bottom + 33,
              anchor: x(limit) > width / 2 ? 'end' : 'start',
              bold: true,
              halo: true,
            }),
          ]),
      ...shown.map((each, index) => option(each, { x, y: index * rowHeight, width, rowHeight })),
    ],
  });
}

function option(
  each: MakeUpOptionsDrawingData['options'][number],
  place: {
    readonly x: Scale;
    readonly y: number;
    readonly width: number;
    readonly rowHeight: number;
  },
): Markup {
  const { x, y, width, rowHeight } = place;
  const value = `${tenths(each.worstPressurePa)} Pa, ${each.verdict}`;
  const name = each.recommended === undefined ? each.name : `${each.name} (recommended)`;
  const [end, bar] = [x(each.worstPressurePa), y + rowHeight - 13];
  const alone = width < 500;
  const room = alone ? width - 20 : width - textWidth(value, textSize) - 40;
  return markup`${[
    label(fitText(name, room, textSize), {
      x: 14,
      y: y + 14,
      bold: each.recommended !== undefined,
      halo: true,
    }),
    label(value, {
      x: alone ? 14 : width - 14,
      y: alone ? y + 30 : y + 14,
      anchor: alone ? 'start' : 'end',
      halo: true,
    }),
    line([x(0), bar], [end, bar], { color: ink.deep, width: 3 }),
    markup`<circle cx="${px(end)}" cy="${px(bar)}" r="6" fill="${each.verdict === 'within the limit' ? ink.paper : ink.line}" stroke="${ink.line}" stroke-width="2"/>`,
  ]}`;
}

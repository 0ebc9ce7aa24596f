import type { Verdict } from '@evendraft/rules';
import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { textWidth } from './parts/fit-text.js';
import { ink, label, line, px, textSize } from './parts/marks.js';
import { roundTicks, straightScale, type Scale } from './parts/scale.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { lineHeight, textLines, textRows, type TextRow } from './parts/text-rows.js';
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
/** Room for the bar under a name [px]. */
const barRoom = 26;

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
  const limit = data.limitPa;
  const alone = width < 500;
  const values = shown.map(valueWords);
  // On a narrow drawing the value has a line of its own under the name.
  const valueRoom = alone
    ? 0
    : Math.max(0, ...values.map((each) => textWidth(each, textSize))) + 16;
  const under = barRoom + (alone ? lineHeight : 0);
  const { rows, end } = textRows(
    shown.map(({ name, recommended }) =>
      recommended === undefined ? name : `${name} (recommended)`,
    ),
    { width: width - 28 - valueRoom, top: 14, gap: under },
  );
  const bottom = end - 8;
  const more = data.options.length - shown.length;
  const foot = bottom + (limit === undefined ? 24 : 42);
  const bars = rows.map(({ y, lines }) => y + lines.length * lineHeight + under - 22);
  return svgDrawing({
    id,
    width,
    height: foot + (more > 0 ? 14 : 0),
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
            ...bars.map((bar) => line([x(limit), bar - 8], [x(limit), bar + 8], { width: 2.6 })),
            line([x(limit), bottom - 5], [x(limit), bottom + 3], { width: 2.6 }),
            label(`limit ${tickWords(limit)} Pa`, {
              x: Math.min(Math.max(x(limit), 52), width - 52),
              y: bottom + 31,
              anchor: 'middle',
              bold: true,
              halo: true,
            }),
          ]),
      ...(more > 0
        ? [label(`and ${more} more in the table`, { x: 14, y: foot + 8, color: ink.soft })]
        : []),
      ...shown.map((each, index) =>
        option(each, {
          x,
          width,
          value: { text: values[index] ?? '', alone },
          name: rows[index] ?? { lines: [], y: 0 },
          bar: bars[index] ?? 0,
        }),
      ),
    ],
  });
}

type MakeUpOption = MakeUpOptionsDrawingData['options'][number];

function valueWords({ worstPressurePa, verdict }: MakeUpOption): string {
  return `${tenths(worstPressurePa)} Pa, ${verdict}`;
}

function option(
  each: MakeUpOption,
  place: {
    readonly x: Scale;
    readonly width: number;
    readonly name: TextRow;
    readonly value: { readonly text: string; readonly alone: boolean };
    /** Where the bar lies [px]. */
    readonly bar: number;
  },
): Markup {
  const { x, width, name, value, bar } = place;
  const end = x(each.worstPressurePa);
  const { lines, y } = name;
  return markup`${[
    textLines(lines, { x: 14, y, bold: each.recommended !== undefined, halo: true }),
    label(value.text, {
      x: value.alone ? 14 : width - 14,
      y: value.alone ? y + lines.length * lineHeight : y,
      anchor: value.alone ? 'start' : 'end',
      halo: true,
    }),
    line([x(0), bar], [end, bar], { color: ink.deep, width: 3 }),
    markup`<circle cx="${px(end)}" cy="${px(bar)}" r="6" fill="${each.verdict === 'within the limit' ? ink.paper : ink.line}" stroke="${ink.line}" stroke-width="2"/>`,
  ]}`;
}

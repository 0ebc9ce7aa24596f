import type { Markup } from '../internal/markup.js';
import { markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { ink, label, line, rectangle } from './parts/marks.js';
import { straightScale, type Scale } from './parts/scale.js';
import { svgDrawing } from './parts/svg-drawing.js';
import { lineHeight, textLines, textRows, type TextRow } from './parts/text-rows.js';

/** How likely each limit is exceeded, given what is uncertain. Wanted of a study of uncertainty. */
export interface ExceedanceDrawingData {
  /** What was drawn at random and how often, in words. */
  readonly basis: string;
  readonly limits: readonly {
    readonly appliance: string;
    readonly limitPa: number;
    /** Probability that the worst case is beyond it [-]. */
    readonly probability: number;
    /** Ends of the interval in which the probability lies [-]; absent where it is not known. */
    readonly low?: number;
    readonly high?: number;
  }[];
}

/** Room for the bar under a name [px]. */
const barRoom = 22;

/**
 * The probability that each limit is exceeded, as a bar from none to certain.
 *
 * @param data - limits with probabilities
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawExceedance(data: ExceedanceDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const x = straightScale([0, 1], [12, width - 20]);
  const names = data.limits.map(
    ({ appliance, limitPa }) => `${appliance}, limit ${tickWords(limitPa)} Pa`,
  );
  const { rows, end } = textRows(names, { width: width - 96, top: 14, gap: barRoom + 3 });
  const bottom = end - 8;
  return svgDrawing({
    id,
    width,
    height: bottom + 26,
    title: 'Probability of exceeding each limit',
    description: `${data.basis}: ${data.limits
      .map(({ appliance, probability }) => `${appliance} ${percent(probability)}`)
      .join(', ')}.`,
    body: [
      ...[0, 0.25, 0.5, 0.75, 1].map(
        (tick) =>
          markup`${line([x(tick), 0], [x(tick), bottom], { color: ink.rule })}${label(
            percent(tick),
            {
              x: x(tick),
              y: bottom + 16,
              anchor: tick === 0 ? 'start' : tick === 1 ? 'end' : 'middle',
              color: ink.soft,
            },
          )}`,
      ),
      ...data.limits.map((each, index) => {
        const { lines = [], y = 0 } = rows[index] ?? {};
        return bar(each, { x, y, lines, width });
      }),
    ],
  });
}

function bar(
  each: ExceedanceDrawingData['limits'][number],
  place: { readonly x: Scale; readonly width: number } & TextRow,
): Markup {
  const { x, y, lines, width } = place;
  const { low, high } = each;
  const top = y + (lines.length - 1) * lineHeight + 7;
  const middle = top + 5;
  return markup`${[
    textLines(lines, { x: 12, y, bold: true, halo: true }),
    label(percent(each.probability), { x: width - 20, y, anchor: 'end', halo: true }),
    rectangle(
      { x: x(0), y: top, width: Math.max(1, x(each.probability) - x(0)), height: 10 },
      { fill: ink.deep, edge: ink.deep },
    ),
    ...(low === undefined || high === undefined
      ? []
      : [
          line([x(low), middle], [x(high), middle], { color: ink.line, width: 2 }),
          line([x(low), middle - 5], [x(low), middle + 5], { color: ink.mid, width: 2 }),
          line([x(high), middle - 5], [x(high), middle + 5], { color: ink.line, width: 2 }),
        ]),
  ]}`;
}

/** Never says certain or impossible of a number that is neither. */
function percent(probability: number): string {
  if (probability > 0 && probability < 0.01) return 'under 1 %';
  if (probability < 1 && probability > 0.99) return 'over 99 %';
  return `${(100 * probability).toFixed(0)} %`;
}

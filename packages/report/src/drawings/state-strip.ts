import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { ink, label, line, px } from './parts/marks.js';
import { roundTicks, straightScale } from './parts/scale.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
import { textLines, textRows, type TextRow } from './parts/text-rows.js';
import { tenths } from './parts/tenths.js';

/** Every situation of a study, worst first. */
export interface StateStripDrawingData {
  /** Situations, deepest first: the state in words, its weather, the deepest zone's pressure. */
  readonly situations: readonly {
    readonly label: string;
    readonly condition: string;
    readonly pressurePa: number;
  }[];
}

const plotHeight = 150;
const namedAtMost = 6;
/** Where the words of a named situation begin, behind its number and its pressure [px]. */
const wordsAt = 96;

/**
 * Every situation as a strip that hangs down from outdoor pressure, worst first; the worst are named.
 *
 * @param data - the situations
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawStateStrip(data: StateStripDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const { situations } = data;
  const pressures = situations.map(({ pressurePa }) => pressurePa);
  const ticks = roundTicks([Math.min(-1, ...pressures), Math.max(0, ...pressures)], 4);
  const left = 44;
  const top = 24;
  const y = straightScale([ticks.at(-1) ?? 0, ticks[0] ?? -1], [top, top + plotHeight]);
  const x = straightScale([0, Math.max(1, situations.length)], [left, width - 6]);
  const named = namedPlaces(situations);
  const listTop = top + plotHeight + 26;
  const { rows, end } = textRows(
    named.map((each) => `${each.label} (${each.condition})`),
    { width: width - wordsAt - 4, top: listTop },
  );
  const outline = pressures
    .map((pressurePa, index) => `H${px(x(index))}V${px(y(pressurePa))}H${px(x(index + 1))}`)
    .join('');
  return svgDrawing({
    id,
    width,
    height: end - 8,
    title: 'Every situation, worst first',
    description:
      situations.length === 0
        ? 'No situation was solved.'
        : `${situations.length} situations from ${tenths(pressures[0] ?? 0)} Pa to ` +
          `${tenths(pressures.at(-1) ?? 0)} Pa in the deepest zone of each.`,
    body: [
      label('Pa in the deepest zone, zone minus outdoors', { x: 0, y: 12, color: ink.soft }),
      ...ticks.map((tick) => line([left, y(tick)], [width - 6, y(tick)], { color: ink.rule })),
      ...ticks.map((tick) =>
        label(tickWords(tick), { x: left - 6, y: y(tick) + 4, anchor: 'end', color: ink.soft }),
      ),
      markup`<path d="M${px(x(0))} ${px(y(0))}${outline}V${px(y(0))}Z" fill="${hatchFill(id, 'medium')}" stroke="${ink.deep}" stroke-width="1"/>`,
      line([left, y(0)], [width - 6, y(0)], { width: 1.5 }),
      ...named.map(
        ({ index, pressurePa }, row) =>
          markup`${[
            line(
              [x(index + 0.5), y(Math.max(0, pressurePa)) - 2],
              [x(index + 0.5), y(pressurePa)],
              {
                color: ink.line,
                width: 1.4,
              },
            ),
            label(String(row + 1), {
              x: x(index + 0.5),
              y: y(pressurePa) + 13,
              anchor: 'middle',
              bold: true,
              halo: true,
            }),
          ]}`,
      ),
      ...named.map((each, row) =>
        namedRow(each, { row, ...(rows[row] ?? { lines: [], y: listTop }) }),
      ),
    ],
  });
}

interface NamedSituation {
  readonly index: number;
  readonly label: string;
  readonly condition: string;
  readonly pressurePa: number;
}

/** The worst of each running state, so that one state in many weathers does not fill the list. */
function namedPlaces(situations: StateStripDrawingData['situations']): readonly NamedSituation[] {
  const seen = new Set<string>();
  const named: NamedSituation[] = [];
  const apart = Math.max(1, Math.ceil(situations.length / 24));
  for (const [index, each] of situations.entries()) {
    const last = named.at(-1);
    if (seen.has(each.label) || (last !== undefined && index - last.index < apart)) continue;
    seen.add(each.label);
    named.push({ index, ...each });
    if (named.length === namedAtMost) break;
  }
  return named;
}

function namedRow(
  { pressurePa }: NamedSituation,
  { row, lines, y }: TextRow & { readonly row: number },
): Markup {
  return markup`${[
    label(String(row + 1), { x: 12, y, bold: true, anchor: 'middle' }),
    label(`${tenths(pressurePa)} Pa`, { x: wordsAt - 10, y, anchor: 'end' }),
    textLines(lines, { x: wordsAt, y }),
  ]}`;
}

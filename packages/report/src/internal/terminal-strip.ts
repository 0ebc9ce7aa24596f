import { roundTicks } from '../drawings/parts/scale.js';
import { countWords } from './count-words.js';
import { stripData } from './drawing-data.js';
import type { TerminalSection } from './terminal-findings.js';

/** Fewer situations are told by the table alone. */
const leastSituations = 4;
const mostColumns = 66;
const lineCount = 8;

/**
 * Every situation as a strip in plain characters, worst first: a column hangs as far down as the
 * deepest zone stands below outdoors.
 *
 * Where there are more situations than columns, a column stands for several and shows the worst.
 *
 * @param section - page, assessment and printer
 */
export function terminalStrip(section: TerminalSection): void {
  const { page, assessment } = section;
  const situations = stripData(assessment)?.situations ?? [];
  const lowest = situations[0]?.pressurePa ?? 0;
  if (situations.length < leastSituations || lowest >= 0) return;
  const ticks = roundTicks([lowest, 0], 4);
  const deepest = ticks[0] ?? lowest;
  const numberRoom = Math.max(...ticks.map((tick) => String(tick).length));
  const room = Math.min(mostColumns, page.width - numberRoom - 2);
  if (room < 20) return;
  const columns = Math.min(situations.length, room);
  const pressures = Array.from(
    { length: columns },
    (_, column) => situations[Math.floor((column * situations.length) / columns)]?.pressurePa ?? 0,
  );
  // Few situations get wider columns, so that the strip does not shrink to a corner.
  const wide = Math.max(1, Math.min(6, Math.floor(room / columns)));
  page.blank();
  page.paragraph(
    `${countWords(situations.length, 'situation')}, worst first: Pa of the deepest zone of each.`,
  );
  const step = deepest / lineCount;
  const lines = Array.from({ length: lineCount }, (_, line) => {
    const [top, bottom] = [line * step, (line + 1) * step];
    const tick = ticks.find((each) => each <= top && each > bottom);
    const number = tick === undefined ? '' : String(tick + 0);
    // A column reaches a line if it goes down to the middle of it.
    const cells = pressures.map((pressurePa) => (pressurePa <= (top + bottom) / 2 ? '#' : ' '));
    const bars = cells
      .map((cell) => cell.repeat(wide))
      .join('')
      .trimEnd();
    return `${number.padStart(numberRoom)}  ${bars}`.trimEnd();
  });
  const lastUsed = lines.findLastIndex((text) => text !== '');
  page.lines(lines.slice(0, lastUsed + 1));
}

import type { Verdict } from '@evendraft/rules';
import { displayWidth } from './display-width.js';
import { ladderData } from './drawing-data.js';
import { ladderScale } from './ladder-scale.js';
import { plainText } from './plain-text.js';
import type { TerminalSection } from './terminal-findings.js';
import { wrapText } from './wrap-text.js';

const zonesShown = 6;
const appliancesShown = 8;
const widestName = 20;
/** Less room than this shows nothing. */
const leastPlot = 24;

interface LadderRow {
  readonly name: string;
  readonly valuePa: number;
  readonly limitPa?: number;
  readonly verdict?: Verdict;
}

/**
 * The pressure ladder in plain characters, laid on its side: a line from outdoors down to each value,
 * and a bar where the limit is.
 *
 * @param section - page, assessment and printer
 */
export function terminalLadder(section: TerminalSection): void {
  const { page, assessment, printer } = section;
  const data = ladderData(assessment);
  if (data === undefined) return;
  const zones = data.zones.slice(0, zonesShown);
  const appliances = data.appliances.slice(0, appliancesShown);
  const rows: readonly LadderRow[] = [
    ...zones.map(({ zone, pressurePa }) => ({ name: zone, valuePa: pressurePa })),
    ...appliances.map(({ appliance, ...rest }) => ({ name: appliance, ...rest })),
  ];
  const nameRoom = Math.min(
    widestName,
    Math.max(...rows.map((row) => displayWidth(plainText(row.name)))),
  );
  const valueRoom = Math.max(...rows.map((row) => printer.signedPressure(row.valuePa).length)) + 2;
  const plot = Math.min(60, page.width - nameRoom - valueRoom - 2);
  if (plot < leastPlot) return;
  const limits = appliances.map(({ limitPa }) => limitPa);
  const { scaleOf, ticks, stretched } = ladderScale(
    rows.map(({ valuePa }) => valuePa),
    limits,
  );
  const x = scaleOf([0, plot - 1]);
  const place = (value: number): number => Math.min(plot - 1, Math.max(0, Math.round(x(value))));
  page.heading('Pressure ladder of the worst case');
  page.paragraph(
    'In Pa. First the zones in the worst situation, against outdoors' +
      (appliances.length === 0
        ? '.'
        : '; then each appliance against its limit, which is the bar. From there on the line is ' +
          'double; an X stands on the bar.') +
      (stretched ? ' The scale is stretched towards zero.' : ''),
  );
  page.blank();
  const left = ' '.repeat(nameRoom + 2);
  const lines = [left + tickLine(ticks, place, plot)];
  rows.forEach((row, index) => {
    if (index === zones.length) lines.push('');
    const value = printer.signedPressure(row.valuePa).padStart(valueRoom);
    const dressed = row.verdict === undefined ? value : page.dressVerdict(value, row.verdict);
    const name = plainText(row.name);
    // A name that has no room beside its line stands above it, whole.
    const beside = displayWidth(name) <= nameRoom ? name : '';
    if (beside === '') lines.push(...wrapText(name, { width: page.width }));
    lines.push(`${padded(beside, nameRoom)}  ${rowLine(row, place, plot)}${dressed}`);
  });
  page.lines(lines);
}

/** The ticks as numbers, each beginning where its value is; those that would touch are left out. */
function tickLine(
  ticks: readonly number[],
  place: (value: number) => number,
  plot: number,
): string {
  let line = '';
  for (const tick of [...ticks].reverse()) {
    const text = String(tick + 0);
    const start = Math.min(place(tick), plot - text.length);
    if (line === '' || start >= line.length + 2) line = line.padEnd(start) + text;
  }
  return line;
}

function rowLine(
  { valuePa, limitPa }: LadderRow,
  place: (value: number) => number,
  plot: number,
): string {
  const [zero, value] = [place(0), place(valuePa)];
  const limit = limitPa === undefined ? undefined : place(limitPa);
  return Array.from({ length: plot }, (_, column) => {
    if (column === value) return column === limit ? 'X' : 'o';
    if (column === limit) return '|';
    if (column < Math.min(zero, value) || column > Math.max(zero, value)) return ' ';
    return limit !== undefined && column > limit ? '=' : '-';
  }).join('');
}

/** A name filled to a number of columns. */
function padded(name: string, columns: number): string {
  return name + ' '.repeat(columns - displayWidth(name));
}

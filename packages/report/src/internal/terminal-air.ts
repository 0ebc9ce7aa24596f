import { airTables } from '../tables/air-tables.js';
import { arithmeticWords } from './arithmetic-words.js';
import { fullStop } from './full-stop.js';
import { howFarSentences } from './how-far-words.js';
import { sourceWords } from './source-words.js';
import { tableCells } from './table-cells.js';
import type { TerminalSection } from './terminal-findings.js';
import { givenWords, headWords, screensByUrgency } from './terminal-screens.js';

/** Tables that a terminal shows beside sentences. */
const shown: readonly string[] = ['failures', 'dryers'];
/** Of a table with many columns a terminal has room for some. */
const leftOut: readonly string[] = ['In', 'With', 'Its room, alone', 'Over its door'];

/**
 * How far the house may go, guidance on its air in short, what fails, dryers.
 *
 * @param section - page, assessment and units
 */
export function terminalAir(section: TerminalSection): void {
  const { page, assessment, system } = section;
  const { air } = assessment;
  if (air === undefined) return;
  if (air.status === 'not solved') {
    page.heading('The air beside the appliances');
    page.paragraph(fullStop(air.why));
    return;
  }
  if (air.howFar.airtightness.length > 0) {
    page.heading('How far the house may go without make-up air');
    for (const sentence of howFarSentences(air.howFar, system)) page.bullet(sentence);
  }
  guidance(section);
  for (const table of airTables(assessment, system)) {
    if (!shown.includes(table.id) || table.rows.length === 0) continue;
    page.heading(table.caption);
    if (table.note !== undefined) page.paragraph(table.note);
    page.blank();
    const kept = table.columns.map(({ header }) => !leftOut.includes(header));
    const { columns, rows } = tableCells(table, system);
    page.table(
      columns
        .map((column) => (column.align === 'left' ? { ...column, minimum: 8 } : column))
        .filter((_, index) => kept[index]),
      rows.map((row) => row.filter((_, index) => kept[index])),
    );
  }
}

function guidance({ page, assessment: { air }, system }: TerminalSection): void {
  if (air?.status !== 'solved') return;
  const meant = air.guidance.filter(({ applies }) => applies !== 'no');
  if (meant.length === 0) return;
  page.heading('The air beside the appliances: guidance');
  const within = meant.filter(({ verdict }) => verdict === 'within the limit');
  for (const finding of screensByUrgency(meant)) {
    const { verdict, give, arithmetic, notes, source } = finding;
    if (verdict === 'within the limit') continue;
    const lacks = give.length === 0 ? '' : `, ${givenWords(finding)}`;
    page.verdictParagraph(fullStop(`${verdict}: ${headWords(finding)}${lacks}`));
    if (verdict === 'not judged') continue;
    for (const line of arithmetic) page.paragraph(arithmeticWords(line, system), 4);
    for (const note of notes) page.paragraph(fullStop(note), 4);
    page.paragraph(`Source: ${sourceWords(source)}.`, 4);
  }
  if (within.length === 0) return;
  const titles = [...new Set(within.map(({ title }) => title))];
  page.paragraph(
    `Within the guidance, with their numbers in the full report: ${titles.join('; ')}.`,
  );
}

import { airTables } from '../tables/air-tables.js';
import { fullStop } from './full-stop.js';
import { howFarSentences } from './how-far-words.js';
import type { MarkdownSection } from './markdown-findings.js';
import { tableCells } from './table-cells.js';

/**
 * How far the house may go, guidance on its air, failures, closed dampers, dryers.
 *
 * @param section - page, assessment and units
 */
export function markdownAir({ page, assessment, system }: MarkdownSection): void {
  const { air } = assessment;
  if (air === undefined) return;
  if (air.status === 'not solved') {
    page.heading(2, 'The air beside the appliances');
    page.paragraph(fullStop(air.why));
    return;
  }
  const [howFar, ...tables] = airTables(assessment, system);
  if (howFar !== undefined) {
    page.heading(2, howFar.caption);
    if (howFar.note !== undefined) page.paragraph(howFar.note);
    page.bullets(howFarSentences(air.howFar, system));
  }
  for (const table of tables) {
    if (table.rows.length === 0) continue;
    page.heading(2, table.caption);
    if (table.note !== undefined) page.paragraph(table.note);
    const { columns, rows } = tableCells(table, system);
    page.table(columns, rows);
  }
}

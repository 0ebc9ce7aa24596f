import { fullStop } from '../internal/full-stop.js';
import { howFarSentences } from '../internal/how-far-words.js';
import { markup, type Markup } from '../internal/markup.js';
import { airTables } from '../tables/air-tables.js';
import { htmlList, type HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';

/**
 * How far the house may go, guidance on its air, failures, closed dampers, dryers.
 *
 * @param input - assessment and units
 * @returns HTML; undefined where the air was not asked for
 */
export function airBesideSection({ assessment, system }: HtmlInput): Markup | undefined {
  const { air } = assessment;
  if (air === undefined) return undefined;
  if (air.status === 'not solved') return markup`<p>${fullStop(air.why)}</p>`;
  const [howFar, ...tables] = airTables(assessment, system);
  return markup`${
    howFar === undefined || air.howFar.airtightness.length === 0
      ? undefined
      : markup`<h3>${howFar.caption}</h3>
<p>${howFar.note ?? ''}</p>
${htmlList(howFarSentences(air.howFar, system))}`
  }
${tables.map((table) => htmlTable(table, { system }))}`;
}

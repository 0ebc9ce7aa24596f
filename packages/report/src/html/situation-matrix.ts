import { markup, type Markup } from '../internal/markup.js';
import { conditionWords } from '../internal/situation-words.js';
import { roundedUp } from '../internal/proof-sentences.js';
import type { HtmlInput } from './html-section.js';
import { htmlTable, linesOfStates } from './html-table.js';

/** More zones than this do not fit side by side on a sheet; they go on in a further table. */
const zonesBeside = 5;
/** Cells of pressures in all these tables together; files of the tables hold the rest. */
const cellsAtMost = 600;
const [fewestRows, mostRows] = [10, 100];

/**
 * Every situation with the pressure of every zone, worst first, as one table or several side by side
 * in thought: each has so many zones as fit on a sheet.
 *
 * @param input - assessment and units
 * @returns HTML
 */
export function situationMatrix({ assessment, system }: HtmlInput): Markup {
  const all = assessment.worstCase.situations;
  const names = [...new Set(all.flatMap(({ zones }) => zones.map(({ zone }) => zone)))];
  const groups = Array.from({ length: Math.ceil(names.length / zonesBeside) }, (_, index) =>
    names.slice(index * zonesBeside, (index + 1) * zonesBeside),
  );
  const fitting = Math.floor(cellsAtMost / Math.max(1, names.length));
  const rowsAtMost = Math.min(mostRows, Math.max(fewestRows, fitting));
  return markup`${groups.map((zones, group) =>
    htmlTable(
      {
        id: `situations-${group + 1}`,
        caption:
          groups.length === 1
            ? 'Every situation, worst first'
            : `Every situation, worst first: zones ${group * zonesBeside + 1} to ${group * zonesBeside + zones.length} of ${names.length}`,
        note:
          'Pressures in Pa, zone minus outdoors. On the right the proof of each row: the largest ' +
          "share of a zone's through-flow that does not add up, and how close in Pa every exact " +
          'answer lies.',
        columns: [
          { header: 'No.', quantity: 'count' },
          { header: 'Running' },
          { header: 'Weather' },
          ...zones.map((header) => ({ header, quantity: 'pressure' as const })),
          { header: 'Unbalanced' },
          { header: 'Within' },
        ],
        rows: all.map((each, index) => [
          index + 1,
          each.label,
          conditionWords(each, assessment),
          ...zones.map((name) => each.zones.find(({ zone }) => zone === name)?.pressurePa),
          roundedUp(each.proof.largestRelativeResidual),
          each.proof.enclosureRadiusPa === undefined
            ? 'not shown'
            : roundedUp(each.proof.enclosureRadiusPa),
        ]),
      },
      { system, rowsAtMost, linesAtMost: linesOfStates },
    ),
  )}`;
}

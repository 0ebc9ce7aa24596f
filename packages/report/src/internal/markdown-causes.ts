import { attributionWords } from './attribution-words.js';
import type { MarkdownSection } from './markdown-findings.js';
import { situationWords } from './situation-words.js';
import { importanceRows, probabilityRows, uncertaintyWords } from './uncertainty-words.js';

const number = { align: 'right' as const };

/**
 * Which device costs how many pascals, and how sure the numbers are.
 *
 * @param section - page, assessment and printer
 */
export function markdownCauses(section: MarkdownSection): void {
  attribution(section);
  uncertainty(section);
}

function attribution({ page, assessment, printer }: MarkdownSection): void {
  const { attribution: found } = assessment;
  if (found === undefined || found.shares.length === 0) return;
  page.heading(2, `What each device adds in ${found.zone}`);
  page.paragraph(
    `With ${situationWords(found, assessment, printer)}. ${attributionWords(found, printer)}`,
  );
  page.table(
    [
      { header: 'Device' },
      { header: 'Adds on average', ...number },
      { header: 'Standard error', ...number },
      { header: 'Alone', ...number },
      { header: 'As the last', ...number },
    ],
    found.shares.map(({ device, speed, sharePa, standardErrorPa, alonePa, lastPa }) => [
      `${device} ${speed}`,
      ...[sharePa, standardErrorPa, alonePa, lastPa].map(printer.signedPressure),
    ]),
  );
  page.paragraph('The ladder of switching on, one after the other:');
  page.table(
    [{ header: 'Device' }, { header: 'Adds', ...number }, { header: 'Pressure then', ...number }],
    found.ladder.map(({ device, speed, addsPa, pressurePa }) => [
      `${device} ${speed}`,
      ...[addsPa, pressurePa].map(printer.signedPressure),
    ]),
  );
}

function uncertainty({ page, assessment, printer }: MarkdownSection): void {
  const { uncertainty: study } = assessment;
  if (study === undefined) return;
  page.heading(2, 'How sure the numbers are');
  page.paragraph(uncertaintyWords(study));
  page.table(
    [
      { header: 'Limit' },
      { header: 'Pa', ...number },
      { header: 'Beyond it', ...number },
      { header: '95 of 100 studies', ...number },
    ],
    probabilityRows(study, printer),
  );
  page.table(
    [
      { header: 'Zone' },
      { header: '5 %', ...number },
      { header: 'Half', ...number },
      { header: '95 %', ...number },
      { header: 'What matters most' },
    ],
    importanceRows(study, printer),
  );
}

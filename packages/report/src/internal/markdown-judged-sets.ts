import type { JudgedSet } from '../judged-set.js';
import { arithmeticWords } from './arithmetic-words.js';
import { fullStop } from './full-stop.js';
import { judgedRows, testedStateWords } from './judged-rows.js';
import type { MarkdownSection } from './markdown-findings.js';

/**
 * What the programme's own test would find, the limits of the whole house, and the sets beside the first.
 *
 * @param section - page, assessment and printer
 */
export function markdownJudgedSets(section: MarkdownSection): void {
  const { page, assessment } = section;
  wholeHouse(section, assessment);
  ownTest(section, assessment);
  for (const set of assessment.beside) {
    page.heading(2, `Beside it: ${set.limitSet.name}`);
    page.paragraph(`Limit set ${set.limitSet.id}, edition ${set.limitSet.edition}.`);
    table(section, set);
    wholeHouse(section, set);
    ownTest(section, set);
  }
}

function ownTest(section: MarkdownSection, { programmeTest, limitSet }: JudgedSet): void {
  if (programmeTest === undefined) return;
  section.page.heading(3, `By the programme's own test: ${limitSet.name}`);
  section.page.paragraph(testedStateWords(programmeTest));
  table(section, programmeTest);
}

function table({ page, printer }: MarkdownSection, set: Pick<JudgedSet, 'findings'>): void {
  page.table(
    [
      { header: 'Appliance' },
      { header: 'Finding' },
      ...['Value', 'Limit', 'Margin'].map((header) => ({ header, align: 'right' as const })),
      { header: 'With, or why not' },
    ],
    judgedRows(set, printer),
  );
}

function wholeHouse(
  { page, system }: MarkdownSection,
  { houseFindings, limitSet }: JudgedSet,
): void {
  const shown = houseFindings.filter(({ applies }) => applies !== 'no');
  if (shown.length === 0) return;
  page.heading(3, `The house as a whole: ${limitSet.name}`);
  for (const { verdict, title, reason, why, arithmetic } of shown) {
    page.paragraph(`${verdict}: ${fullStop(title)} ${fullStop(reason ?? why)}`);
    page.bullets(arithmetic.map((line) => arithmeticWords(line, system)));
  }
}

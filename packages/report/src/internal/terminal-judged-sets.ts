import type { RuleFinding, Verdict } from '@evendraft/rules';
import type { JudgedSet } from '../judged-set.js';
import { arithmeticWords } from './arithmetic-words.js';
import { countWords } from './count-words.js';
import { fullStop } from './full-stop.js';
import { judgedRows, testedStateWords } from './judged-rows.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * What the programme's own test would find, the limits of the whole house, and the sets beside the first.
 *
 * @param section - page, assessment and printer
 */
export function terminalJudgedSets(section: TerminalSection): void {
  const { page, assessment } = section;
  wholeHouse(section, assessment);
  if (assessment.programmeTest !== undefined) {
    page.heading("By the programme's own test");
    page.paragraph(
      `${testedStateWords(assessment.programmeTest)} The findings above are over every state and weather, each change against the same doors with everything off; a programme may subtract another baseline, so that either can be the deeper.`,
    );
    page.blank();
    table(section, assessment, 'test');
  }
  for (const set of assessment.beside) {
    besideTable(section, set);
    wholeHouse(section, set);
    if (set.programmeTest === undefined) continue;
    page.blank();
    page.paragraph(`Its own test. ${testedStateWords(set.programmeTest)}`);
    page.blank();
    table(section, set, 'test');
  }
}

/**
 * The sets beside the first, without their tests and without limits of the whole house.
 *
 * @param section - page, assessment and printer
 */
export function terminalBeside(section: TerminalSection): void {
  for (const set of section.assessment.beside) besideTable(section, set);
}

function besideTable(section: TerminalSection, set: JudgedSet): void {
  const { page } = section;
  page.heading(`Beside it: ${set.limitSet.name}`);
  page.paragraph(`Limit set ${set.limitSet.id}, edition ${set.limitSet.edition}.`);
  page.blank();
  table(section, set, 'worst case');
}

function table(
  { page, printer }: TerminalSection,
  set: JudgedSet,
  of: 'worst case' | 'test',
): void {
  const rows = judgedRows(of === 'test' ? (set.programmeTest ?? set) : set, printer);
  page.table(
    [
      { header: 'Appliance', minimum: 9 },
      {
        header: 'Finding',
        minimum: 9,
        dress: (padded, cell) => page.dressVerdict(padded, cell as Verdict),
      },
      { header: 'Value', align: 'right' },
      { header: 'Limit', align: 'right' },
      { header: 'Margin', align: 'right' },
      { header: 'With, or why not', minimum: 16 },
    ],
    rows,
  );
}

function wholeHouse({ page, system }: TerminalSection, { houseFindings }: JudgedSet): void {
  const shown = houseFindings.filter(({ applies }) => applies !== 'no');
  if (shown.length === 0) return;
  page.heading(`The house as a whole: ${countWords(shown.length, 'limit')}`);
  for (const finding of shown) {
    page.bullet(`${finding.verdict}: ${fullStop(finding.title)}${reasonWords(finding)}`);
    for (const line of finding.arithmetic) page.paragraph(arithmeticWords(line, system), 4);
  }
}

function reasonWords({ reason, why }: RuleFinding): string {
  return ` ${fullStop(reason ?? why)}`;
}

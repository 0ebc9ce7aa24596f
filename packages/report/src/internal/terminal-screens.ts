import { verdictsByUrgency, type RuleFinding } from '@evendraft/rules';
import { arithmeticWords } from './arithmetic-words.js';
import { countWords } from './count-words.js';
import { fullStop } from './full-stop.js';
import { sourceWords } from './source-words.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * Code screens that apply or might: those with a verdict line by line, then what the others lack.
 *
 * @param section - page, assessment and printer
 */
export function terminalScreens({ page, assessment, system }: TerminalSection): void {
  const meant = assessment.screens.filter(({ applies }) => applies !== 'no');
  if (meant.length === 0) return;
  const judged = screensByUrgency(meant.filter(({ verdict }) => verdict !== 'not judged'));
  const open = meant.filter(({ verdict }) => verdict === 'not judged');
  const others = assessment.screens.length - meant.length;
  page.heading('Code screens');
  page.paragraph(
    `${countWords(judged.length, 'rule')} judged, ${open.length} not judged, ${others} not meant for this house. Local code and its official decide which of them bind.`,
  );
  for (const screen of judged) {
    page.blank();
    page.verdictParagraph(`${screen.verdict}: ${headWords(screen)}`);
    for (const line of screen.arithmetic) page.paragraph(arithmeticWords(line, system), 4);
    if (screen.satisfiedBy.length > 0) {
      page.paragraph(`Satisfied by: ${screen.satisfiedBy.map(fullStop).join(' ')}`, 4);
    }
    page.paragraph(`Source: ${sourceWords(screen.source)}.`, 4);
  }
  if (open.length === 0) return;
  page.blank();
  page.paragraph('Not judged, because something is not given or cannot be said:');
  for (const screen of open) {
    const lacks = screen.give.length === 0 ? (screen.reason ?? screen.why) : givenWords(screen);
    page.bullet(`${headWords(screen)}: ${fullStop(lacks)}`);
  }
}

/**
 * Screens in the order in which a reader needs them.
 *
 * @param screens - in any order
 * @returns the same screens; equals keep their order
 */
export function screensByUrgency(screens: readonly RuleFinding[]): readonly RuleFinding[] {
  return [...screens].sort(
    (a, b) => verdictsByUrgency.indexOf(a.verdict) - verdictsByUrgency.indexOf(b.verdict),
  );
}

/**
 * What a screen is about.
 *
 * @param screen - the finding
 * @returns title, subject and region, without a full stop
 */
export function headWords({ title, subject, region }: RuleFinding): string {
  const place = region === 'everywhere' ? '' : ` (${region})`;
  return `${title}${subject === undefined ? '' : `, ${subject}`}${place}`;
}

/**
 * What a rule needs that was not given.
 *
 * @param screen - the finding
 * @returns words without a full stop
 */
export function givenWords({ give }: RuleFinding): string {
  return `give ${give.join('; ')}`;
}

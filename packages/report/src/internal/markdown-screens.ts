import { arithmeticWords } from './arithmetic-words.js';
import { fullStop } from './full-stop.js';
import type { MarkdownSection } from './markdown-findings.js';
import { sourceWords } from './source-words.js';
import { givenWords, headWords, screensByUrgency } from './terminal-screens.js';

/**
 * Every code screen: those that apply or might with their arithmetic, the others by name.
 *
 * @param section - page, assessment and printer
 */
export function markdownScreens({ page, assessment, system }: MarkdownSection): void {
  const { screens } = assessment;
  if (screens.length === 0) return;
  page.heading(2, 'Code screens');
  page.paragraph('Local code and its official decide which of these rules bind.');
  const meant = screens.filter(({ applies }) => applies !== 'no');
  for (const screen of screensByUrgency(meant)) {
    const { verdict, why, arithmetic, reason, satisfiedBy, give, notes, source } = screen;
    page.heading(3, `${headWords(screen)}: ${verdict}`);
    page.bullets([
      fullStop(why),
      ...arithmetic.map((line) => arithmeticWords(line, system)),
      ...(reason === undefined || reason === why ? [] : [fullStop(reason)]),
      ...(give.length === 0 ? [] : [`To judge it: ${fullStop(givenWords(screen))}`]),
      ...satisfiedBy.map((each) => `Satisfied by: ${fullStop(each)}`),
      ...notes.map((note) => `Note: ${fullStop(note)}`),
      `Source: ${sourceWords(source)}.`,
    ]);
  }
  const others = screens.filter(({ applies }) => applies === 'no');
  if (others.length === 0) return;
  page.heading(3, 'Not meant for this house');
  page.bullets(others.map((screen) => `${headWords(screen)}: ${fullStop(screen.why)}`));
}

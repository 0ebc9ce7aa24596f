import type { UnitSystem } from '@evendraft/units';
import { answerSentences } from './answer-sentences.js';
import type { Assessment } from './assessment.js';
import { markdownAir } from './internal/markdown-air.js';
import { markdownBasis } from './internal/markdown-basis.js';
import { markdownCauses } from './internal/markdown-causes.js';
import { markdownCures } from './internal/markdown-cures.js';
import { markdownDraft } from './internal/markdown-draft.js';
import { markdownFindings, type MarkdownSection } from './internal/markdown-findings.js';
import { markdownJudgedSets } from './internal/markdown-judged-sets.js';
import { markdownPage } from './internal/markdown-page.js';
import { markdownResults } from './internal/markdown-results.js';
import { markdownScreens } from './internal/markdown-screens.js';
import { numberPrinter } from './internal/number-printer.js';

/** How the full report is written. */
export interface MarkdownOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
}

/**
 * The full report as Markdown: the answer, cautions, findings with their sources, every situation,
 * and all that the numbers rest on.
 *
 * Names from the house file are escaped: they never become markup, links or HTML.
 *
 * @param assessment - what was found
 * @param options - the reader's units
 * @returns a Markdown document with tables, ending in a line end
 */
export function renderMarkdown(assessment: Assessment, options: MarkdownOptions): string {
  const page = markdownPage();
  const section: MarkdownSection = {
    page,
    assessment,
    printer: numberPrinter(options.system),
    system: options.system,
  };
  page.heading(1, `${assessment.house.name}: pressures and findings`);
  page.heading(2, 'Answer');
  page.bullets(answerSentences(assessment, options));
  if (assessment.cautions.length > 0) {
    page.heading(2, 'Cautions');
    page.bullets(assessment.cautions);
  }
  markdownFindings(section);
  markdownDraft(section);
  markdownCures(section);
  markdownJudgedSets(section);
  markdownCauses(section);
  markdownResults(section);
  markdownAir(section);
  markdownScreens(section);
  markdownBasis(section);
  return page.text();
}

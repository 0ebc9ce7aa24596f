import type { UnitSystem } from '@evendraft/units';
import { answerSentences } from './answer-sentences.js';
import type { Assessment } from './assessment.js';
import { houseWords } from './internal/house-words.js';
import { numberPrinter } from './internal/number-printer.js';
import { terminalAir } from './internal/terminal-air.js';
import { terminalAttribution } from './internal/terminal-attribution.js';
import { terminalCures } from './internal/terminal-cures.js';
import { terminalDraft } from './internal/terminal-draft.js';
import { terminalFindings, type TerminalSection } from './internal/terminal-findings.js';
import { terminalFlows } from './internal/terminal-flows.js';
import { terminalJudgedSets } from './internal/terminal-judged-sets.js';
import { terminalLadder } from './internal/terminal-ladder.js';
import { terminalPage } from './internal/terminal-page.js';
import { terminalRemarks } from './internal/terminal-remarks.js';
import { terminalScreens } from './internal/terminal-screens.js';
import { terminalStates } from './internal/terminal-states.js';
import { terminalStrip } from './internal/terminal-strip.js';
import { terminalUncertainty } from './internal/terminal-uncertainty.js';
import { terminalWhatDecides } from './internal/terminal-what-decides.js';
import { ReportError } from './report-error.js';

/** How an assessment is shown in a terminal. */
export interface TerminalOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
  /** Columns of the line, at least 40; 80 if absent [-]. */
  readonly width?: number;
  /** Whether verdicts and headings are coloured; the words say the same without. */
  readonly color?: boolean;
  /** How many operating states are listed at most; 12 if absent [-]. */
  readonly states?: number;
  /**
   * How the reader gets everything, e.g. `--all`: where this is given, only what decides is shown, and then how much
   * more there is; everything is shown if absent.
   */
  readonly restWith?: string;
}

/** Below this a table has no room for words. */
const narrowestPage = 40;

/**
 * An assessment as a rater reads it in a minute: the answer, the findings, the operating states
 * worst first, the air moved, then what was assumed, not modelled and must be heeded; or only what decides.
 *
 * Numbers are rounded each by itself, so a difference of two may look off by its last digit. Names
 * from the house file lose control characters, so that they cannot command the terminal.
 *
 * @param assessment - what was found
 * @param options - units, width, colour and length
 * @returns lines no wider than asked, ending in a line end
 * @throws ReportError `report.invalid-width` or `report.invalid-count`
 */
export function renderTerminal(assessment: Assessment, options: TerminalOptions): string {
  const { system, width = 80, color = false, states = 12, restWith } = options;
  if (!Number.isFinite(width)) {
    throw new ReportError('report.invalid-width', `${width} is not a number of columns.`);
  }
  if (!Number.isInteger(states) || states < 1) {
    throw new ReportError('report.invalid-count', `${states} is not a number of states to list.`);
  }
  const page = terminalPage({ width: Math.max(narrowestPage, Math.floor(width)), color });
  const printer = numberPrinter(system);
  const section: TerminalSection = { page, assessment, printer, system };

  page.heading(assessment.house.name);
  page.paragraph(houseWords(assessment, printer));
  page.blank();
  for (const sentence of answerSentences(assessment, { system })) page.verdictParagraph(sentence);
  if (restWith === undefined) everything(section, states);
  else terminalWhatDecides(section, restWith);
  page.blank();
  page.paragraph(`Evendraft ${assessment.libraryVersion}. House file ${assessment.house.digest}`);
  return page.text();
}

function everything(section: TerminalSection, states: number): void {
  terminalLadder(section);
  terminalFindings(section);
  terminalDraft(section);
  terminalCures(section);
  terminalJudgedSets(section);
  terminalAttribution(section);
  terminalUncertainty(section);
  terminalStates(section, states);
  terminalStrip(section);
  terminalFlows(section);
  terminalAir(section);
  terminalScreens(section);
  terminalRemarks(section);
}

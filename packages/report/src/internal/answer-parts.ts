import { verdictsByUrgency, type Finding } from '@evendraft/rules';
import type { ZoneWorst } from '@evendraft/studies';
import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { countWords } from './count-words.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { incompleteWords } from './incomplete-words.js';
import { numberPrinter, type NumberPrinter } from './number-printer.js';
import { againstOutdoors, fromBaseline, marginWords, quantityWords } from './pressure-words.js';
import { situationWords } from './situation-words.js';
import { spillsSomewhere } from '../spills-somewhere.js';
import { zonesThatMatter } from './zones-that-matter.js';

/** The sentences of the answer, by what they say. */
export interface AnswerParts {
  /** That the work was stopped, and what is not shown; empty where all was finished. */
  readonly incomplete: readonly string[];
  /** How far down the worst zone goes, and with what. */
  readonly worst: string;
  /** That situations are missing; empty where none is. */
  readonly unsolved: readonly string[];
  /** Each kind of verdict with its appliances, the most urgent first; or that nothing was judged. */
  readonly findings: readonly string[];
  /** Appliances whose solved flue leaves gas in the room somewhere; empty where none does. */
  readonly flues: readonly string[];
  /** That none of it is a clearance; empty where nothing was judged. */
  readonly closing: readonly string[];
}

/** More names than this are counted instead: the table lists them all. */
const namedAtMost = 3;

/**
 * The answer by its parts, so that a page can set them apart.
 *
 * @param assessment - what was found
 * @param system - the reader's units
 * @returns sentences that carry names from the house file
 */
export function answerParts(assessment: Assessment, system: UnitSystem): AnswerParts {
  const printer = numberPrinter(system);
  return {
    incomplete: incompleteWords(assessment.incomplete),
    worst: worstZoneSentence(assessment, printer),
    unsolved: unsolvedSentences(assessment),
    findings: findingSentences(assessment, printer),
    flues: flueSentences(assessment),
    closing:
      assessment.findings.length === 0
        ? []
        : ['None of this is a clearance: a test on site decides.'],
  };
}

function worstZoneSentence(assessment: Assessment, printer: NumberPrinter): string {
  const worst = deepestZone(assessment);
  if (worst === undefined) return 'No situation could be solved, so there is no answer.';
  const { zone, lowest } = worst;
  const where = `with ${situationWords(lowest, assessment, printer)}`;
  const among = assessment.worstCase.stopped === undefined ? '' : ' of what was solved';
  return (
    `At worst${among}, ${zone} stands ${againstOutdoors(lowest.pressurePa, printer)} ${where}, ` +
    `${fromBaseline(lowest.changeFromBaselinePa, printer)}.`
  );
}

function deepestZone(assessment: Assessment): ZoneWorst | undefined {
  const deepest = zonesThatMatter(assessment)[0];
  return assessment.worstCase.zones.find(({ zone }) => zone === deepest);
}

function unsolvedSentences({ worstCase }: Assessment): readonly string[] {
  const unsolved = worstCase.unsolved.length;
  if (unsolved === 0) return [];
  const all = unsolved + worstCase.situations.length;
  const verb = unsolved === 1 ? 'is' : 'are';
  return [
    `Incomplete: ${unsolved} of ${countWords(all, 'situation')} could not be solved and ${verb} ` +
      'missing here; the true worst case may be among them.',
  ];
}

function findingSentences(assessment: Assessment, printer: NumberPrinter): readonly string[] {
  const { findings, house } = assessment;
  if (findings.length === 0) {
    return house.appliances.length === 0
      ? ['Nothing was judged: the house file describes no combustion appliance or hearth.']
      : ['Nothing was judged: there is no finding for any appliance.'];
  }
  const urgent = findingsByUrgency(findings);
  return verdictsByUrgency.flatMap((verdict) => {
    const own = urgent.filter((finding) => finding.verdict === verdict);
    if (own.length === 0) return [];
    const named = own.slice(0, namedAtMost).map((finding) => findingWords(finding, printer));
    if (own.length > namedAtMost) named.push(`and ${own.length - namedAtMost} more`);
    return [`${capitalized(verdict)}: ${named.join('; ')}.`];
  });
}

function flueSentences({ draft }: Assessment): readonly string[] {
  if (draft?.status !== 'solved') return [];
  const spilling = draft.appliances.filter(spillsSomewhere);
  if (spilling.length === 0) return [];
  const named = spilling
    .slice(0, namedAtMost)
    .map(({ appliance, worst }) => `${appliance}: ${worst?.verdict}`);
  if (spilling.length > namedAtMost) named.push(`and ${spilling.length - namedAtMost} more`);
  return [`With flue and house solved together, at worst: ${named.join('; ')}.`];
}

function findingWords(finding: Finding, printer: NumberPrinter): string {
  const name = `${finding.appliance} in ${finding.zone}`;
  const { judged } = finding;
  if (judged === undefined) return name;
  const value = quantityWords(judged.quantity, judged.valuePa, printer);
  const limit = printer.pressureSize(judged.limitPa);
  return `${name}, ${value} against a limit of ${limit}, ${marginWords(judged.marginPa, printer)}`;
}

function capitalized(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

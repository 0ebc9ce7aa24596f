import type { Finding } from '@evendraft/rules';
import type { ZoneWorst } from '@evendraft/studies';
import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from './assessment.js';
import { countWords } from './internal/count-words.js';
import { findingsByUrgency, verdictsByUrgency } from './internal/findings-by-urgency.js';
import { numberPrinter, type NumberPrinter } from './internal/number-printer.js';
import {
  againstOutdoors,
  fromBaseline,
  marginWords,
  quantityWords,
} from './internal/pressure-words.js';
import { situationWords } from './internal/situation-words.js';
import { zonesThatMatter } from './internal/zones-that-matter.js';

/** How the answer is told. */
export interface AnswerOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
}

/** More names than this are counted instead: the table lists them all. */
const namedAtMost = 3;

/**
 * The answer in a few plain sentences, as every report gives it first.
 *
 * How far down the worst zone goes and in which situation; what could not be solved; then each kind
 * of verdict with its appliances; then that none of it is a clearance. Plain text that carries names
 * from the house file: escape it for the medium it is put in.
 *
 * @param assessment - what was found
 * @param options - the reader's units
 * @returns at least two sentences, in order
 */
export function answerSentences(assessment: Assessment, options: AnswerOptions): readonly string[] {
  const printer = numberPrinter(options.system);
  return [
    worstZoneSentence(assessment, printer),
    ...unsolvedSentences(assessment),
    ...findingSentences(assessment, printer),
  ];
}

function worstZoneSentence(assessment: Assessment, printer: NumberPrinter): string {
  const worst = deepestZone(assessment);
  if (worst === undefined) return 'No situation could be solved, so there is no answer.';
  const { zone, lowest } = worst;
  const where = `with ${situationWords(lowest, assessment, printer)}`;
  return (
    `At worst, ${zone} stands ${againstOutdoors(lowest.pressurePa, printer)} ${where}, ` +
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
  const sentences = verdictsByUrgency.flatMap((verdict) => {
    const own = urgent.filter((finding) => finding.verdict === verdict);
    if (own.length === 0) return [];
    const named = own.slice(0, namedAtMost).map((finding) => findingWords(finding, printer));
    if (own.length > namedAtMost) named.push(`and ${own.length - namedAtMost} more`);
    return [`${capitalized(verdict)}: ${named.join('; ')}.`];
  });
  return [...sentences, 'None of this is a clearance: a test on site decides.'];
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

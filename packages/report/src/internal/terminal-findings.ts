import type { Finding, Verdict } from '@evendraft/rules';
import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { fullStop } from './full-stop.js';
import { noteWords } from './note-words.js';
import { severalBalancesWords } from './several-balances-words.js';
import type { NumberPrinter } from './number-printer.js';
import { situationWords } from './situation-words.js';
import { sourceWords } from './source-words.js';
import type { TerminalPage } from './terminal-page.js';
import type { TextColumn } from './text-table.js';

/** What a section needs to put itself on the page. */
export interface TerminalSection {
  readonly page: TerminalPage;
  readonly assessment: Assessment;
  readonly printer: NumberPrinter;
  readonly system: UnitSystem;
}

/** The terminal names the cures that are usually tried first; the full report has them all. */
const curesShown = 2;

/**
 * Each appliance's finding: one aligned row of numbers, and under it where they come from.
 *
 * @param section - page, assessment and printer
 * @param options - of which findings situation, limit and cures are told, with the remarks of all; of all when absent
 */
export function terminalFindings(
  section: TerminalSection,
  { explained = 'all' }: { readonly explained?: 'all' | 'pressing' } = {},
): void {
  const { page, assessment } = section;
  const findings = findingsByUrgency(assessment.findings);
  if (findings.length === 0) return;
  page.heading('Findings');
  page.paragraph(
    `Limit set: ${assessment.limitSet.name}, edition ${assessment.limitSet.edition}. Value, limit ` +
      'and margin in Pa: a negative value is a fall or below outdoors, a negative margin is past ' +
      'the limit.',
  );
  page.blank();
  const table = page.layTable(columnsOf(page), findings.map(cellsOf(section)));
  page.lines(table.header);
  const told = new Map<string, string>();
  findings.forEach((finding, index) => {
    page.lines(table.rows[index] ?? []);
    if (explained === 'pressing' && finding.verdict === 'within the limit') return;
    const texts = [
      ...reasons(finding, section),
      ...(explained === 'all' ? curesInShort(finding.cures) : []),
    ];
    for (const detail of once(texts, finding.appliance, told)) page.paragraph(detail, 4);
  });
  // In full each finding tells this of its own situation.
  const notes =
    explained === 'pressing' ? severalBalancesWords(assessment.worstCase) : noteWords(findings);
  if (notes.length > 0) page.blank();
  for (const note of notes) page.bullet(note);
}

function columnsOf(page: TerminalPage): readonly TextColumn[] {
  return [
    { header: 'Appliance', minimum: 9 },
    { header: 'In', minimum: 6 },
    {
      header: 'Finding',
      minimum: 9,
      dress: (padded, cell) => page.dressVerdict(padded, cell as Verdict),
    },
    { header: 'Value', align: 'right' },
    { header: 'Limit', align: 'right' },
    { header: 'Margin', align: 'right' },
  ];
}

function cellsOf({ printer }: TerminalSection): (finding: Finding) => readonly string[] {
  return ({ appliance, zone, verdict, judged }) => [
    appliance,
    zone,
    verdict,
    ...(judged === undefined
      ? ['', '', '']
      : [judged.valuePa, judged.limitPa, judged.marginPa].map(printer.signedPressure)),
  ];
}

/** Appliances side by side often share everything; a reader need not read it twice. */
function once(
  texts: readonly string[],
  appliance: string,
  told: Map<string, string>,
): readonly string[] {
  const key = JSON.stringify(texts);
  const first = told.get(key);
  if (first !== undefined) return [`All the rest as for ${first}.`];
  told.set(key, appliance);
  return texts;
}

/** Where the numbers of a finding come from, or why it has none. */
function reasons({ judged, reason }: Finding, section: TerminalSection): readonly string[] {
  const { assessment, printer } = section;
  const why = reason === undefined ? [] : [fullStop(reason)];
  if (judged === undefined) return why;
  return [
    ...why,
    `With ${situationWords(judged.situation, assessment, printer)}; baseline ` +
      `${printer.signedPressure(judged.baselinePa)} Pa.`,
    `Limit on ${judged.quantity}: ${judged.condition}. Source: ${sourceWords(judged.source)}.`,
  ];
}

/**
 * The cures that are usually tried first, unsolved.
 *
 * @param cures - of a finding, as sentences
 * @returns one paragraph; none without cures
 */
export function curesInShort(cures: readonly string[]): readonly string[] {
  if (cures.length === 0) return [];
  const shown = cures.slice(0, curesShown).map(fullStop).join(' ');
  const left = cures.length - curesShown;
  return [`What would cure it: ${shown}${left > 0 ? ` And ${left} more in the full report.` : ''}`];
}

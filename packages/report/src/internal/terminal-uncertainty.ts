import { importanceRows, probabilityRows, uncertaintyWords } from './uncertainty-words.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * The probability that each limit is exceeded, and which input matters most.
 *
 * @param section - page, assessment and printer
 */
export function terminalUncertainty({ page, assessment, printer }: TerminalSection): void {
  const { uncertainty } = assessment;
  if (uncertainty === undefined) return;
  page.heading('How sure the numbers are');
  page.paragraph(uncertaintyWords(uncertainty));
  const probabilities = probabilityRows(uncertainty, printer);
  if (probabilities.length > 0) {
    page.blank();
    page.table(
      [
        { header: 'Limit', minimum: 20 },
        { header: 'Pa', align: 'right' },
        { header: 'Beyond it', align: 'right' },
        { header: '95 of 100 studies', align: 'right' },
      ],
      probabilities,
    );
  }
  page.blank();
  page.table(
    [
      { header: 'Zone', minimum: 9 },
      { header: '5 %', align: 'right' },
      { header: 'half', align: 'right' },
      { header: '95 %', align: 'right' },
      { header: 'What matters most, worth measuring first', minimum: 24 },
    ],
    importanceRows(uncertainty, printer),
  );
}

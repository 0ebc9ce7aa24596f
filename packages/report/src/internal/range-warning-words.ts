import type { LawRangeWarning, WorstCaseStudy } from '@evendraft/studies';
import { countWords } from './count-words.js';

const quantities: Readonly<Record<LawRangeWarning['code'], string>> = {
  VelocityBeyondLaw: 'the air speed',
  RoughnessBeyondLaw: 'the roughness of the wall by its diameter',
  ReynoldsBeyondLaw: 'the Reynolds number',
};

/**
 * Parts of the house whose law is used beyond its range, each once with its worst value, in sentences.
 *
 * @param study - the study with its situations
 * @returns sentences in the order in which the parts first appear; empty where every law is within its range
 */
export function rangeWarningWords({ situations }: WorstCaseStudy): readonly string[] {
  const found = new Map<string, { worst: LawRangeWarning; situations: number }>();
  for (const { warnings = [] } of situations) {
    for (const warning of warnings) {
      const key = JSON.stringify([warning.item, warning.part, warning.code]);
      const known = found.get(key);
      const worst =
        known !== undefined && known.worst.found >= warning.found ? known.worst : warning;
      found.set(key, { worst, situations: (known?.situations ?? 0) + 1 });
    }
  }
  return [...found.values()].map(({ worst, situations: count }) => {
    const { item, part, code, found: value, most, unit } = worst;
    const where = part === undefined ? item : `${item}, ${part}`;
    const print = (number: number): string =>
      `${Number(number.toPrecision(3))}${unit === '(-)' ? '' : ` ${unit}`}`;
    const times = countWords(count, 'situation');
    return `${where}: ${quantities[code]} reaches ${print(value)}, and its law is trusted up to ${print(most)} (${times}).`;
  });
}

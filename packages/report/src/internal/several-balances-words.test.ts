import type { WorstCaseStudy } from '@evendraft/studies';
import { expect, it } from 'vitest';
import { severalBalancesWords } from './several-balances-words.js';

const study = (...situations: readonly object[]): WorstCaseStudy =>
  ({ situations }) as unknown as WorstCaseStudy;
const count = (stableBalances: number, complete = true) => ({ stableBalances, complete });

it('counts the situations of which one of several balances is shown, baselines among them', () => {
  const words = severalBalancesWords(
    study(
      { columns: count(2) },
      { columns: count(1), baselineColumns: count(3) },
      { columns: count(1, false) },
      { columns: count(1) },
      {},
    ),
  );
  expect(words).toHaveLength(1);
  expect(words[0]).toMatch(/^In 3 of 5 situations, .* shows its lowest pressure/);
});

it('says nothing where every balance is the only one', () => {
  expect(severalBalancesWords(study({ columns: count(1) }, {}))).toEqual([]);
});

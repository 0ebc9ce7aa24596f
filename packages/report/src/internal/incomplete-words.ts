import type { Incomplete, UnfinishedPart, UnfinishedWork } from '../incomplete.js';

const nouns: Readonly<Record<UnfinishedWork, string>> = {
  situations: 'situations',
  'orders of switching on': 'orders of switching on',
  draws: 'draws',
  'flue states': 'situations of flues',
  cures: 'cures',
  'questions of the air': 'questions of the air',
  remedies: 'remedies',
  sizes: 'sizes',
};

/**
 * That the work was stopped, how far it came, and what is therefore not shown.
 *
 * @param incomplete - what was not finished; absent where all was
 * @returns sentences, the first of which says it all; none where all was finished
 */
export function incompleteWords(incomplete: Incomplete | undefined): readonly string[] {
  if (incomplete === undefined) return [];
  return [
    'Incomplete: the work was stopped before its end, and this report holds what was done by then.',
    ...incomplete.parts.map((part) => `${reached(part)} ${part.notProved}`),
  ];
}

function reached({ work, done, of }: UnfinishedPart): string {
  const noun = nouns[work];
  if (of === undefined) return done === 0 ? `No ${noun} yet.` : `${grouped(done)} ${noun}.`;
  return `${grouped(done)} of ${grouped(of)} ${noun}.`;
}

function grouped(count: number): string {
  return count.toLocaleString('en-US');
}

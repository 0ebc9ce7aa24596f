import type { WorstCaseStudy } from '@evendraft/studies';

/** What judging needs of a study: the true worst case, or a programme's own test. */
export type JudgedStudy = Pick<
  WorstCaseStudy,
  'situations' | 'unsolved' | 'stopped' | 'zones' | 'appliances' | 'proof'
>;

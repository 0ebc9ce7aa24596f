/** What was not finished, because the work was stopped. */
export interface Incomplete {
  /** In the order in which the work is done; at least one. */
  readonly parts: readonly UnfinishedPart[];
}

/** One part of the work that was not finished. */
export interface UnfinishedPart {
  /** What it counts. */
  readonly work: UnfinishedWork;
  /** How many were done [-]. */
  readonly done: number;
  /** Of how many; absent where that was not known yet [-]. */
  readonly of?: number;
  /** What is therefore not shown, as a sentence. */
  readonly notProved: string;
}

/** What long work counts. */
export type UnfinishedWork =
  | 'situations'
  | 'orders of switching on'
  | 'draws'
  | 'flue states'
  | 'cures'
  | 'questions of the air'
  | 'remedies'
  | 'sizes';

/**
 * How a number came to be known.
 *
 * - `found`: read in the named source or in a text that restates it
 * - `memory`: known from the named source and not re-read
 * - `derived`: computed from other entries that are named
 * - `assumed`: chosen here; common practice without a source
 */
export type SourceStatus = 'found' | 'memory' | 'derived' | 'assumed';

/** Where a number comes from, for whoever lists what a result rests on. */
export interface Provenance {
  /** Document, edition and section, or the reason for an assumption. */
  readonly source: string;
  readonly status: SourceStatus;
}

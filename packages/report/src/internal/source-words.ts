import type { Source, SourceStatus } from '@evendraft/house';

const wordsOfStatus: Readonly<Record<SourceStatus, string>> = {
  found: 'read in the document',
  'found second-hand': 'as another text restates it',
  memory: 'from memory, not re-read',
  'our choice': 'our choice',
  derived: 'calculated, not published',
  'common practice, no source': 'common practice, no source',
};

/**
 * A source in words, its status always with it.
 *
 * @param source - document and status
 * @returns e.g. `Handbook of Vents, 2009, table 4 (from memory, not re-read)`
 */
export function sourceWords(source: Source): string {
  const place = [source.document, source.edition, source.section].filter(
    (part) => part !== undefined && part !== '',
  );
  const status = statusWords(source);
  // Some documents are no more than their status: `our choice` need not be said twice.
  return place.join(', ') === status ? status : `${place.join(', ')} (${status})`;
}

/**
 * How sure a source is, in words, without the document.
 *
 * @param source - document and status
 * @returns e.g. `from memory, not re-read`
 */
export function statusWords(source: Source): string {
  return wordsOfStatus[source.status];
}

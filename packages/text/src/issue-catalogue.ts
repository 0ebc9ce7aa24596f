import type { Issue, IssueParameters } from './issue.js';
import { TextArgumentError } from './text-argument-error.js';

/** What is known about one kind of issue: how it is put into words, and what to do about it. */
export interface IssueCatalogueEntry {
  readonly code: string;
  readonly severity: Issue['severity'];
  /** What is wrong, as a sentence without capital and full stop: `found "900", expected a volume flow`. */
  message(parameters: IssueParameters): string;
  /** What to write instead, as a full sentence; left out where nothing better than the remedy is known. */
  hint?(parameters: IssueParameters): string;
  /** What a person does about an issue of this kind, in general; for the documentation. */
  readonly remedy: string;
}

/** Every issue that a package raises, by code. */
export type IssueCatalogue = ReadonlyMap<string, IssueCatalogueEntry>;

/**
 * A catalogue from its entries; several catalogues are joined by giving the values of each.
 *
 * @param entries - one entry a code
 * @returns the entries by code
 * @throws TextArgumentError `text.duplicate-code` if two entries have the same code
 *
 * @example
 * const catalogue = defineIssues([
 *   {
 *     code: 'key.unknown',
 *     severity: 'error',
 *     message: ({ found }) => `the key "${found}" is not known here`,
 *     remedy: 'Use one of the documented keys.',
 *   },
 * ]);
 * catalogue.get('key.unknown')?.severity; // => 'error'
 */
export function defineIssues(entries: Iterable<IssueCatalogueEntry>): IssueCatalogue {
  const catalogue = new Map<string, IssueCatalogueEntry>();
  for (const entry of entries) {
    if (catalogue.has(entry.code)) {
      throw new TextArgumentError('text.duplicate-code', `"${entry.code}" is defined twice.`);
    }
    catalogue.set(entry.code, entry);
  }
  return catalogue;
}

import {
  defineIssues,
  textIssues,
  type IssueCatalogue,
  type IssueCatalogueEntry,
} from '@evendraft/text';
import { flueIssues, type FlueIssueCode } from './issues/flue-issues.js';
import { itemIssues, type ItemIssueCode } from './issues/item-issues.js';
import { passageIssues, type PassageIssueCode } from './issues/passage-issues.js';
import { pathIssues, type PathIssueCode } from './issues/path-issues.js';
import { valueIssues, type ValueIssueCode } from './issues/value-issues.js';
import type { IssueWords } from './issues/words.js';

/** Every code that a house's data can raise; those of the text itself are `TextIssueCode`. */
export type HouseIssueCode =
  ValueIssueCode | ItemIssueCode | PathIssueCode | PassageIssueCode | FlueIssueCode;

const words: Readonly<Record<HouseIssueCode, IssueWords>> = {
  ...valueIssues,
  ...itemIssues,
  ...passageIssues,
  ...flueIssues,
  ...pathIssues,
};

/** Every issue that reading a house can raise, those of its text included, in words, with hint and remedy. */
export const houseIssues: IssueCatalogue = defineIssues([
  ...textIssues.values(),
  ...Object.entries(words).map(([code, entry]): IssueCatalogueEntry => {
    const { severity = 'error', message, hint, remedy } = entry;
    return { code, severity, message, ...(hint === undefined ? {} : { hint }), remedy };
  }),
]);

/** Codes whose message points at the key, because the key itself or the whole item is wrong. */
export const issuesAtTheKey: ReadonlySet<string> = new Set(
  Object.entries(words).flatMap(([code, { atKey }]) => (atKey === true ? [code] : [])),
);

import type { IssueCatalogueEntry, IssueParameters } from '@evendraft/text';
import { formatQuantity } from '@evendraft/units';

/** What the catalogue says of one code. */
export type IssueWords = Omit<IssueCatalogueEntry, 'code' | 'severity'> & {
  /** Only a warning: the work goes on. */
  readonly severity?: 'warning';
  /** The key itself is wrong, so that a message points at it and not at its value. */
  readonly atKey?: true;
};

/**
 * A parameter as text.
 *
 * @param parameter - the parameter
 * @returns text; a list as `a, b, c`
 */
export function textOf(parameter: IssueParameters[string] | undefined): string {
  if (parameter === undefined) return '';
  return typeof parameter === 'object' ? parameter.join(', ') : String(parameter);
}

/**
 * A parameter in quotes.
 *
 * @param parameter - the parameter
 * @returns text in quotes
 */
export function quoted(parameter: IssueParameters[string] | undefined): string {
  return `"${textOf(parameter)}"`;
}

/**
 * Choices as words, each in quotes: `"a", "b" or "c"`.
 *
 * @param parameter - the choices
 * @returns the words; empty where there are none
 */
export function choices(parameter: IssueParameters[string] | undefined): string {
  const list = typeof parameter === 'object' ? parameter : [textOf(parameter)];
  const words = list.filter((word) => word !== '').map((word) => `"${word}"`);
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}

/**
 * Words as an enumeration: `flow and speeds`.
 *
 * @param parameter - the words
 * @returns the words joined
 */
export function enumeration(parameter: IssueParameters[string] | undefined): string {
  const list = typeof parameter === 'object' ? parameter : [textOf(parameter)];
  const last = list.at(-1) ?? '';
  return list.length < 2 ? last : `${list.slice(0, -1).join(', ')} and ${last}`;
}

/**
 * What to write instead: the suggestion if there is one, else the examples.
 *
 * @param parameters - with `suggestion` or `accepted`
 * @returns a sentence; undefined words never show
 */
export function writeInstead(parameters: IssueParameters): string {
  const { suggestion, accepted } = parameters;
  if (suggestion !== undefined) return `Write ${quoted(suggestion)}.`;
  if (typeof accepted !== 'object' || accepted.length === 0) return '';
  // A long list is the whole list of words, a short one only examples.
  const isWhole = accepted.length > 4;
  return `${isWhole ? 'Write one of' : 'Write for instance'} ${choices(accepted)}.`;
}

/**
 * A length in both unit systems: `2.60 m (8.5 ft)`.
 *
 * @param parameter - the length [m]
 * @returns the words
 */
export function metres(parameter: IssueParameters[string] | undefined): string {
  const print = (system: 'si' | 'us'): string =>
    formatQuantity(Number(parameter), 'length', { system, decimals: system === 'si' ? 2 : 1 });
  return `${print('si')} (${print('us')})`;
}

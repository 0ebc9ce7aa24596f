import {
  defineIssues,
  type IssueCatalogue,
  type IssueCatalogueEntry,
  type IssueParameters,
} from '@evendraft/text';

/** The codes of every issue that facts for the screens can raise. */
export type ScreenFactsIssueCode =
  | 'facts.missing'
  | 'facts.wrong-type'
  | 'facts.not-allowed'
  | 'facts.unknown-key'
  | 'facts.empty'
  | 'facts.out-of-range'
  | 'facts.too-large'
  | 'facts.unknown-name';

const words: Readonly<
  Record<ScreenFactsIssueCode, Omit<IssueCatalogueEntry, 'code' | 'severity'>>
> = {
  'facts.missing': {
    message: ({ expected }) => `missing, expected ${text(expected)}`,
    remedy: 'Add the key, or remove the item that it belongs to.',
  },
  'facts.wrong-type': {
    message: ({ found, expected }) => `found ${text(found)}, expected ${text(expected)}`,
    remedy: 'Write a value of the kind that is expected; numbers are in the unit of their key.',
  },
  'facts.not-allowed': {
    message: ({ found, allowed, suggestion }) =>
      `found ${text(found)}, expected one of ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Write one of the words that are listed.',
  },
  'facts.unknown-key': {
    message: ({ found, allowed, suggestion }) =>
      `the key "${text(found)}" is not known here; known are ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Use one of the known keys, or remove it.',
  },
  'facts.empty': {
    message: ({ found }) => `${text(found)} is empty`,
    remedy: 'Write a text that is not blank.',
  },
  'facts.out-of-range': {
    message: ({ found, lowest }) => `found ${text(found)}, expected ${text(lowest)} or more`,
    remedy: 'Check the sign and the unit, which is in the name of the key.',
  },
  'facts.too-large': {
    message: ({ found, highest }) => `found ${text(found)}, expected ${text(highest)} or less`,
    remedy: 'Check the unit, which is in the name of the key.',
  },
  'facts.unknown-name': {
    message: ({ found, what, allowed, suggestion }) =>
      `the house has no ${text(what)} "${text(found)}"; it has ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Write the name as the house file has it.',
  },
};

/** Every issue of facts for the screens with its words and its remedy. */
export const screenFactsIssues: IssueCatalogue = defineIssues(
  Object.entries(words).map(([code, entry]) => ({ code, severity: 'error', ...entry })),
);

function perhaps(suggestion: IssueParameters[string] | undefined): string {
  return suggestion === undefined ? '' : `; perhaps "${text(suggestion)}"`;
}

function text(parameter: IssueParameters[string] | undefined): string {
  return typeof parameter === 'object' ? parameter.join(', ') : String(parameter ?? '');
}

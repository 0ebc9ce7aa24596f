import {
  defineIssues,
  type IssueCatalogue,
  type IssueCatalogueEntry,
  type IssueParameters,
} from '@evendraft/text';

/** The codes of every issue that a sign-off file can raise. */
export type SignOffIssueCode =
  | 'sign-off.missing'
  | 'sign-off.wrong-type'
  | 'sign-off.not-allowed'
  | 'sign-off.unknown-key'
  | 'sign-off.length'
  | 'sign-off.version'
  | 'sign-off.day';

const words: Readonly<Record<SignOffIssueCode, Omit<IssueCatalogueEntry, 'code' | 'severity'>>> = {
  'sign-off.missing': {
    message: ({ expected }) => `missing, expected ${text(expected)}`,
    remedy: 'Add the key; only the version and the parts of what is given are required.',
  },
  'sign-off.wrong-type': {
    message: ({ found, expected }) => `found ${text(found)}, expected ${text(expected)}`,
    hint: () => 'A number with leading zeros, such as a serial number, needs quotes: "004417".',
    remedy: 'Write a text, or a list or keys where the block has several parts.',
  },
  'sign-off.not-allowed': {
    message: ({ found, allowed }) => `found ${text(found)}, expected one of ${text(allowed)}`,
    remedy: 'Write one of the words that are listed.',
  },
  'sign-off.unknown-key': {
    message: ({ found, suggestion }) =>
      `the key "${text(found)}" is not known here${suggestion === undefined ? '' : `; perhaps "${text(suggestion)}"`}`,
    remedy: 'Use one of the known keys, or remove it.',
  },
  'sign-off.length': {
    message: ({ most }) => `empty or too long; at most ${text(most)}`,
    remedy: 'Shorten the text or the list; what is blank is left out altogether.',
  },
  'sign-off.version': {
    message: ({ found }) => `found version ${text(found)}, this library reads version 1`,
    remedy: 'Write `evendraftSignOff: 1`, or use a library that reads the newer version.',
  },
  'sign-off.day': {
    message: ({ found }) => `found ${text(found)}, expected a day`,
    hint: () => 'Write year, month and day: 2041-03-20.',
    remedy: 'Write the day as year-month-day.',
  },
};

/** Every issue of sign-off files with its words and its remedy. */
export const signOffIssues: IssueCatalogue = defineIssues(
  Object.entries(words).map(([code, entry]) => ({ code, severity: 'error', ...entry })),
);

function text(parameter: IssueParameters[string] | undefined): string {
  return typeof parameter === 'object' ? parameter.join(', ') : String(parameter ?? '');
}

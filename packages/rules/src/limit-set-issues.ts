import {
  defineIssues,
  type IssueCatalogue,
  type IssueCatalogueEntry,
  type IssueParameters,
} from '@evendraft/text';

/** The codes of every issue that a limit set, or the choice of one, can raise. */
export type LimitSetIssueCode =
  | 'limits.missing'
  | 'limits.wrong-type'
  | 'limits.not-allowed'
  | 'limits.unknown-key'
  | 'limits.empty'
  | 'limits.version'
  | 'limits.sign'
  | 'limits.out-of-range'
  | 'limits.id-form'
  | 'limits.edition-form'
  | 'limits.duplicate-id'
  | 'limits.height-range'
  | 'limits.alone-and-shared'
  | 'limits.order'
  | 'limits.too-large'
  | 'limits.unknown-configuration'
  | 'limits.unknown-set';

const words: Readonly<Record<LimitSetIssueCode, Omit<IssueCatalogueEntry, 'code' | 'severity'>>> = {
  'limits.missing': {
    message: ({ expected }) => `missing, expected ${text(expected)}`,
    remedy: 'Add the key; the schema of limit sets says which are required.',
  },
  'limits.wrong-type': {
    message: ({ found, expected }) => `found ${text(found)}, expected ${text(expected)}`,
    remedy: 'Write a value of the kind that is expected; pressures are plain numbers in Pa.',
  },
  'limits.not-allowed': {
    message: ({ found, allowed, suggestion }) =>
      `found ${text(found)}, expected one of ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Write one of the words that are listed.',
  },
  'limits.unknown-key': {
    message: ({ found, allowed, suggestion }) =>
      `the key "${text(found)}" is not known here; known are ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Use one of the known keys, or remove it.',
  },
  'limits.empty': {
    message: ({ found }) => `${text(found)} is empty`,
    remedy: 'Write at least one item, or a text that is not blank.',
  },
  'limits.version': {
    message: ({ found }) => `found version ${text(found)}, this library reads version 1`,
    remedy: 'Write `evendraftLimits: 1`, or use a library that reads the newer version.',
  },
  'limits.sign': {
    message: ({ found }) => `found ${text(found)}, expected a number below 0`,
    hint: () => 'Zone minus outdoors is negative under suction: a limit of 5 Pa is -5.',
    remedy: 'Write the limit as a negative number of Pa.',
  },
  'limits.out-of-range': {
    message: ({ found, lowest }) => `found ${text(found)}, expected ${text(lowest)} or more`,
    remedy: 'Check the unit: pressures are in Pa, heights in m.',
  },
  'limits.id-form': {
    message: ({ found }) => `found ${text(found)}, expected small letters, digits and hyphens`,
    remedy: 'Write an id such as `natural-draft-alone`.',
  },
  'limits.edition-form': {
    message: ({ found }) => `found ${text(found)}, expected a year and a month`,
    hint: () => 'Write it as "2026-11", in quotes.',
    remedy: 'Write the edition of the data as year and month, such as `2026-11`.',
  },
  'limits.duplicate-id': {
    message: ({ found }) => `the id "${text(found)}" stands in an earlier row of this list already`,
    remedy: 'Give each row of a list an id of its own.',
  },
  'limits.height-range': {
    message: ({ from, below }) =>
      `no height is from ${text(from)} m and below ${text(below)} m at once`,
    remedy: 'Write a `belowHeightM` above `fromHeightM`.',
  },
  'limits.alone-and-shared': {
    message: () => 'no appliance is alone on its vent and shares it',
    remedy: 'Remove `alone` or `sharesVentWith`, or make two descriptions of them.',
  },
  'limits.order': {
    message: ({ found, before }) =>
      `found ${text(found)} after ${text(before)}, expected numbers that rise`,
    remedy: 'Write corners by rising temperature and levels by rising concentration.',
  },
  'limits.too-large': {
    message: ({ found, highest }) => `found ${text(found)}, expected ${text(highest)} or less`,
    remedy: 'Check the unit: flows are in m³/s, times in s, carbon monoxide in ppm.',
  },
  'limits.unknown-configuration': {
    message: ({ found, allowed, suggestion }) =>
      `there is no test configuration "${text(found)}" in this set; there are ${text(allowed)}${perhaps(suggestion)}`,
    remedy: 'Name a configuration of the list `testConfigurations`, or remove the key.',
  },
  'limits.unknown-set': {
    message: ({ found, allowed, suggestion }) =>
      `there is no limit set "${text(found)}"; there are ${text(allowed)}${perhaps(suggestion)}`,
    remedy:
      'Name one of the sets that come with the library, or read a set of your own from a file.',
  },
};

/** Every issue of limit sets with its words and its remedy. */
export const limitSetIssues: IssueCatalogue = defineIssues(
  Object.entries(words).map(([code, entry]) => ({ code, severity: 'error', ...entry })),
);

function perhaps(suggestion: IssueParameters[string] | undefined): string {
  return suggestion === undefined ? '' : `; perhaps "${text(suggestion)}"`;
}

function text(parameter: IssueParameters[string] | undefined): string {
  return typeof parameter === 'object' ? parameter.join(', ') : String(parameter ?? '');
}

import { defineIssues, type IssueCatalogue, type IssueCatalogueEntry } from '@evendraft/text';

/** The codes of every issue that a year of weather can raise. */
export type YearIssueCode =
  'year.no-temperature' | 'year.no-unit' | 'year.temperature' | 'year.hours';

const words: Readonly<Record<YearIssueCode, Omit<IssueCatalogueEntry, 'code' | 'severity'>>> = {
  'year.no-temperature': {
    message: ({ found }) => `no column begins with "temperature"; found ${String(found)}`,
    hint: () => 'Name the column of outdoor temperature "temperature [C]" or "temperature [F]".',
    remedy: 'Write the names of the columns in the first row, one of them `temperature [C]`.',
  },
  'year.no-unit': {
    message: ({ found }) => `the column "${String(found)}" states no unit`,
    hint: () => 'Write "temperature [C]" or "temperature [F]"; a unit is never assumed.',
    remedy: 'State the unit in brackets in the name of the column.',
  },
  'year.temperature': {
    message: ({ found }) => `found "${String(found)}", expected an outdoor temperature`,
    hint: () => 'Write a number with a decimal point, from -90 to 60 °C.',
    remedy: 'Fill gaps and mend values: each hour needs a temperature.',
  },
  'year.hours': {
    message: ({ found }) => `found ${String(found)} rows, expected one for each hour of a year`,
    hint: () => 'A year has 8760 hours, a leap year 8784.',
    remedy: 'Give one row an hour, for a whole year.',
  },
};

/** Every issue that a year of weather can raise, with its words and remedy. */
export const yearIssues: IssueCatalogue = defineIssues(
  Object.entries(words).map(([code, entry]) => ({ ...entry, code, severity: 'error' as const })),
);

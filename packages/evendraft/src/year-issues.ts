import { defineIssues, type IssueCatalogue, type IssueCatalogueEntry } from '@evendraft/text';

/** The codes of every issue that a year of weather can raise. */
export type YearIssueCode =
  | 'year.no-temperature'
  | 'year.no-unit'
  | 'year.temperature'
  | 'year.wind-speed'
  | 'year.wind-direction'
  | 'year.pressure'
  | 'year.hours';

const words: Readonly<Record<YearIssueCode, Omit<IssueCatalogueEntry, 'code' | 'severity'>>> = {
  'year.no-temperature': {
    message: ({ found }) => `no column begins with "temperature"; found ${String(found)}`,
    hint: () => 'Name the column of outdoor temperature "temperature [C]" or "temperature [F]".',
    remedy: 'Write the names of the columns in the first row, one of them `temperature [C]`.',
  },
  'year.no-unit': {
    message: ({ found }) => `the column "${String(found)}" states no unit that it can have`,
    hint: () =>
      'Write "temperature [C]", "wind speed [m/s]", "wind direction [deg]", "pressure [hPa]", or another unit of these; a unit is never assumed.',
    remedy: 'State the unit in brackets in the name of the column.',
  },
  'year.temperature': {
    message: ({ found }) => `found "${String(found)}", expected an outdoor temperature`,
    hint: () => 'Write a number with a decimal point, from -90 to 60 °C.',
    remedy: 'Fill gaps and mend values: each hour needs a temperature.',
  },
  'year.wind-speed': {
    message: ({ found }) => `found "${String(found)}", expected a wind speed`,
    hint: () => 'Write a number with a decimal point, from 0 to 80 m/s.',
    remedy: 'Fill gaps and mend values, or leave the column out: the year is then taken as calm.',
  },
  'year.wind-direction': {
    message: ({ found }) => `found "${String(found)}", expected where the wind comes from`,
    hint: () =>
      'Write degrees clockwise from north, from 0 to 360; empty where the wind speed is 0.',
    remedy: 'Fill gaps and mend values, or leave the column out: wind then comes from the front.',
  },
  'year.pressure': {
    message: ({ found }) => `found "${String(found)}", expected an air pressure`,
    hint: () => 'Write that of the place, not reduced to sea level, from 500 to 1100 hPa.',
    remedy:
      'Fill gaps and mend values, or leave the column out: the standard pressure at the altitude is then taken.',
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

import type { HourlyYear } from '@evendraft/studies';
import type { Issue } from '@evendraft/text';
import { readCsv, type CsvCell, type CsvTable } from '@evendraft/text/read';
import { parseQuantity, type Dimension } from '@evendraft/units';
import type { YearIssueCode } from './year-issues.js';

/** A year of hours, or everything that is wrong with what was to be one. */
export type ReadYearResult =
  | { readonly ok: true; readonly year: HourlyYear }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Hours of a year and of a leap year. */
const hoursOfYear = [8760, 8784];
/** Issues of rows that are listed; the first ones tell what is wrong with the rest. */
const rowIssuesListed = 20;

/** A column that is looked for by the beginning of its head. */
interface Column {
  readonly key: Exclude<keyof HourlyYear, 'kind'>;
  readonly head: RegExp;
  readonly dimension: Dimension;
  /** Least and most value in SI, our choice. */
  readonly allowed: readonly [number, number];
  readonly code: YearIssueCode;
}

const columns: readonly Column[] = [
  {
    key: 'temperaturesC',
    head: /^temperature\b/iu,
    dimension: 'temperature',
    allowed: [-90, 60],
    code: 'year.temperature',
  },
  {
    key: 'windSpeedsMPerS',
    head: /^wind speed\b/iu,
    dimension: 'speed',
    allowed: [0, 80],
    code: 'year.wind-speed',
  },
  {
    key: 'windFromDeg',
    head: /^wind (?:direction|from)\b/iu,
    dimension: 'angle',
    allowed: [0, 360],
    code: 'year.wind-direction',
  },
  {
    key: 'pressuresPa',
    head: /^pressure\b/iu,
    dimension: 'pressure',
    allowed: [50_000, 110_000],
    code: 'year.pressure',
  },
];

/**
 * Reads a year of weather: a table with one row an hour and columns of outdoor temperature and, where they are
 * there, of wind speed, wind direction and air pressure.
 *
 * The head of a column states its unit: `temperature [C]`, `wind speed [m/s]`, `wind direction [deg]`,
 * `pressure [hPa]`. Wind is at eave height of the house, pressure that of the place. A direction may be empty where
 * the wind is still. Other columns are not looked at.
 *
 * @param source - the text, or the bytes of a UTF-8 file
 * @param options - the file's name as the user gave it
 * @returns the hours in SI, or the issues (codes in `textIssues` and `yearIssues`)
 */
export function readYear(
  source: string | Uint8Array,
  options: { readonly file: string },
): ReadYearResult {
  const { file } = options;
  const read = readCsv(source, options);
  if (!read.ok) return read;
  const { table } = read;
  const { header, rows } = table;
  const found = columns.flatMap((column) => {
    const index = header.findIndex(({ text }) => column.head.test(text));
    return index < 0 ? [] : [{ column, index, head: header[index]! }];
  });
  const [first] = found;
  if (first?.column.key !== 'temperaturesC') {
    const heads = header.map(({ text }) => text).join(', ');
    return {
      ok: false,
      issues: [issue('year.no-temperature', { file, cell: header[0], found: heads })],
    };
  }
  const speedAt = found.find(({ column }) => column.key === 'windSpeedsMPerS')?.index;
  const issues: Issue[] = [];
  const values = new Map<Column['key'], readonly number[]>();
  for (const { column, index, head } of found) {
    const unit = unitOf(head.text, column.dimension);
    if (unit === undefined) {
      issues.push(issue('year.no-unit', { file, cell: head, found: head.text }));
    } else {
      values.set(column.key, valuesOf(table, { column, index, unit, speedAt, file, issues }));
    }
  }
  if (issues.length === 0 && !hoursOfYear.includes(rows.length)) {
    issues.push(issue('year.hours', { file, cell: first.head, found: String(rows.length) }));
  }
  if (issues.length > 0) return { ok: false, issues: issues.slice(0, rowIssuesListed) };
  return {
    ok: true,
    year: { kind: 'hourly', temperaturesC: [], ...Object.fromEntries(values) },
  };
}

/** The unit in brackets of a head, where it is one of its dimension. */
function unitOf(head: string, dimension: Dimension): string | undefined {
  const unit = /[[(]\s*(?<unit>[^\])]+?)\s*[\])]/u.exec(head)?.groups?.['unit'];
  if (unit === undefined) return undefined;
  const written = dimension === 'angle' && unit === '°' ? 'deg' : unit;
  return parseQuantity(`1 ${written}`, dimension).ok ? written : undefined;
}

function valuesOf(
  { rows }: CsvTable,
  of: {
    readonly column: Column;
    readonly index: number;
    readonly unit: string;
    readonly speedAt: number | undefined;
    readonly file: string;
    readonly issues: Issue[];
  },
): readonly number[] {
  const { column, index, unit, speedAt, file, issues } = of;
  const { dimension, allowed, code } = column;
  return rows.map((row) => {
    const cell = row[index]!;
    const still = speedAt !== undefined && Number(row[speedAt]!.text || Number.NaN) === 0;
    if (column.key === 'windFromDeg' && cell.text === '' && still) return 0;
    const result = parseQuantity(`${cell.text} ${unit}`, dimension);
    const value = result.ok ? result.quantity.valueSi : Number.NaN;
    if (!(value >= allowed[0] && value <= allowed[1])) {
      issues.push(issue(code, { file, cell, found: cell.text }));
    }
    return value;
  });
}

function issue(
  code: YearIssueCode,
  at: { readonly file: string; readonly cell: CsvCell | undefined; readonly found: string },
): Issue {
  return {
    code,
    severity: 'error',
    path: [],
    parameters: { found: at.found.slice(0, 60) },
    file: at.file,
    ...(at.cell === undefined ? {} : { position: at.cell.position }),
  };
}

import { formatQuantity, inUnit, type Dimension, type UnitSystem } from '@evendraft/units';

/** What a column of numbers holds, which settles its unit and its decimals. */
export type ColumnQuantity =
  | 'pressure'
  | 'volumeFlow'
  | 'smallFlow'
  | 'length'
  | 'area'
  | 'temperature'
  | 'speed'
  | 'faceVelocity'
  | 'power'
  | 'force'
  | 'massFlow'
  | 'angle'
  | 'share'
  | 'probability'
  | 'count'
  | 'factor';

/** A column; without a quantity it holds words. */
export interface ReportColumn {
  readonly header: string;
  readonly quantity?: ColumnQuantity;
}

/** Words, a number in SI, or nothing. */
export type ReportCell = string | number | undefined;

/** A table of the report, for the page and for CSV alike. */
export interface ReportTable {
  /** Fixed by this package, never from a house file: it names the CSV file. */
  readonly id: string;
  readonly caption: string;
  /** What a reader must know before the numbers, in sentences. */
  readonly note?: string;
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly (readonly ReportCell[])[];
}

interface ColumnForm {
  readonly dimension: Dimension;
  readonly us: string;
  readonly si: string;
  readonly usDecimals: number;
  readonly siDecimals: number;
}

const forms: Readonly<Record<Exclude<ColumnQuantity, 'count' | 'factor'>, ColumnForm>> = {
  pressure: { dimension: 'pressure', us: 'Pa', si: 'Pa', usDecimals: 1, siDecimals: 1 },
  volumeFlow: { dimension: 'volumeFlow', us: 'cfm', si: 'L/s', usDecimals: 0, siDecimals: 0 },
  smallFlow: { dimension: 'volumeFlow', us: 'cfm', si: 'L/s', usDecimals: 1, siDecimals: 1 },
  length: { dimension: 'length', us: 'ft', si: 'm', usDecimals: 1, siDecimals: 2 },
  area: { dimension: 'area', us: 'in2', si: 'cm2', usDecimals: 1, siDecimals: 0 },
  temperature: { dimension: 'temperature', us: 'F', si: 'C', usDecimals: 1, siDecimals: 1 },
  speed: { dimension: 'speed', us: 'mph', si: 'm/s', usDecimals: 1, siDecimals: 1 },
  faceVelocity: { dimension: 'speed', us: 'fpm', si: 'm/s', usDecimals: 0, siDecimals: 1 },
  power: { dimension: 'power', us: 'kBtu/h', si: 'kW', usDecimals: 1, siDecimals: 1 },
  massFlow: { dimension: 'massFlow', us: 'scfm', si: 'kg/h', usDecimals: 0, siDecimals: 0 },
  force: { dimension: 'force', us: 'lbf', si: 'N', usDecimals: 1, siDecimals: 0 },
  angle: { dimension: 'angle', us: 'deg', si: 'deg', usDecimals: 0, siDecimals: 0 },
  probability: { dimension: 'ratio', us: '%', si: '%', usDecimals: 1, siDecimals: 1 },
  share: { dimension: 'ratio', us: '%', si: '%', usDecimals: 0, siDecimals: 0 },
};

/**
 * A column's head with its unit: `Delivered, cfm`.
 *
 * @param column - the column
 * @param system - units of the reader
 * @returns words
 */
export function columnHeader({ header, quantity }: ReportColumn, system: UnitSystem): string {
  if (quantity === undefined || quantity === 'count' || quantity === 'factor') return header;
  return `${header}, ${unitWords(quantity, system)}`;
}

/**
 * A cell as it is printed: a number without its unit, which stands in the head.
 *
 * @param cell - words, a number in SI or nothing
 * @param column - its column
 * @param system - units of the reader
 * @returns words or digits; a hyphen is the minus sign, as CSV needs it
 */
export function cellText(cell: ReportCell, { quantity }: ReportColumn, system: UnitSystem): string {
  if (cell === undefined) return '';
  if (typeof cell === 'string') return cell;
  if (quantity === undefined || quantity === 'count') return String(cell);
  if (quantity === 'factor') return String(Number(cell.toPrecision(3)));
  const { dimension, usDecimals, siDecimals, ...units } = forms[quantity];
  const decimals = system === 'us' ? usDecimals : siDecimals;
  const number = inUnit(cell, dimension, units[system]).toFixed(decimals);
  return Number(number) === 0 ? number.replace('-', '') : number;
}

/**
 * The symbol of a column's unit, as it is printed.
 *
 * @param quantity - what is measured
 * @param system - units of the reader
 * @returns e.g. `cfm` or `°C`
 */
export function unitWords(quantity: keyof typeof forms, system: UnitSystem): string {
  const { dimension, ...units } = forms[quantity];
  return formatQuantity(0, dimension, { system, unit: units[system], decimals: 0 })
    .replace(/^-?\d+/u, '')
    .trim();
}

/**
 * A value in the unit of its column, for axes.
 *
 * @param si - the value in SI
 * @param quantity - what is measured
 * @param system - units of the reader
 * @returns the value [the column's unit]
 */
export function inColumnUnit(si: number, quantity: keyof typeof forms, system: UnitSystem): number {
  const { dimension, ...units } = forms[quantity];
  return inUnit(si, dimension, units[system]);
}

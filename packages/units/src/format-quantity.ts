import type { Dimension } from './dimension.js';
import { findUnit, type IndexedUnit } from './internal/unit-index.js';
import { formatInches } from './internal/format-inches.js';
import { defaultDigits, defaultUnit, type PrintedDigits } from './unit-choice.js';
import type { UnitSystem } from './unit-definition.js';
import { UnitsError } from './units-error.js';

/** How a quantity is printed. */
export interface FormatOptions {
  /** Which unit is used when none is named. */
  readonly system: UnitSystem;
  /** A unit by any of its spellings; `ft in` prints feet and inches: `8' 6"`. */
  readonly unit?: string;
  /** So many decimals, instead of what the unit is usually worth. */
  readonly decimals?: number;
  /** So many significant digits, instead of what the unit is usually worth. */
  readonly significantDigits?: number;
  /** For `in` and `ft in`: inches as mixed numbers to this part of an inch, a power of two up to 64. */
  readonly inchFraction?: number;
}

/**
 * Prints a quantity with its unit, rounded to what it is worth.
 *
 * Never prints `-0`, thousands commas or a power of ten for sizes that occur in houses, so every
 * printed text can be typed back into a house file.
 *
 * @param valueSi - the value [the dimension's SI unit]
 * @param dimension - what is measured
 * @param options - unit system, and a unit or a precision where the usual ones do not fit
 * @returns number, space and unit; `°` follows without a space
 * @throws UnitsError `units.not-a-number`, `units.unknown-unit` or `units.invalid-precision`
 *
 * @example
 * formatQuantity(0.30204, 'volumeFlow', { system: 'us' }); // => '640 cfm'
 * formatQuantity(-12.34, 'pressure', { system: 'us' }); // => '-12.3 Pa'
 * formatQuantity(22.2, 'temperature', { system: 'us' }); // => '72 °F'
 * formatQuantity(62.3, 'pressure', { system: 'us', unit: 'in. w.c.' }); // => '0.25 in. w.c.'
 * formatQuantity(2.5908, 'length', { system: 'us', unit: 'ft in' }); // => `8' 6"`
 */
export function formatQuantity(
  valueSi: number,
  dimension: Dimension,
  options: FormatOptions,
): string {
  if (dimension === 'length' && options.unit === 'ft in') {
    return formatInches(inUnit(valueSi, 'length', 'in'), options.inchFraction ?? 16, 'feet');
  }
  const unit = unitFor(dimension, options.unit ?? defaultUnit(dimension, options.system));
  const value = inUnit(valueSi, dimension, unit.definition.symbol);
  if (options.inchFraction !== undefined && unit.definition.symbol === 'in') {
    return formatInches(value, options.inchFraction, 'inches');
  }
  const number = withoutNegativeZero(round(value, unit, options));
  const { printed } = unit.definition;
  const space = printed === '' || printed === '°' ? '' : ' ';
  return number + space + printed;
}

/**
 * A value in a unit of choice, as a number; for axes and tables.
 *
 * @param valueSi - the value [the dimension's SI unit]
 * @param dimension - what is measured
 * @param unit - any spelling of the unit wanted
 * @returns the value [unit]
 * @throws UnitsError `units.not-a-number` or `units.unknown-unit`
 *
 * @example
 * inUnit(20, 'temperature', 'F'); // => 68
 */
export function inUnit(valueSi: number, dimension: Dimension, unit: string): number {
  if (!Number.isFinite(valueSi)) {
    throw new UnitsError('units.not-a-number', `${valueSi} cannot be printed as ${dimension}.`);
  }
  const { perSi, shift } = unitFor(dimension, unit);
  return valueSi * perSi + shift;
}

function unitFor(dimension: Dimension, spelling: string): IndexedUnit {
  const unit = findUnit(spelling, dimension);
  if (!unit) {
    throw new UnitsError('units.unknown-unit', `There is no unit "${spelling}" of ${dimension}.`);
  }
  return unit;
}

function round(
  value: number,
  unit: IndexedUnit,
  { decimals, significantDigits }: FormatOptions,
): string {
  if (decimals !== undefined) {
    if (!Number.isInteger(decimals) || decimals < 0 || decimals > 20)
      throw precisionError(decimals);
    return value.toFixed(decimals);
  }
  if (significantDigits !== undefined) {
    if (!Number.isInteger(significantDigits) || significantDigits < 1 || significantDigits > 17) {
      throw precisionError(significantDigits);
    }
    return plainDigits(Number(value.toPrecision(significantDigits)), significantDigits);
  }
  const digits = defaultDigits(unit.definition.dimension, unit.definition.symbol);
  return value.toFixed(decimalsShown(value, digits));
}

function decimalsShown(value: number, digits: PrintedDigits): number {
  if ('decimals' in digits) return digits.decimals;
  if (value === 0) return 0;
  // Of the value as it will be rounded: 99.96 to three digits is 100, which needs no decimals.
  const rounded = Number(value.toPrecision(digits.significant));
  const wholeDigits = Math.floor(Math.log10(Math.abs(rounded))) + 1;
  const wanted = Math.min(Math.max(digits.significant - wholeDigits, 0), digits.maxDecimals);
  return withoutTrailingZeros(value, wanted);
}

/** A trailing zero claims a digit that a default precision does not know to be there. */
function withoutTrailingZeros(value: number, decimals: number): number {
  const text = value.toFixed(decimals);
  const zeros = /\.\d*?(0+)$/.exec(text)?.[1]?.length ?? 0;
  return decimals - zeros;
}

/** The number with so many significant digits, never as a power of ten within 1e-6 to 1e21. */
function plainDigits(value: number, significant: number): string {
  if (value === 0) return '0';
  const wholeDigits = Math.floor(Math.log10(Math.abs(value))) + 1;
  const decimals = Math.max(significant - wholeDigits, 0);
  return decimals > 20 ? value.toExponential(significant - 1) : value.toFixed(decimals);
}

function withoutNegativeZero(text: string): string {
  return /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text;
}

function precisionError(precision: number): UnitsError {
  return new UnitsError('units.invalid-precision', `${precision} is not a number of digits.`);
}

import { dimensions, type Dimension } from './dimension.js';
import type { UnitSystem } from './unit-definition.js';

/** How many digits a value is worth when it is printed in a unit. */
export type PrintedDigits =
  /** Always so many decimals. */
  | { readonly decimals: number }
  /** Decimals until so many significant digits show, at most `maxDecimals`; whole digits always show. */
  | { readonly significant: number; readonly maxDecimals: number };

interface UnitChoice {
  readonly us: string;
  readonly si: string;
}

/**
 * The unit of each dimension that is printed when none is asked for.
 *
 * House pressures are in pascals in both systems, as the trade reads them on its gauges.
 */
const printedUnits: Readonly<Record<Dimension, UnitChoice>> = {
  length: { us: 'ft', si: 'm' },
  area: { us: 'ft2', si: 'm2' },
  volume: { us: 'ft3', si: 'm3' },
  volumeFlow: { us: 'cfm', si: 'L/s' },
  massFlow: { us: 'scfm', si: 'kg/h' },
  pressure: { us: 'Pa', si: 'Pa' },
  temperature: { us: 'F', si: 'C' },
  temperatureDifference: { us: 'F', si: 'K' },
  power: { us: 'kBtu/h', si: 'kW' },
  speed: { us: 'mph', si: 'm/s' },
  angle: { us: 'deg', si: 'deg' },
  airChangeRate: { us: 'ACH', si: '1/h' },
  ratio: { us: '%', si: '%' },
  time: { us: 'min', si: 'min' },
  flowPerArea: { us: 'cfm/ft2', si: 'L/(s m2)' },
  density: { us: 'lb/ft3', si: 'kg/m3' },
  energy: { us: 'kBtu', si: 'kWh' },
  force: { us: 'lbf', si: 'N' },
  mass: { us: 'lb', si: 'kg' },
  concentration: { us: 'ppm', si: 'ppm' },
};

/** Whole numbers, tenths and the like, by unit; what is not listed shows three significant digits. */
const digitsByUnit: Readonly<Record<string, PrintedDigits>> = {
  Pa: { decimals: 1 },
  F: { decimals: 0 },
  C: { decimals: 0 },
  deg: { decimals: 0 },
  cfm: { significant: 3, maxDecimals: 1 },
  scfm: { significant: 3, maxDecimals: 1 },
  'L/s': { significant: 3, maxDecimals: 1 },
  'm3/h': { significant: 3, maxDecimals: 1 },
  'kg/h': { significant: 3, maxDecimals: 1 },
  mm: { significant: 3, maxDecimals: 1 },
  fpm: { decimals: 0 },
  '%': { significant: 3, maxDecimals: 1 },
};

/**
 * The unit that a dimension is printed in when none is asked for; for the heads of tables.
 *
 * @param dimension - what is measured
 * @param system - inch-pound or SI
 * @returns the canonical symbol of the unit
 *
 * @example
 * defaultUnit('volumeFlow', 'us'); // => 'cfm'
 */
export function defaultUnit(dimension: Dimension, system: UnitSystem): string {
  return printedUnits[dimension][system];
}

/** The digits that a value in this unit is worth: about what a careful instrument resolves. */
export function defaultDigits(dimension: Dimension, symbol: string): PrintedDigits {
  if (dimension === 'temperatureDifference') return { significant: 2, maxDecimals: 1 };
  if (symbol === dimensions[dimension].siUnit && digitsByUnit[symbol] === undefined) {
    return { significant: 3, maxDecimals: 6 };
  }
  return digitsByUnit[symbol] ?? { significant: 3, maxDecimals: 4 };
}

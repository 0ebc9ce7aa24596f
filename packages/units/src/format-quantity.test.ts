import { describe, expect, it } from 'vitest';

import { dimensions, type Dimension } from './dimension.js';
import { formatQuantity, inUnit, type FormatOptions } from './format-quantity.js';
import { defaultUnit } from './unit-choice.js';
import { UnitsError } from './units-error.js';
import { unitsOf } from './units-of.js';

/** SI value, dimension, as printed in inch-pound and in SI; worked by hand. */
const printed: readonly (readonly [number, Dimension, string, string])[] = [
  [2.5908, 'length', '8.5 ft', '2.59 m'],
  [202.53, 'area', '2180 ft²', '203 m²'],
  [523.9, 'volume', '18501 ft³', '524 m³'],
  [0.30204, 'volumeFlow', '640 cfm', '302 L/s'],
  [0.0057, 'volumeFlow', '12.1 cfm', '5.7 L/s'],
  [0.1, 'massFlow', '176 scfm', '360 kg/h'],
  [-12.34, 'pressure', '-12.3 Pa', '-12.3 Pa'],
  [22.2, 'temperature', '72 °F', '22 °C'],
  [5, 'temperatureDifference', '9 °F', '5 K'],
  [11722.84, 'power', '40 kBtu/h', '11.7 kW'],
  [6.7056, 'speed', '15 mph', '6.71 m/s'],
  [270, 'angle', '270°', '270°'],
  [0.000333, 'airChangeRate', '1.2 ACH', '1.2 1/h'],
  [0.453, 'ratio', '45.3 %', '45.3 %'],
  [600, 'time', '10 min', '10 min'],
  [0.00508, 'flowPerArea', '1 cfm/ft²', '5.08 L/(s m²)'],
  [1.2041, 'density', '0.0752 lb/ft³', '1.2 kg/m³'],
  [3.6e8, 'energy', '341 kBtu', '100 kWh'],
  [8.9, 'force', '2 lbf', '8.9 N'],
  [5.44, 'mass', '12 lb', '5.44 kg'],
  [0.000035, 'concentration', '35 ppm', '35 ppm'],
];

describe('formatQuantity', () => {
  it.each(printed)('prints %d of %s as %s or %s', (valueSi, dimension, us, si) => {
    expect(formatQuantity(valueSi, dimension, { system: 'us' })).toBe(us);
    expect(formatQuantity(valueSi, dimension, { system: 'si' })).toBe(si);
  });

  it('has a case above for every dimension', () => {
    const covered = new Set(printed.map(([, dimension]) => dimension));
    expect([...covered].toSorted()).toEqual(Object.keys(dimensions).toSorted());
  });

  it.each<readonly [number, Dimension, Partial<FormatOptions>, string]>([
    [62.3, 'pressure', { unit: 'in. w.c.' }, '0.25 in. w.c.'],
    [0.30204, 'volumeFlow', { unit: 'm3/h' }, '1087 m³/h'],
    [0.30204, 'volumeFlow', { unit: 'cfm', significantDigits: 2 }, '640 cfm'],
    [0.30204, 'volumeFlow', { unit: 'm3/h', significantDigits: 2 }, '1100 m³/h'],
    [-0.04, 'pressure', {}, '0.0 Pa'],
    [-0.04, 'pressure', { decimals: 0 }, '0 Pa'],
    [-0.04, 'pressure', { decimals: 3 }, '-0.040 Pa'],
    [-0, 'pressure', { significantDigits: 2 }, '0 Pa'],
    [-0, 'volumeFlow', {}, '0 cfm'],
    [99.96, 'length', { unit: 'm' }, '100 m'],
    [0.45, 'ratio', { unit: '-' }, '0.45'],
    [0.0889, 'length', { unit: 'in' }, '3.5 in'],
    [0.0889, 'length', { unit: 'in', inchFraction: 8 }, '3 1/2 in'],
    [0.0127, 'length', { unit: 'in', inchFraction: 8 }, '1/2 in'],
    [-0.0001, 'length', { unit: 'in', inchFraction: 8 }, '0 in'],
    [2.5908, 'length', { unit: 'ft in' }, `8' 6"`],
    [2.6035, 'length', { unit: 'ft in' }, `8' 6 1/2"`],
    [-2.6035, 'length', { unit: 'ft in' }, `-8' 6 1/2"`],
    [0.3047, 'length', { unit: 'ft in' }, `1' 0"`],
    [1e-9, 'area', { significantDigits: 3 }, '0.0000000108 ft²'],
  ])('prints %d of %s with %j as %s', (valueSi, dimension, options, expected) => {
    expect(formatQuantity(valueSi, dimension, { system: 'us', ...options })).toBe(expected);
  });

  it.each<readonly [number, Dimension, Partial<FormatOptions>, string]>([
    [Number.NaN, 'pressure', {}, 'units.not-a-number'],
    [Number.POSITIVE_INFINITY, 'length', { unit: 'ft in' }, 'units.not-a-number'],
    [1, 'pressure', { unit: 'cfm' }, 'units.unknown-unit'],
    [1, 'pressure', { decimals: -1 }, 'units.invalid-precision'],
    [1, 'pressure', { significantDigits: 0 }, 'units.invalid-precision'],
    [1, 'length', { unit: 'ft in', inchFraction: 10 }, 'units.invalid-precision'],
  ])('throws on %d of %s with %j: %s', (valueSi, dimension, options, code) => {
    const attempt = (): unknown => formatQuantity(valueSi, dimension, { system: 'us', ...options });
    expect(attempt).toThrow(UnitsError);
    expect(attempt).toThrow(expect.objectContaining({ code }));
  });
});

describe('inUnit', () => {
  it('gives the plain number for an axis', () => {
    expect(inUnit(20, 'temperature', 'F')).toBeCloseTo(68, 12);
    expect(inUnit(0.30204, 'volumeFlow', 'CFM')).toBeCloseTo(639.987, 3);
  });
});

describe('defaultUnit', () => {
  it('names a unit of the dimension, at home in the system asked for', () => {
    for (const dimension of Object.keys(dimensions) as Dimension[]) {
      for (const system of ['us', 'si'] as const) {
        const symbol = defaultUnit(dimension, system);
        const unit = unitsOf(dimension).find((candidate) => candidate.symbol === symbol);
        expect([dimension, system, 'both']).toContain(unit?.system);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';

import { dimensions, type Dimension } from './dimension.js';
import { exact, nearestDouble } from './internal/exact.js';
import { unitKey } from './internal/unit-index.js';
import { unitsOf, unitTable } from './units-of.js';

/**
 * Factors to SI as NIST Special Publication 811 (2008), appendix B.8, prints them, from memory:
 * seven digits, or fewer where the printed value is exact. Decimal multiples of SI units are from
 * the SI Brochure. Rows marked `ours` are defined by this project and derived by hand here.
 */
const published: Readonly<Record<Dimension, Readonly<Record<string, number>>>> = {
  length: { ft: 0.3048, in: 0.0254, yd: 0.9144, m: 1, cm: 0.01, mm: 0.001 },
  area: { ft2: 9.290304e-2, in2: 6.4516e-4, m2: 1, cm2: 1e-4, mm2: 1e-6 },
  volume: { ft3: 2.831685e-2, in3: 1.638706e-5, m3: 1, L: 1e-3 },
  angle: { deg: 1 },
  volumeFlow: {
    cfm: 4.719474e-4,
    cfh: 7.86579e-6, // cubic foot per hour: a sixtieth of the row above, by hand
    'ft3/s': 2.831685e-2,
    'L/s': 1e-3,
    'L/min': 1.666667e-5,
    'm3/h': 2.777778e-4,
    'm3/s': 1,
  },
  massFlow: {
    scfm: 5.682719e-4, // ours: 4.719474e-4 m3/s × 1.2041 kg/m3
    'lb/h': 1.259979e-4,
    'lb/min': 7.559873e-3,
    'kg/s': 1,
    'kg/h': 2.777778e-4,
    'g/s': 1e-3,
  },
  speed: {
    mph: 0.44704,
    fpm: 5.08e-3,
    'ft/s': 0.3048,
    'm/s': 1,
    'km/h': 0.2777778,
    kn: 0.5144444,
  },
  airChangeRate: { ACH: 2.777778e-4, ACH50: 2.777778e-4, '1/h': 2.777778e-4, '1/s': 1 },
  flowPerArea: {
    'cfm/ft2': 5.08e-3, // ft3/min over ft2 is ft/min
    'L/(s m2)': 1e-3,
    'm3/(h m2)': 2.777778e-4,
    'm3/(s m2)': 1,
  },
  pressure: {
    Pa: 1,
    'in. w.c.': 249.08891, // printed as 2.490 889 E+02
    'ft w.c.': 2989.067,
    'in. Hg': 3386.389,
    psi: 6894.757,
    hPa: 100,
    kPa: 1000,
    mbar: 100,
    bar: 1e5,
    'mm w.c.': 9.80665,
    'mm Hg': 133.3224,
    atm: 101325,
  },
  force: { lbf: 4.448222, N: 1, kN: 1000, kgf: 9.80665 },
  temperature: { F: 5 / 9, C: 1, K: 1 },
  temperatureDifference: { F: 5 / 9, C: 1, K: 1 },
  power: {
    'Btu/h': 0.2930711,
    'kBtu/h': 293.0711,
    'MMBtu/h': 293071.1,
    hp: 745.6999,
    W: 1,
    kW: 1000,
  },
  energy: {
    Btu: 1055.056,
    kBtu: 1055056,
    MMBtu: 1055056000,
    therm: 1.054804e8,
    J: 1,
    kJ: 1e3,
    MJ: 1e6,
    GJ: 1e9,
    Wh: 3600,
    kWh: 3.6e6,
    MWh: 3.6e9,
  },
  time: { s: 1, min: 60, h: 3600, d: 86400 },
  mass: { lb: 0.4535924, oz: 2.834952e-2, kg: 1, g: 1e-3 },
  density: { 'lb/ft3': 16.01846, 'kg/m3': 1, 'g/m3': 1e-3 },
  ratio: { '%': 0.01, '-': 1 },
  concentration: { ppm: 1e-6, ppb: 1e-9, '%': 0.01, '-': 1 },
};

/** What appendix B.8 prints as exact (in bold), from memory, and our two definitions. */
const exactly: readonly (readonly [Dimension, string, string])[] = [
  ['length', 'ft', '0.3048'],
  ['length', 'in', '0.0254'],
  ['area', 'ft2', '0.09290304'],
  ['area', 'in2', '0.00064516'],
  ['volume', 'ft3', '0.028316846592'],
  ['speed', 'mph', '0.44704'],
  ['speed', 'fpm', '0.00508'],
  ['mass', 'lb', '0.45359237'],
  ['force', 'lbf', '4.4482216152605'],
  ['energy', 'Btu', '1055.05585262'],
  ['pressure', 'in. w.c.', '249.08891'],
  ['pressure', 'atm', '101325'],
  ['temperatureDifference', 'F', '5/9'],
];

describe('the unit table', () => {
  for (const dimension of Object.keys(dimensions) as Dimension[]) {
    for (const unit of unitsOf(dimension)) {
      it(`gives ${unit.symbol} as ${dimension} its published factor`, () => {
        const expected = published[dimension][unit.symbol];
        const factor = nearestDouble(exact(unit.factor));
        expect(expected).toBeDefined();
        // 5e-7 because the published value is rounded to seven digits.
        expect(Math.abs(factor / (expected ?? 0) - 1)).toBeLessThan(5e-7);
      });
    }

    it(`has no published factor of ${dimension} without a unit`, () => {
      const symbols = unitsOf(dimension).map((unit) => unit.symbol);
      expect(symbols.toSorted()).toEqual(Object.keys(published[dimension]).toSorted());
    });

    it(`has ${dimensions[dimension].siUnit} with factor 1 for ${dimension}`, () => {
      const si = unitsOf(dimension).find((unit) => unit.symbol === dimensions[dimension].siUnit);
      expect([si?.factor, si?.offset]).toEqual(['1', '0']);
    });

    it(`serves both unit systems for ${dimension}`, () => {
      const systems = new Set(unitsOf(dimension).map((unit) => unit.system));
      expect(systems.has('both') || (systems.has('us') && systems.has('si'))).toBe(true);
    });
  }

  it.each(exactly)('keeps %s %s exactly at %s', (dimension, symbol, factor) => {
    const unit = unitsOf(dimension).find((candidate) => candidate.symbol === symbol);
    expect(exact(unit?.factor ?? '0').equals(exact(factor))).toBe(true);
  });

  it('has an offset only for temperatures: 32 °F and 273.15 K are 0 °C', () => {
    const offsets = unitTable
      .filter((unit) => unit.offset !== '0')
      .map((unit) => [unit.dimension, unit.symbol, unit.offset]);
    expect(offsets).toEqual([
      ['temperature', 'F', '-160/9'],
      ['temperature', 'K', '-5463/20'],
    ]);
  });

  it('names a source for every unit', () => {
    expect(unitTable.filter((unit) => unit.source.trim() === '')).toEqual([]);
  });

  it('gives one spelling one meaning within a dimension, whatever the case', () => {
    const seen = new Map<string, string>();
    const clashes: string[] = [];
    for (const unit of unitTable) {
      const spellings = [unit.symbol, unit.printed, ...unit.aliases].map(unitKey);
      for (const key of new Set(spellings.map((spelling) => spelling.toLowerCase()))) {
        const place = `${unit.dimension} ${key}`;
        if (key !== '' && seen.has(place)) clashes.push(place);
        seen.set(place, unit.symbol);
      }
    }
    expect(clashes).toEqual([]);
  });
});

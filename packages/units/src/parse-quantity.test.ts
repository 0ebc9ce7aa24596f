import { describe, expect, it } from 'vitest';

import { dimensions, type Dimension } from './dimension.js';
import { parseQuantity, type QuantityResult } from './parse-quantity.js';
import { quantityProblems, type QuantityProblemCode } from './quantity-problem.js';
import { unitTable } from './units-of.js';

/** Text, dimension, value in SI as an exact fraction (worked by hand), canonical unit. */
const accepted: readonly (readonly [string, Dimension, string, string])[] = [
  // 640 × 0.028316846592 / 60
  ['640 cfm', 'volumeFlow', '73741788/244140625', 'cfm'],
  ['640cfm', 'volumeFlow', '73741788/244140625', 'cfm'],
  ['640 CFM', 'volumeFlow', '73741788/244140625', 'cfm'],
  ['640 ft³/min', 'volumeFlow', '73741788/244140625', 'cfm'],
  ['640 cubic feet per minute', 'volumeFlow', '73741788/244140625', 'cfm'],
  ['1,200 CFM', 'volumeFlow', '55306341/97656250', 'cfm'],
  ['1200 cfm', 'volumeFlow', '55306341/97656250', 'cfm'],
  ['300 m3/h', 'volumeFlow', '1/12', 'm3/h'],
  ['300 m³/h', 'volumeFlow', '1/12', 'm3/h'],
  ['300 m^3/hr', 'volumeFlow', '1/12', 'm3/h'],
  ['1\u2009200 m³/h', 'volumeFlow', '1/3', 'm3/h'],
  ['95 L/s', 'volumeFlow', '19/200', 'L/s'],
  ['95 l/s', 'volumeFlow', '19/200', 'L/s'],
  ['1.2e-3 m3/s', 'volumeFlow', '3/2500', 'm3/s'],
  ['1.2E+1 L/s', 'volumeFlow', '3/250', 'L/s'],
  ['0.25 in. w.c.', 'pressure', '24908891/400000', 'in. w.c.'],
  ['.25 in w.c.', 'pressure', '24908891/400000', 'in. w.c.'],
  ['0.25 IWC', 'pressure', '24908891/400000', 'in. w.c.'],
  ['1/4" w.c.', 'pressure', '24908891/400000', 'in. w.c.'],
  ['1/4 inches of water', 'pressure', '24908891/400000', 'in. w.c.'],
  ['−5 Pa', 'pressure', '-5', 'Pa'],
  ['- 5 Pa', 'pressure', '-5', 'Pa'],
  ['+5 Pa', 'pressure', '5', 'Pa'],
  ['9 kPa', 'pressure', '9000', 'kPa'],
  ['9 mbar', 'pressure', '900', 'mbar'],
  // 4.4482216152605 / 0.00064516
  ['1 psi', 'pressure', '8896443230521/1290320000', 'psi'],
  // 13595.1 × 9.80665 × 0.0254
  ['1 in. Hg', 'pressure', '338638864034100/100000000000', 'in. Hg'],
  ['3 1/2 in', 'length', '889/10000', 'in'],
  ['3-1/2 in', 'length', '889/10000', 'in'],
  ['3½"', 'length', '889/10000', 'in'],
  ['3 / 4 in', 'length', '381/20000', 'in'],
  ['-1 1/2 in', 'length', '-381/10000', 'in'],
  // 102 in, 102.5 in
  [`8'-6"`, 'length', '6477/2500', 'ft'],
  [`8' 6"`, 'length', '6477/2500', 'ft'],
  ['8′ 6″', 'length', '6477/2500', 'ft'],
  ['8 ft 6 in', 'length', '6477/2500', 'ft'],
  ['8 feet, 6 inches', 'length', '6477/2500', 'ft'],
  [`8' 6 1/2"`, 'length', '5207/2000', 'ft'],
  [`8'-6 1/2"`, 'length', '5207/2000', 'ft'],
  [`8'`, 'length', '1524/625', 'ft'],
  [`-8' 6"`, 'length', '-6477/2500', 'ft'],
  ['4 km/h', 'speed', '10/9', 'km/h'],
  ['15 mph', 'speed', '4191/625', 'mph'],
  ['5 m/s', 'speed', '5', 'm/s'],
  ['300 fpm', 'speed', '381/250', 'fpm'],
  ['300 ft/min', 'speed', '381/250', 'fpm'],
  ['18 knots', 'speed', '463/50', 'kn'],
  ['72 F', 'temperature', '200/9', 'F'],
  ['72 °F', 'temperature', '200/9', 'F'],
  ['72℉', 'temperature', '200/9', 'F'],
  ['72 deg F', 'temperature', '200/9', 'F'],
  ['-10 C', 'temperature', '-10', 'C'],
  ['300 K', 'temperature', '537/20', 'K'],
  ['9 F', 'temperatureDifference', '5', 'F'],
  ['5 K', 'temperatureDifference', '5', 'K'],
  ['5 C', 'temperatureDifference', '5', 'C'],
  // 40000 × 1055.05585262 / 3600
  ['40 kBtu/h', 'power', '52752792631/4500000', 'kBtu/h'],
  ['40 MBH', 'power', '52752792631/4500000', 'kBtu/h'],
  ['40,000 Btu/h', 'power', '52752792631/4500000', 'Btu/h'],
  ['40,000 BTU/hr', 'power', '52752792631/4500000', 'Btu/h'],
  ['12 kW', 'power', '12000', 'kW'],
  ['12 ft2', 'area', '435483/390625', 'ft2'],
  ['12 ft²', 'area', '435483/390625', 'ft2'],
  ['12 sq ft', 'area', '435483/390625', 'ft2'],
  ['12 sq. ft.', 'area', '435483/390625', 'ft2'],
  ['12 sf', 'area', '435483/390625', 'ft2'],
  ['100 in2', 'area', '16129/250000', 'in2'],
  ['5 cm2', 'area', '1/2000', 'cm2'],
  ['5 mm2', 'area', '1/200000', 'mm2'],
  ['5 m2', 'area', '5', 'm2'],
  ['1000 ft3', 'volume', '55306341/1953125', 'ft3'],
  ['1,000 cu ft', 'volume', '55306341/1953125', 'ft3'],
  ['5 m3', 'volume', '5', 'm3'],
  ['5 L', 'volume', '1/200', 'L'],
  ['1 kg/s', 'massFlow', '1', 'kg/s'],
  ['36 kg/h', 'massFlow', '1/100', 'kg/h'],
  ['1 lb/h', 'massFlow', '45359237/360000000000', 'lb/h'],
  ['45 %', 'ratio', '9/20', '%'],
  ['45%', 'ratio', '9/20', '%'],
  ['0.45', 'ratio', '9/20', '-'],
  ['-0.45', 'ratio', '-9/20', '-'],
  ['1', 'ratio', '1', '-'],
  ['270 deg', 'angle', '270', 'deg'],
  ['270°', 'angle', '270', 'deg'],
  ['N', 'angle', '0', 'deg'],
  ['NNE', 'angle', '45/2', 'deg'],
  ['nw', 'angle', '315', 'deg'],
  ['North-West', 'angle', '315', 'deg'],
  ['south', 'angle', '180', 'deg'],
  ['1.2 ACH', 'airChangeRate', '1/3000', 'ACH'],
  ['1.2 ACH50', 'airChangeRate', '1/3000', 'ACH50'],
  ['1.2 ACH at 50 Pa', 'airChangeRate', '1/3000', 'ACH50'],
  ['1.2 ACH@50', 'airChangeRate', '1/3000', 'ACH50'],
  ['1.2 1/h', 'airChangeRate', '1/3000', '1/h'],
  ['1.2/h', 'airChangeRate', '1/3000', '1/h'],
  ['1/h', 'airChangeRate', '1/3600', '1/h'],
  ['2 1/h', 'airChangeRate', '1/1800', '1/h'],
  ['10 min', 'time', '600', 'min'],
  ['2 h', 'time', '7200', 'h'],
  ['1 cfm/ft2', 'flowPerArea', '127/25000', 'cfm/ft2'],
  ['1 CFM per sq ft', 'flowPerArea', '127/25000', 'cfm/ft2'],
  ['1 L/(s m2)', 'flowPerArea', '1/1000', 'L/(s m2)'],
  ['1 L/(s·m²)', 'flowPerArea', '1/1000', 'L/(s m2)'],
  ['1 L/s per m2', 'flowPerArea', '1/1000', 'L/(s m2)'],
  ['1.2 kg/m3', 'density', '6/5', 'kg/m3'],
  ['1 kWh', 'energy', '3600000', 'kWh'],
  ['1 Btu', 'energy', '52752792631/50000000', 'Btu'],
  ['2 lbf', 'force', '8896443230521/1000000000000', 'lbf'],
  ['2 lb', 'mass', '45359237/50000000', 'lb'],
  ['35 ppm', 'concentration', '7/200000', 'ppm'],
];

/** Text, dimension, code, and the suggestion if there is one. */
const refused: readonly (readonly [string, Dimension, QuantityProblemCode, string?])[] = [
  ['', 'area', 'quantity.empty'],
  [' \u2009\t ', 'area', 'quantity.empty'],
  ['9'.repeat(10_000), 'area', 'quantity.too-long'],
  [' '.repeat(10_000), 'area', 'quantity.too-long'],
  ['cfm', 'volumeFlow', 'quantity.no-number'],
  ['lots', 'volumeFlow', 'quantity.no-number'],
  ['NW', 'pressure', 'quantity.no-number'],
  ['NaN cfm', 'volumeFlow', 'quantity.not-finite'],
  ['Infinity Pa', 'pressure', 'quantity.not-finite'],
  ['-.inf', 'pressure', 'quantity.not-finite'],
  ['∞ Pa', 'pressure', 'quantity.not-finite'],
  ['1e999', 'pressure', 'quantity.out-of-range'],
  ['1e-999 Pa', 'pressure', 'quantity.out-of-range'],
  ['1e99999999999999999999 Pa', 'pressure', 'quantity.out-of-range'],
  [`${'9'.repeat(40)} Pa`, 'pressure', 'quantity.out-of-range'],
  ['1/0 in', 'length', 'quantity.zero-denominator'],
  ['3 1/00 in', 'length', 'quantity.zero-denominator'],
  ['0,25 in. w.c.', 'pressure', 'quantity.ambiguous-comma', '0.25 in. w.c.'],
  ['0,250 kPa', 'pressure', 'quantity.ambiguous-comma', '0.250 kPa'],
  ['1,20 m', 'length', 'quantity.ambiguous-comma', '1.20 m'],
  ['1.200,5 Pa', 'pressure', 'quantity.ambiguous-comma', '1200.5 Pa'],
  ['1,200,00 cfm', 'volumeFlow', 'quantity.ambiguous-comma'],
  ['12,00,000 Btu/h', 'power', 'quantity.ambiguous-comma'],
  ['300 to 500 cfm', 'volumeFlow', 'quantity.two-numbers'],
  ['300-500 cfm', 'volumeFlow', 'quantity.two-numbers'],
  ['300–500 cfm', 'volumeFlow', 'quantity.two-numbers'],
  ['300 ± 20 cfm', 'volumeFlow', 'quantity.two-numbers'],
  ['310 cfm at 50 Pa', 'volumeFlow', 'quantity.test-pressure'],
  ['150 L/s @ 25 Pa', 'volumeFlow', 'quantity.test-pressure'],
  ['24 in x 12 in', 'length', 'quantity.two-numbers'],
  ['8x10 in', 'length', 'quantity.two-numbers'],
  ['1 200 cfm', 'volumeFlow', 'quantity.two-numbers', '1200 cfm'],
  ['5 Pa, 6 Pa', 'pressure', 'quantity.two-numbers'],
  ['cfm 640', 'volumeFlow', 'quantity.malformed', '640 cfm'],
  ['~640 cfm', 'volumeFlow', 'quantity.malformed', '640 cfm'],
  ['about 640 cfm', 'volumeFlow', 'quantity.malformed', '640 cfm'],
  ['<= 5 Pa', 'pressure', 'quantity.malformed', '5 Pa'],
  ['$5', 'pressure', 'quantity.malformed'],
  ['45 -', 'ratio', 'quantity.malformed'],
  [`8' 6`, 'length', 'quantity.malformed', `8' 6"`],
  [`5' 14"`, 'length', 'quantity.malformed', '74 in'],
  [`8.5' 6"`, 'length', 'quantity.malformed'],
  ['640', 'volumeFlow', 'quantity.unit-missing', '640 cfm'],
  ['0', 'pressure', 'quantity.unit-missing', '0 Pa'],
  ['8', 'length', 'quantity.unit-missing', '8 ft'],
  ['45', 'ratio', 'quantity.unit-missing', '45 %'],
  ['640 cmf', 'volumeFlow', 'quantity.unit-unknown', '640 cfm'],
  ['1.2 AHC50', 'airChangeRate', 'quantity.unit-unknown', '1.2 ACH50'],
  ['5 furlongs', 'length', 'quantity.unit-unknown'],
  ['40 MBtu/h', 'power', 'quantity.unit-ambiguous'],
  ['3 tons', 'power', 'quantity.unit-ambiguous'],
  ['310 cfm50', 'volumeFlow', 'quantity.test-pressure'],
  ['3 ACH25', 'airChangeRate', 'quantity.test-pressure'],
  ['310 cfm@50Pa', 'volumeFlow', 'quantity.test-pressure'],
  ['0.25 in', 'pressure', 'quantity.wrong-dimension', '0.25 in. w.c.'],
  ['12 ft', 'area', 'quantity.wrong-dimension', '12 ft2'],
  ['20 L', 'volumeFlow', 'quantity.wrong-dimension', '20 L/s'],
  ['12 kW', 'energy', 'quantity.wrong-dimension', '12 kWh'],
  ['12 kWh', 'power', 'quantity.wrong-dimension', '12 kW'],
  ['640 cfm', 'pressure', 'quantity.wrong-dimension'],
];

describe('parseQuantity', () => {
  it.each(accepted)('reads "%s" as %s: %s (%s)', (text, dimension, value, unit) => {
    const result = parseQuantity(text, dimension);
    const quantity = result.ok ? result.quantity : undefined;
    expect(quantity?.dimension).toBe(dimension);
    expect(quantity?.unit).toBe(unit);
    const [upper = '', lower = '1'] = value.split('/');
    const [ownUpper = '', ownLower = '1'] = (quantity?.exact ?? '').split('/');
    expect(BigInt(ownUpper) * BigInt(lower)).toBe(BigInt(upper) * BigInt(ownLower));
    expect(quantity?.valueSi).toBeCloseTo(Number(upper) / Number(lower), 9);
  });

  for (const [text, dimension, code, suggestion] of refused) {
    it(`refuses "${text.slice(0, 40)}" as ${dimension}: ${code}`, () => {
      const problem = problemOf(parseQuantity(text, dimension));
      expect(problem?.code).toBe(code);
      expect(problem?.suggestion).toBe(suggestion);
      expect(problem?.accepted).toEqual(dimensions[dimension].examples);
    });
  }

  it('produces every documented code in the cases above', () => {
    const produced = new Set(refused.map(([, , code]) => code));
    expect([...produced].toSorted()).toEqual(Object.keys(quantityProblems).toSorted());
  });

  it('suggests only what it accepts', () => {
    for (const [text, dimension, , suggestion] of refused) {
      if (suggestion === undefined) continue;
      expect([text, parseQuantity(suggestion, dimension).ok]).toEqual([text, true]);
    }
  });

  it('accepts every example that it offers', () => {
    for (const [dimension, { examples }] of Object.entries(dimensions)) {
      for (const example of examples) {
        expect([example, parseQuantity(example, dimension as Dimension).ok]).toEqual([
          example,
          true,
        ]);
      }
    }
  });

  it('accepts every spelling of the table, in any case where no other unit has it', () => {
    for (const unit of unitTable) {
      for (const spelling of [unit.symbol, unit.printed, ...unit.aliases]) {
        if (spelling === '' || spelling === '-') continue;
        for (const text of [`7 ${spelling}`, `7${spelling.toUpperCase()}`]) {
          const result = parseQuantity(text, unit.dimension);
          expect([text, result.ok && result.quantity.unit]).toEqual([text, unit.symbol]);
        }
      }
    }
  });

  it('says what a wrong unit measures', () => {
    expect(problemOf(parseQuantity('640 cfm', 'pressure'))?.measured).toBe('volumeFlow');
  });

  it('takes the first of several dimensions that the unit fits', () => {
    const dimensionOf = (text: string): string => {
      const result = parseQuantity(text, ['volumeFlow', 'massFlow', 'airChangeRate']);
      return result.ok ? result.quantity.dimension : result.problem.code;
    };
    expect(dimensionOf('150 scfm')).toBe('massFlow');
    expect(dimensionOf('150 cfm')).toBe('volumeFlow');
    expect(dimensionOf('3 ACH50')).toBe('airChangeRate');
    expect(dimensionOf('3 Pa')).toBe('quantity.wrong-dimension');
  });

  it('offers two examples of each of several dimensions', () => {
    const problem = problemOf(parseQuantity('', ['temperature', 'speed']));
    expect(problem?.accepted).toEqual(['72 F', '21 C', '15 mph', '300 fpm']);
  });

  it('shortens a long text in the problem', () => {
    expect(problemOf(parseQuantity('x'.repeat(10_000), 'area'))?.found).toHaveLength(60);
  });

  it('tells a temperature from a difference of temperatures', () => {
    const temperature = parseQuantity('9 F', 'temperature');
    const rise = parseQuantity('9 F', 'temperatureDifference');
    expect(temperature.ok && temperature.quantity.exact).toBe('-115/9');
    expect(rise.ok && rise.quantity.exact).toBe('5');
  });
});

function problemOf(result: QuantityResult) {
  return result.ok ? undefined : result.problem;
}

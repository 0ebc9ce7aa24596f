import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { convert } from './convert.js';
import { dimensions, type Dimension } from './dimension.js';
import { formatQuantity } from './format-quantity.js';
import { parseQuantity } from './parse-quantity.js';
import { quantityProblems } from './quantity-problem.js';
import { unitTable } from './units-of.js';

const seed = 20260401;
const dimension = fc.constantFrom(...(Object.keys(dimensions) as Dimension[]));
const unit = fc.constantFrom(...unitTable.filter((row) => row.symbol !== '-'));

/** A decimal as text, without a leading zero group that could be taken for something else. */
const decimal = fc
  .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 6 }))
  .map(([digits, places]) => {
    const text = String(Math.abs(digits)).padStart(places + 1, '0');
    const whole = text.slice(0, text.length - places);
    return `${digits < 0 ? '-' : ''}${whole}${places > 0 ? `.${text.slice(-places)}` : ''}`;
  });

/** Texts made of what quantities are made of, so that deep branches are reached. */
const nearlyQuantity = fc
  .array(
    fc.oneof(
      fc.constantFrom('1', '0', ',', '.', '/', ' ', '-', "'", '"', 'e', '%', '°', 'in', 'cfm', 'x'),
      fc.constantFrom('½', '−', '\u2009', 'm³', 'F', '(', ')', '·', 'NaN', '\u0000', '𝟙', '٣', 'ﬁ'),
      fc.constantFrom(...unitTable.map((row) => row.symbol)),
    ),
    { maxLength: 14 },
  )
  .map((parts) => parts.join(''));

describe('parseQuantity, on generated texts', () => {
  it('never throws, and gives a finite value or a documented problem', () => {
    const text = fc.oneof(nearlyQuantity, fc.string({ unit: 'binary', maxLength: 140 }));
    fc.assert(
      fc.property(text, dimension, (typed, wanted) => {
        const result = parseQuantity(typed, wanted);
        if (result.ok) expect(Number.isFinite(result.quantity.valueSi)).toBe(true);
        else expect(Object.keys(quantityProblems)).toContain(result.problem.code);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it('suggests only what it accepts', () => {
    fc.assert(
      fc.property(nearlyQuantity, dimension, (typed, wanted) => {
        const result = parseQuantity(typed, wanted);
        const suggestion = result.ok ? undefined : result.problem.suggestion;
        if (suggestion !== undefined) {
          expect([suggestion, parseQuantity(suggestion, wanted).ok]).toEqual([suggestion, true]);
        }
      }),
      { seed, numRuns: 2000 },
    );
  });

  it('reads any decimal in any unit exactly: converted back it is the same number', () => {
    fc.assert(
      fc.property(decimal, unit, (number, { symbol, dimension: measured }) => {
        const result = parseQuantity(`${number} ${symbol}`, measured);
        const back = exactIn(result.ok ? result.quantity.exact : '', symbol, measured);
        const own = convert(number, 'm', 'm').exact;
        expect([result.ok, back]).toEqual([true, own]);
      }),
      { seed, numRuns: 1000 },
    );
  });
});

describe('formatQuantity, on generated values', () => {
  it('prints what parseQuantity reads back to within half of the last printed digit', () => {
    fc.assert(
      fc.property(decimal, unit, (number, { symbol, dimension: measured }) => {
        const read = parseQuantity(`${number} ${symbol}`, measured);
        const valueSi = read.ok ? read.quantity.valueSi : Number.NaN;
        const printed = formatQuantity(valueSi, measured, {
          system: 'us',
          unit: symbol,
          decimals: 6,
        });
        const again = parseQuantity(printed, measured);
        const difference = again.ok ? again.quantity.valueSi - valueSi : Number.NaN;
        const { factor } = unitTable.find(
          (row) => row.symbol === symbol && row.dimension === measured,
        ) ?? { factor: '0' };
        // The digits are exact; what is left is one rounding of the value and one of its scale.
        const allowed = 4 * Number.EPSILON * (Math.abs(valueSi) + 500);
        expect(Math.abs(difference)).toBeLessThanOrEqual(allowed * Math.max(1, ratio(factor)));
      }),
      { seed, numRuns: 1000 },
    );
  });

  it('never prints a negative zero or a power of ten', () => {
    const value = fc.oneof(
      fc.double({ min: -1e12, max: 1e12, noNaN: true }),
      fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
    );
    fc.assert(
      fc.property(value, dimension, fc.constantFrom('us', 'si'), (valueSi, measured, system) => {
        const printed = formatQuantity(valueSi, measured, { system });
        expect(printed).toMatch(
          /^(?!-0(?:\.0*)?(?!\.?\d))-?\d+(?:\.\d+)?(?: ?[^\d\s].*)?(?: 1\/h)?$/,
        );
      }),
      { seed, numRuns: 1000 },
    );
  });
});

function ratio(fraction: string): number {
  const [upper = '0', lower = '1'] = fraction.split('/');
  return Number(upper) / Number(lower);
}

/** The exact number of units in an exact SI value, by the table's own factor and offset. */
function exactIn(exactSi: string, symbol: string, measured: Dimension): string {
  const row = unitTable.find((unit) => unit.symbol === symbol && unit.dimension === measured);
  const [n, d] = bigFraction(exactSi);
  const [fn, fd] = bigFraction(row?.factor ?? '0');
  const [on, od] = bigFraction(row?.offset ?? '0');
  return lowestTerms((n * od - on * d) * fd, d * od * fn);
}

function bigFraction(text: string): [bigint, bigint] {
  const [upper = '0', lower = '1'] = text.split('/');
  return [BigInt(upper), BigInt(lower)];
}

function lowestTerms(upper: bigint, lower: bigint): string {
  let [a, b] = [upper < 0n ? -upper : upper, lower];
  while (b > 0n) [a, b] = [b, a % b];
  return lower / a === 1n ? String(upper / a) : `${upper / a}/${lower / a}`;
}

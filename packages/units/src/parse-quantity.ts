import type Fraction from 'fraction.js';

import { acceptedExamples } from './accepted-examples.js';
import { dimensions as dimensionTable, type Dimension } from './dimension.js';
import { readCompassPoint } from './internal/compass.js';
import { exactText, nearestDouble } from './internal/exact.js';
import { normaliseText } from './internal/normalise-text.js';
import { readFeetAndInches } from './internal/read-feet-and-inches.js';
import { readNumber } from './internal/read-number.js';
import { findUnit, type IndexedUnit } from './internal/unit-index.js';
import { unitProblem, type UnitProblem } from './internal/unit-problem.js';
import type { QuantityProblem } from './quantity-problem.js';

/** A quantity as a person typed it, in SI. Plain JSON. */
export interface Quantity {
  readonly dimension: Dimension;
  /** The value in the dimension's SI unit (`dimensions[dimension].siUnit`), rounded once. */
  readonly valueSi: number;
  /** Canonical symbol of the unit that was typed: `cfm`, `F`, `ACH50`; see `unitsOf`. */
  readonly unit: string;
  /** The value in the SI unit as the text of an exact fraction: `381/1250` for 1 ft. */
  readonly exact: string;
}

/** A quantity, or what is wrong with the text. */
export type QuantityResult =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly problem: QuantityProblem };

/** The longest text that is read as a quantity [characters]. */
const maxLength = 100;

/**
 * Reads a quantity with its unit, exactly, as builders and raters type it.
 *
 * Accepts thousands commas (`1,200 CFM`), fractions (`3 1/2 in`), feet and inches (`8'-6"`),
 * powers of ten (`1.2e-3 m3/s`), compass points for directions (`NW`), typographic characters, and
 * any case of letters. A unit is never assumed: only a share up to 1 may be a bare number.
 * Refuses what could be read in two ways, among it a decimal comma, and says what is accepted.
 *
 * @param text - what was typed
 * @param dimensions - the dimension wanted, or several; where a unit fits two, the first one wins
 * @returns the quantity in SI, or the problem as data; never throws on any text
 *
 * @example
 * const flow = parseQuantity('640 cfm', 'volumeFlow');
 * flow.ok && flow.quantity.valueSi.toFixed(4); // => '0.3020'
 *
 * @example
 * const slip = parseQuantity('640 cmf', 'volumeFlow');
 * !slip.ok && slip.problem.suggestion; // => '640 cfm'
 */
export function parseQuantity(
  text: string,
  dimensions: Dimension | readonly Dimension[],
): QuantityResult {
  const wanted = typeof dimensions === 'string' ? [dimensions] : dimensions;
  const fail = (problem: UnitProblem): QuantityResult => ({
    ok: false,
    problem: { found: shortened(text), accepted: acceptedExamples(wanted), ...problem },
  });

  if (text.length > maxLength) return fail({ code: 'quantity.too-long' });
  const plain = normaliseText(text);
  if (plain === '') return fail({ code: 'quantity.empty' });

  if (wanted.includes('angle')) {
    const direction = readCompassPoint(plain);
    const degrees = findUnit('deg', 'angle');
    if (direction && degrees) return succeed(direction, degrees);
  }
  if (wanted.includes('length')) {
    const length = readFeetAndInches(plain);
    const feet = findUnit('ft', 'length');
    if (length?.ok === true && feet) return succeed(length.feet, feet);
    if (length?.ok === false) return fail({ code: 'quantity.malformed', ...length.suggested });
  }
  if (/^[+-]? ?(nan|inf|infinity|∞)(?![a-z])/i.test(plain.replace(/^[+-]?\./, ''))) {
    return fail({ code: 'quantity.not-finite' });
  }

  const number = readNumber(plain);
  switch (number.kind) {
    case 'zero-denominator':
      return fail({ code: 'quantity.zero-denominator' });
    case 'out-of-range':
      return fail({ code: 'quantity.out-of-range' });
    case 'comma':
      return fail({
        code: 'quantity.ambiguous-comma',
        ...(number.text === undefined ? {} : { suggestion: number.text + number.rest }),
      });
    case 'none':
      return fail(numberMissing(plain, wanted));
    case 'number':
  }

  const spelling = number.rest.trim();
  if (spelling === '') {
    const share = bareShare(number.value, wanted);
    if (share) return succeed(number.value, share);
    return fail(unitMissing(number.text, wanted));
  }
  if (spelling === '-') return fail({ code: 'quantity.malformed' });
  for (const dimension of wanted) {
    const unit = findUnit(spelling, dimension);
    if (unit) return succeed(number.value, unit);
  }
  return fail(unitProblem({ number: number.text, spelling, wanted }));
}

function succeed(value: Fraction, unit: IndexedUnit): QuantityResult {
  const si = value.mul(unit.factor).add(unit.offset);
  const { dimension, symbol } = unit.definition;
  return {
    ok: true,
    quantity: { dimension, valueSi: nearestDouble(si), unit: symbol, exact: exactText(si) },
  };
}

/** A bare number up to 1 is a share; beyond that it is more likely a percentage without its sign. */
function bareShare(value: Fraction, wanted: readonly Dimension[]): IndexedUnit | undefined {
  return wanted.includes('ratio') && value.abs().lte(1) ? findUnit('-', 'ratio') : undefined;
}

function unitMissing(number: string, wanted: readonly Dimension[]): UnitProblem {
  const [first] = wanted;
  if (first === undefined) return { code: 'quantity.unit-missing' };
  const example = readNumber(dimensionTable[first].examples[0]);
  const unit = example.kind === 'number' ? example.rest.trim() : '';
  // `8 ft 6 in` is the first example of a length; its unit is not one word.
  const word = /\d/.test(unit) && first === 'length' ? 'ft' : unit;
  return { code: 'quantity.unit-missing', suggestion: `${number} ${word}` };
}

/** `cfm 640`, `~640 cfm`, `about 640 cfm`: a number is there, but something stands before it. */
function numberMissing(plain: string, wanted: readonly Dimension[]): UnitProblem {
  const start = plain.search(/[+-]?\.?\d/);
  if (start <= 0 || /[a-z]$/i.test(plain.slice(0, start))) return { code: 'quantity.no-number' };
  const number = readNumber(plain.slice(start));
  if (number.kind !== 'number') return { code: 'quantity.malformed' };
  const spelling = number.rest.trim() === '' ? plain.slice(0, start).trim() : number.rest.trim();
  const known = wanted.some((dimension) => findUnit(spelling, dimension) !== undefined);
  if (!known) return { code: 'quantity.malformed' };
  return { code: 'quantity.malformed', suggestion: `${number.text} ${spelling}` };
}

function shortened(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 59)}…`;
}

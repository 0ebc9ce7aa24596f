import type { Dimension } from '../dimension.js';
import type { QuantityProblem } from '../quantity-problem.js';
import { nearMiss } from './near-miss.js';
import { findUnit, findUnits, spellingKeys, unitKey, unitsWithin } from './unit-index.js';

/** A problem without what every problem of the same text shares. */
export type UnitProblem = Omit<QuantityProblem, 'found' | 'accepted'>;

/** What follows a number, and what was wanted there. */
export interface UnfitUnit {
  /** The number as typed, for suggestions. */
  readonly number: string;
  readonly spelling: string;
  readonly wanted: readonly Dimension[];
}

/** Spellings that mean a thousand to some and a million to others, or depend on the country. */
const ambiguous = new Set(['mbtu/h', 'mbtuh', 'mbtu/hr', 'mbtu', 'ton', 'tons', 'therms/h']);

/** `cfm50`, `L/s@25`, `cfm at 50 Pa`: a flow at a test pressure, which is not a flow of a device. */
const withTestPressure = /^(?:cfm|l\/s|m3\/h|m3\/s|ach)(?:@|at)?\d+(?:pa)?$/;

/** Why what follows a number is not a unit that fits. */
export function unitProblem({ number, spelling, wanted }: UnfitUnit): UnitProblem {
  const key = unitKey(spelling).toLowerCase();
  if (withTestPressure.test(key)) return { code: 'quantity.test-pressure' };
  if (ambiguous.has(key)) return { code: 'quantity.unit-ambiguous' };
  if (looksLikeTwoNumbers(spelling)) {
    return { code: 'quantity.two-numbers', ...joined({ number, spelling, wanted }) };
  }

  const elsewhere = findUnits(spelling)[0];
  if (elsewhere) {
    const meant = longerUnit(spelling, wanted);
    return {
      code: 'quantity.wrong-dimension',
      measured: elsewhere.definition.dimension,
      ...(meant === undefined ? {} : { suggestion: `${number} ${meant}` }),
    };
  }
  const spellings = unitsWithin(wanted).flatMap((unit) =>
    spellingKeys(unit).map((text) => ({ text, symbol: unit.definition.symbol })),
  );
  const near = nearMiss(
    key,
    spellings.map(({ text }) => text),
  );
  const meant = spellings.find(({ text }) => text === near)?.symbol;
  return {
    code: 'quantity.unit-unknown',
    ...(meant === undefined ? {} : { suggestion: `${number} ${meant}` }),
  };
}

/** Whether a second number stands after the first: `-500 cfm`, `to 500 cfm`, `cfm at 50 Pa`. */
function looksLikeTwoNumbers(rest: string): boolean {
  return /(?:^x?|[\s\-~±+*@,;:(]|\.\.)\.?\d/.test(rest.replace(/^\/ ?/, ''));
}

/** `0.25 in` for a pressure was probably `in. w.c.`, `20 L` for a flow `L/s`, `3 kW` for an energy `kWh`. */
function longerUnit(spelling: string, wanted: readonly Dimension[]): string | undefined {
  const key = unitKey(spelling).toLowerCase();
  const matches = unitsWithin(wanted)
    .map((unit) => unit.definition.symbol)
    .filter((symbol) => {
      const candidate = unitKey(symbol).toLowerCase();
      return candidate.startsWith(key) || (candidate.length > 1 && key.startsWith(candidate));
    });
  return matches[0];
}

/** `1 200 cfm`: a plain space between groups of three digits may have been meant to group them. */
function joined({ number, spelling, wanted }: UnfitUnit): { readonly suggestion?: string } {
  const group = /^(\d{3}) ?(\D.*)$/.exec(spelling);
  if (!group || !/^[+-]?[1-9]\d{0,2}$/.test(number)) return {};
  const [, digits = '', unit = ''] = group;
  const known = wanted.some((dimension) => findUnit(unit, dimension) !== undefined);
  return known ? { suggestion: `${number}${digits} ${unit}` } : {};
}

import type { Dimension } from '@evendraft/units';
import type { ArithmeticLine } from '../rule-finding.js';

type Amount = Exclude<ArithmeticLine['value'], string>;

const of =
  (dimension: Dimension) =>
  (si: number): Amount => ({ si, dimension });

/** A number in SI with what it measures, for a line of arithmetic. */
export const amount = {
  flow: of('volumeFlow'),
  area: of('area'),
  volume: of('volume'),
  length: of('length'),
  power: of('power'),
  pressure: of('pressure'),
  speed: of('speed'),
  temperature: of('temperature'),
  time: of('time'),
  force: of('force'),
  airChange: of('airChangeRate'),
  flowPerArea: of('flowPerArea'),
  ratio: of('ratio'),
  concentration: of('concentration'),
} as const;

/**
 * One line of a rule's arithmetic.
 *
 * @param label - what the value is
 * @param expression - how it comes about, in words
 * @param value - a number with its dimension, or words
 * @returns the line
 */
export function line(
  label: string,
  expression: string,
  value: ArithmeticLine['value'],
): ArithmeticLine {
  return { label, expression, value };
}

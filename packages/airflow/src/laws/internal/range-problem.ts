import type { LawProblem } from '../flow-law.js';

interface Range {
  readonly field: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
}

/** A problem unless the value is a finite number within its range. */
export function rangeProblems({ field, value, least, most, unit }: Range): LawProblem[] {
  if (typeof value === 'number' && value >= least && value <= most) return [];
  return [
    {
      code: 'LawParameterOutOfRange',
      severity: 'error',
      field,
      found: typeof value === 'number' ? value : String(value),
      allowed: `${least} to ${most} ${unit}`,
    },
  ];
}

/** Problems of a flow coefficient and its exponent. */
export function powerProblems(
  law: { readonly coefficientM3PerSPaN: number; readonly exponent: number },
  prefix = '',
): LawProblem[] {
  const coefficient = rangeProblems({
    field: `${prefix}coefficientM3PerSPaN`,
    value: law.coefficientM3PerSPaN,
    least: 1e-12,
    most: 1e4,
    unit: 'm3/(s Pa^n)',
  });
  const exponent = rangeProblems({
    field: `${prefix}exponent`,
    value: law.exponent,
    least: 0.5,
    most: 1,
    unit: '(-)',
  });
  return exponent.length === 0 ? coefficient : [...coefficient, ...exponent];
}

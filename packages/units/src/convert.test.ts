import { describe, expect, it } from 'vitest';

import { convert } from './convert.js';
import { UnitsError } from './units-error.js';

describe('convert', () => {
  it('is exact where doubles are not', () => {
    expect(convert('0.25', 'in. w.c.', 'Pa')).toEqual({
      exact: '24908891/400000',
      value: 62.2722275,
    });
    expect(convert('0.1', 'ft', 'in').exact).toBe('6/5');
    expect(convert('1/3', 'yd', 'ft').exact).toBe('1');
  });

  it.each([
    ['-40', 'F', 'C', '-40'],
    ['32', 'F', 'C', '0'],
    ['212', '°F', '°C', '100'],
    ['0', 'K', 'C', '-5463/20'],
    ['98.6', 'F', 'C', '37'],
  ])('converts %s %s to %s by scale and offset: %s', (value, from, to, expected) => {
    expect(convert(value, from, to).exact).toBe(expected);
  });

  it('accepts any spelling of a unit', () => {
    expect(convert('1', 'sq. ft.', 'in²').exact).toBe('144');
  });

  it.each([
    ['1', 'furlong', 'm', 'units.unknown-unit'],
    ['1', 'm', 'furlong', 'units.unknown-unit'],
    ['1', 'm', 'Pa', 'units.different-dimensions'],
    ['one', 'm', 'ft', 'units.not-a-number'],
    ['1 m', 'm', 'ft', 'units.not-a-number'],
    ['1e999', 'm', 'ft', 'units.not-a-number'],
    ['1'.repeat(10_000), 'm', 'ft', 'units.not-a-number'],
  ])('throws on %.10s from %s to %s: %s', (value, from, to, code) => {
    const attempt = (): unknown => convert(value, from, to);
    expect(attempt).toThrow(UnitsError);
    expect(attempt).toThrow(expect.objectContaining({ code }));
  });
});

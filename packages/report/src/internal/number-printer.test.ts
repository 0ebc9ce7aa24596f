import { describe, expect, it } from 'vitest';
import { numberPrinter } from './number-printer.js';

const us = numberPrinter('us');
const si = numberPrinter('si');

describe('numberPrinter', () => {
  it('prints pressures in pascals with one decimal in both systems', () => {
    expect(us.signedPressure(-12.34)).toBe('-12.3');
    expect(si.signedPressure(-12.34)).toBe('-12.3');
    expect(us.pressureSize(-2)).toBe('2.0 Pa');
  });

  it('never prints a negative zero', () => {
    for (const printer of [us, si]) {
      expect(printer.signedPressure(-0.04)).toBe('0.0');
      expect(printer.signedPressure(-0)).toBe('0.0');
      expect(printer.flow(-1e-6)).toMatch(/^0 /u);
      expect(printer.value(-0.0001, 'ratio')).toBe('0');
    }
  });

  it('says of a size that is not zero but rounds to it that it is less than a tenth', () => {
    expect(us.pressureSize(-0.04)).toBe('less than 0.1 Pa');
    expect(us.pressureSize(0)).toBe('0.0 Pa');
    expect(us.pressureSize(0.06)).toBe('0.1 Pa');
  });

  it('prints whole flows in cfm or litres a second', () => {
    // 1 cfm is 0.4719474432 L/s exactly.
    expect(us.flow(0.4719474432)).toBe('1000 cfm');
    expect(si.flow(0.4719474432)).toBe('472 L/s');
  });

  it('prints given and assumed values without decimals that say nothing', () => {
    expect(us.value(50, 'pressure')).toBe('50 Pa');
    expect(us.value(-15, 'temperature')).toBe('5 °F');
    expect(si.value(-12.7, 'temperature')).toBe('-12.7 °C');
    expect(si.value(0.65, 'ratio')).toBe('0.65');
    expect(si.value(1, 'ratio')).toBe('1');
    expect(us.value(6.7056, 'speed')).toBe('15 mph');
    expect(si.value(270, 'angle')).toBe('270°');
    expect(si.value(520, 'volume')).toBe('520 m³');
  });

  it('uses the small unit for small lengths and areas', () => {
    expect(us.value(0.0889, 'length')).toBe('3.5 in');
    expect(us.value(2.4384, 'length')).toBe('8 ft');
    expect(si.value(0.0125, 'area')).toBe('125 cm²');
    expect(si.value(0, 'area')).toBe('0 m²');
  });
});

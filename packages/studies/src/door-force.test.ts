import { describe, expect, it } from 'vitest';
import { doorForce } from './door-force.js';

describe('the force on a door', () => {
  it('is that of the smoke-control formula in both unit systems', () => {
    // F = Fdc + 5.2 W A dP/(2 (W − d)) in lbf, ft, in. w.c.: 3 ft by 7 ft, knob 0.25 ft from the edge, 0.1 in. w.c.,
    // closer 9 lbf: 9 + 5.2 · 3 · 21 · 0.1/(2 · 2.75) = 14.96 lbf. Formula from memory, arithmetic by hand.
    const force = doorForce(24.908891, {
      widthM: 0.9144,
      heightM: 2.1336,
      handleToEdgeM: 0.0762,
      closerN: 9 * 4.4482216,
    });
    // The factor 5.2 has two digits.
    expect(Math.abs(force / 4.4482216 / 14.96 - 1)).toBeLessThan(0.002);
  });

  it('does not ask for the sign of the pressure, and refuses a handle at the hinges', () => {
    expect(doorForce(-20)).toBe(doorForce(20));
    expect(() =>
      doorForce(20, { widthM: 0.8, heightM: 2, handleToEdgeM: 0.8, closerN: 0 }),
    ).toThrow('handleToEdgeM');
  });
});

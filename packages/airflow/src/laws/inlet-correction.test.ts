import { describe, expect, it } from 'vitest';
import { airViscosity } from '../air/air-viscosity.js';
import { flowAt } from './flow-laws.js';

const cold = { temperatureC: -10, densityKgPerM3: 1.341369 };
const warm = { temperatureC: 22, densityKgPerM3: 1.1959 };

describe('the air that enters sets the mass flow', () => {
  it('of a power law: rho C (rho0/rho)^(1−n) (mu0/mu)^(2n−1) dP^n', () => {
    const [c, n, x] = [0.02, 0.65, 7];
    const expected = (air: typeof cold): number =>
      air.densityKgPerM3 *
      c *
      (1.2041 / air.densityKgPerM3) ** (1 - n) *
      (airViscosity(20) / airViscosity(air.temperatureC)) ** (2 * n - 1) *
      x ** n;
    const law = { kind: 'powerLaw', coefficientM3PerSPaN: c, exponent: n } as const;
    const air = { from: cold, to: warm };
    expect(flowAt(law, x, air).massFlowKgPerS).toBeCloseTo(expected(cold), 14);
    expect(-flowAt(law, -x, air).massFlowKgPerS).toBeCloseTo(expected(warm), 14);
  });

  it('of a laminar and of a turbulent quadratic law as of power laws of exponent 1 and 0.5', () => {
    const air = { from: cold, to: warm };
    const same = (exponent: number, linearPaSPerM3: number, quadraticPaS2PerM6: number): void => {
      const power = { kind: 'powerLaw', coefficientM3PerSPaN: 0.01, exponent } as const;
      const quadratic = { kind: 'quadratic', linearPaSPerM3, quadraticPaS2PerM6 } as const;
      for (const x of [-20, -0.5, 3, 50]) {
        const flow = flowAt(power, x, air).massFlowKgPerS;
        expect(flowAt(quadratic, x, air).massFlowKgPerS / flow).toBeCloseTo(1, 12);
      }
    };
    same(1, 100, 0);
    same(0.5, 0, 1e4);
  });

  it('of a fixed volume flow, at its inlet either way', () => {
    const air = { from: cold, to: warm };
    const law = (volumeFlowM3PerS: number) => ({ kind: 'fixedFlow', volumeFlowM3PerS }) as const;
    expect(flowAt(law(0.1), 0, air).massFlowKgPerS).toBeCloseTo(0.1341369, 14);
    expect(flowAt(law(-0.1), 0, air).massFlowKgPerS).toBeCloseTo(-0.11959, 14);
  });
});

import { flowAt } from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';
import { ductRunLaw } from './duct-run.js';

/** Cubic metres a second in a cubic foot a minute. */
const cfm = 0.028316846592 / 60;

/** Pressure at which 100 ft of smooth round duct carries a flow [Pa]. */
function frictionPa(diameterIn: number, flowCfm: number): number {
  // A hood that regains the exit loss leaves the friction alone.
  const straight = { lengthM: 30.48, elbows: 0, intakeLoss: -1 };
  const law = ductRunLaw(straight, diameterIn * 0.0254);
  let [low, high] = [0, 1000];
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (flowAt(law, middle).massFlowKgPerS / 1.2041 < flowCfm * cfm) low = middle;
    else high = middle;
  }
  return high;
}

describe('the run of a make-up duct', () => {
  // Largest flow of each row of the passive openings, by column A to D [cfm].
  // Source: Minnesota Rules 1346.0501, Table 501.4.2, read from a scanned form.
  it.each([
    [4, [66, 43, 28, 17]],
    [6, [163, 100, 69, 42]],
    [8, [317, 195, 135, 83]],
    [11, [679, 419, 290, 179]],
  ])(
    'gives the columns of a state code for %i in. the same ratios as its allowed suctions',
    (inches, flows) => {
      // The code does not say what pressures it assumes. Its factors for the house's leaks are 0.15, 0.09, 0.06 and
      // 0.03 cfm/ft2 in the same columns, which at n = 0.65 means suctions of 11.9 : 5.4 : 2.9 : 1. The basis is
      // inferred and the flows are rounded to sizes, so a fifth is all that can be asked.
      const pressures = flows.map((flow) => frictionPa(inches, flow));
      [0.15, 0.09, 0.06].forEach((factor, column) => {
        const suctions = (factor / 0.03) ** (1 / 0.65);
        const ratio = pressures[column]! / pressures[3]!;
        expect(Math.abs(ratio / suctions - 1)).toBeLessThan(0.2);
      });
    },
  );

  it('loses in an elbow and a hood what their coefficients say', () => {
    const law = ductRunLaw({ lengthM: 1e-6, elbows: 2, intakeLoss: 3 }, 0.2);
    const velocity = flowAt(law, 10).massFlowKgPerS / 1.2041 / (Math.PI * 0.01);
    // K = 3 + 2 · 0.22 + 1; a micrometre of duct adds nothing.
    expect((velocity ** 2 * 1.2041 * 4.44) / 2).toBeCloseTo(10, 4);
  });
});

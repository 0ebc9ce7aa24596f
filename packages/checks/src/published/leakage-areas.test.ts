import { coefficientFromFlow, leakageAreaFromCoefficient } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const leak = z.strictObject({
  volumeFlowM3PerS: z.number(),
  pressurePa: z.number(),
  exponent: z.number(),
  basis: z.strictObject({ referencePressurePa: z.number(), dischargeCoefficient: z.number() }),
});
const input = z.strictObject({ leaks: z.record(z.string(), leak) });

for (const { name, input: given, expected } of publishedCases('leakage-areas', input)) {
  test(`leakage areas: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.leaks).map(([id, { basis, ...known }]) => [
        id,
        {
          areaM2: leakageAreaFromCoefficient({
            coefficientM3PerSPaN: coefficientFromFlow(known),
            exponent: known.exponent,
            ...basis,
          }),
        },
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

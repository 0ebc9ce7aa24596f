import { flowAt, referenceAir } from '@evendraft/airflow';
import { convert } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  inlets: z.record(
    z.string(),
    z.strictObject({
      areaIn2: z.number(),
      dischargeCoefficient: z.number(),
      pressurePa: z.number(),
      /** Flow that the source states for that area and pressure. */
      statedCfm: z.number(),
    }),
  ),
});

for (const { name, input: given, expected } of publishedCases('inlets', input)) {
  test(`inlets: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.inlets).map(([id, inlet]) => {
        const { areaIn2, dischargeCoefficient, pressurePa, statedCfm } = inlet;
        const areaM2 = convert(String(areaIn2), 'in2', 'm2').value;
        const flowCfm = (coefficient: number): number => {
          const law = { kind: 'orifice', areaM2, dischargeCoefficient: coefficient } as const;
          const flowM3PerS = flowAt(law, pressurePa).massFlowKgPerS / referenceAir.densityKgPerM3;
          return convert(String(flowM3PerS), 'm3/s', 'cfm').value;
        };
        return [
          id,
          { flowCfm: flowCfm(dischargeCoefficient), impliedCoefficient: statedCfm / flowCfm(1) },
        ];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

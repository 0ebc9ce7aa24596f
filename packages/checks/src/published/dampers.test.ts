import { closedDamperLaw, flowAt, referenceAir, type DamperLeakageClass } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  dampers: z.record(
    z.string(),
    z.strictObject({ areaM2: z.number(), leakage: z.string(), pressurePa: z.number() }),
  ),
});

for (const { name, input: given, expected } of publishedCases('dampers', input)) {
  test(`dampers: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.dampers).map(([id, { areaM2, leakage, pressurePa }]) => {
        const law = closedDamperLaw({ areaM2, leakage: leakage as DamperLeakageClass });
        const { massFlowKgPerS } = flowAt(law, pressurePa);
        return [id, { leakageM3PerS: massFlowKgPerS / referenceAir.densityKgPerM3 }];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

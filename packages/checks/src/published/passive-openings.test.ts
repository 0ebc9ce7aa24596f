import { ductLoss, referenceAir, roundDuctSize, type DuctDescription } from '@evendraft/airflow';
import { convert } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  rows: z.record(
    z.string(),
    z.strictObject({
      diameterIn: z.number(),
      largestCfm: z.record(z.enum(['A', 'B', 'C', 'D']), z.number()),
    }),
  ),
  lengthFt: z.number(),
  roughnessM: z.number(),
});

for (const { name, input: given, expected } of publishedCases('passive-openings', input)) {
  test(`passive openings: ${name}`, () => {
    const lengthM = convert(String(given.lengthFt), 'ft', 'm').value;
    const computed = Object.fromEntries(
      Object.entries(given.rows).map(([id, { diameterIn, largestCfm }]) => {
        const { areaM2, hydraulicDiameterM } = roundDuctSize(
          convert(String(diameterIn), 'in', 'm').value,
        );
        const { roughnessM } = given;
        const section = { lengthM, areaM2, hydraulicDiameterM, roughnessM };
        const duct: DuctDescription = {
          kind: 'duct',
          sections: [{ ...section, frictionMultiplier: 1, lossCoefficient: 0 }],
        };
        const frictionPa = (cfm: number): number =>
          ductLoss(duct, {
            volumeFlowM3PerS: convert(String(cfm), 'cfm', 'm3/s').value,
            air: referenceAir,
          });
        const columns = Object.entries(largestCfm).map(([column, cfm]) => [
          column,
          { frictionPa: frictionPa(cfm), byColumnD: frictionPa(cfm) / frictionPa(largestCfm.D) },
        ]);
        return [id, Object.fromEntries(columns)];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

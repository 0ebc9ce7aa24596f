import { superposedInfiltration } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const house = z.strictObject({
  effectiveLeakageAreaM2: z.number(),
  volumeM3: z.number(),
  temperatureDifferenceK: z.number(),
  windSpeedMPerS: z.number(),
  storeys: z.literal([1, 2, 3]),
  shelterClass: z.literal([1, 2, 3, 4, 5]),
});
const input = z.strictObject({ houses: z.record(z.string(), house) });

for (const { name, input: given, expected } of publishedCases('infiltration', input)) {
  test(`infiltration: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.houses).map(([id, { volumeM3, ...weathered }]) => {
        const volumeFlowM3PerS = superposedInfiltration(weathered);
        return [id, { volumeFlowM3PerS, airChangesPerHour: (3600 * volumeFlowM3PerS) / volumeM3 }];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

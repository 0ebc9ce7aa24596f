import { airAt, standardPressure } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const conditions = { temperatureC: z.number(), relativeHumidity: z.number().exactOptional() };
const place = z.union([
  z.strictObject({ ...conditions, altitudeM: z.number() }),
  z.strictObject({ ...conditions, pressurePa: z.number() }),
]);
const input = z.strictObject({ airs: z.record(z.string(), place) });

for (const { name, input: given, expected } of publishedCases('air', input)) {
  test(`air: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.airs).map(([id, at]) => [
        id,
        {
          ...airAt(at),
          pressurePa: 'pressurePa' in at ? at.pressurePa : standardPressure(at.altitudeM),
        },
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

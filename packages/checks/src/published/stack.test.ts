import { airAt, stackPressure } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const place = z.strictObject({ temperatureC: z.number(), pressurePa: z.number() });
const input = z.strictObject({
  columns: z.record(
    z.string(),
    z.strictObject({ inside: place, outdoors: place, heightM: z.number() }),
  ),
});

for (const { name, input: given, expected } of publishedCases('stack', input)) {
  test(`stack: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.columns).map(([id, { inside, outdoors, heightM }]) => [
        id,
        {
          pressurePa: stackPressure({
            zoneDensityKgPerM3: airAt(inside).densityKgPerM3,
            outdoorDensityKgPerM3: airAt(outdoors).densityKgPerM3,
            heightM,
          }),
        },
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

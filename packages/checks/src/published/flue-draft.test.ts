import { flueDraft } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  columns: z.record(
    z.string(),
    z.strictObject({
      heightM: z.number(),
      gasTemperatureC: z.number(),
      outdoorTemperatureC: z.number(),
      pressurePa: z.number(),
    }),
  ),
});

for (const { name, input: given, expected } of publishedCases('flue-draft', input)) {
  test(`flue draft: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.columns).map(([id, column]) => [id, { draftPa: flueDraft(column) }]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

import { localWindSpeed } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const terrain = z.enum(['city centre', 'suburban', 'open', 'flat']);
const input = z.strictObject({
  transfers: z.record(
    z.string(),
    z.strictObject({
      stationSpeedMPerS: z.number(),
      stationHeightM: z.number(),
      stationTerrain: terrain,
      heightM: z.number(),
      terrain,
    }),
  ),
});

for (const { name, input: given, expected } of publishedCases('wind-profile', input)) {
  test(`wind profile: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.transfers).map(([id, transfer]) => [
        id,
        { speedMPerS: localWindSpeed(transfer) },
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

import { flowAt } from '@evendraft/airflow';
import { parseHouse } from '@evendraft/house';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  fromPa: z.number(),
  toPa: z.number(),
  /** As a house file describes them, by name. */
  fans: z.record(z.string(), z.strictObject({ kind: z.string(), flow: z.string() })),
});

for (const { name, input: given, expected } of publishedCases('fan-flow-fall', input)) {
  test(`fall of fan flow: ${name}`, () => {
    const parsed = parseHouse({
      evendraft: 1,
      name: 'Test Row 5',
      floorArea: '2000 ft2',
      airtightness: '1000 cfm at 50 Pa',
      exhaust: given.fans,
    });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const computed = Object.fromEntries(
      parsed.house.devices.map(({ id, speeds }) => {
        const law = speeds.at(-1)?.law;
        if (law === undefined) return [id, undefined];
        const [before, after] = [given.fromPa, given.toPa].map(
          (pressurePa) => flowAt(law, -pressurePa).massFlowKgPerS,
        );
        return [id, { fall: 1 - after! / before! }];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

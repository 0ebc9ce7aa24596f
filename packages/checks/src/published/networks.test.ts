import { windPressure, type FlowLawDescription } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const air = z.strictObject({ temperatureC: z.number(), densityKgPerM3: z.number() });
const node = { id: z.string(), heightM: z.number(), air };
const wind = z.strictObject({
  coefficient: z.number(),
  speedMPerS: z.number(),
  densityKgPerM3: z.number(),
});
const input = z.strictObject({
  outdoorAir: air,
  zones: z.array(z.strictObject(node)),
  // A boundary stands in the wind or has a pressure of its own.
  boundaries: z.array(
    z.union([
      z.strictObject({ ...node, wind }),
      z.strictObject({ ...node, pressurePa: z.number() }),
    ]),
  ),
  links: z.array(
    z.strictObject({
      id: z.string(),
      from: z.string(),
      to: z.string(),
      heightM: z.number(),
      // The network checks its laws itself.
      law: z.custom<FlowLawDescription>(),
    }),
  ),
});

for (const { name, input: network, expected } of publishedCases('networks', input)) {
  test(`network: ${name}`, () => {
    const computed = solvedNetwork({
      outdoorAir: network.outdoorAir,
      zones: network.zones.map((zone) => ({ ...zone, origin: zone.id })),
      boundaries: network.boundaries.map((boundary) => ({
        id: boundary.id,
        origin: boundary.id,
        heightM: boundary.heightM,
        air: boundary.air,
        pressurePa: 'wind' in boundary ? windPressure(boundary.wind) : boundary.pressurePa,
      })),
      links: network.links.map(({ heightM, ...link }) => ({
        ...link,
        origin: link.id,
        fromHeightM: heightM,
        toHeightM: heightM,
      })),
    });
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

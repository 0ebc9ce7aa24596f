import { gravity, infiltrationWithFan, type FlowLawDescription } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const input = z.strictObject({
  /** Exhaust by the flow that stack alone moves. */
  fanShares: z.record(z.string(), z.number()),
});

for (const { name, input: given, expected } of publishedCases('fan-and-stack', input)) {
  test(`fan and stack: ${name}`, () => {
    const alone = inflow(0);
    const computed = Object.fromEntries(
      Object.entries(given.fanShares).map(([id, share]) => {
        const flows = { infiltrationM3PerS: alone, unbalancedFlowM3PerS: share * alone };
        return [
          id,
          {
            balance: inflow(share * alone) / alone,
            'half fan': infiltrationWithFan({ ...flows, rule: 'half fan' }) / alone,
            quadrature: infiltrationWithFan({ ...flows, rule: 'quadrature' }) / alone,
          },
        ];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** Outdoor air into a house of two equal sharp openings 1000 m apart, its air 1e-5 lighter than outdoors. */
function inflow(exhaustM3PerS: number): number {
  const outdoors = { temperatureC: 20, densityKgPerM3: 1.2041 };
  const indoors = { temperatureC: 20, densityKgPerM3: 1.2041 * (1 - 1e-5) };
  const opening = (id: string, heightM: number, law: FlowLawDescription) => ({
    id,
    origin: id,
    from: 'outdoors',
    to: 'house',
    fromHeightM: heightM,
    toHeightM: heightM,
    law,
  });
  const sharp = { kind: 'orifice', areaM2: 0.02, dischargeCoefficient: 0.6 } as const;
  const { links } = solvedNetwork({
    outdoorAir: outdoors,
    zones: [{ id: 'house', origin: 'house', heightM: 0, air: indoors }],
    boundaries: [{ id: 'outdoors', origin: 'outdoors', heightM: 0, pressurePa: 0, air: outdoors }],
    links: [
      opening('low', 0, sharp),
      opening('high', 1000, sharp),
      opening('fan', 500, { kind: 'fixedFlow', volumeFlowM3PerS: -exhaustM3PerS }),
    ],
  });
  // The stack is 1000 m of 1e-5 of the density, some 0.118 Pa, so that one density serves all flows.
  expect(gravity * 1000 * 1.2041e-5).toBeLessThan(0.12);
  return ['low', 'high'].reduce(
    (sum, id) => sum + Math.max(0, links[id]?.volumeFlowM3PerS ?? NaN),
    0,
  );
}

import {
  ductLoss,
  fanBySimilarity,
  fanPowerBySimilarity,
  operatingPoints,
  roundDuctSize,
  type DuctDescription,
  type FanCurveDescription,
} from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const point = z.strictObject({ pressureRisePa: z.number(), volumeFlowM3PerS: z.number() });
const systemSchema = z.strictObject({
  air: z.strictObject({ temperatureC: z.number(), densityKgPerM3: z.number() }),
  duct: z.strictObject({
    diameterM: z.number(),
    lengthM: z.number(),
    roughnessM: z.number(),
    lossCoefficient: z.number(),
  }),
  points: z.array(point),
  interpolation: z.enum(['monotoneCubic', 'linear']),
  /** Flow at which the system's loss alone is asked. */
  systemAtM3PerS: z.number(),
});
const changeSchema = z.strictObject({
  point,
  powerW: z.number(),
  speedRatio: z.number(),
  densityRatio: z.number(),
});
const input = z.strictObject({
  systems: z.record(z.string(), systemSchema).exactOptional(),
  changes: z.record(z.string(), changeSchema).exactOptional(),
});

for (const { name, input: given, expected } of publishedCases('fans', input)) {
  test(`fans: ${name}`, () => {
    const computed = {
      systems: Object.fromEntries(
        Object.entries(given.systems ?? {}).map(([id, system]) => [id, solvedSystem(system)]),
      ),
      changes: Object.fromEntries(
        Object.entries(given.changes ?? {}).map(([id, { point: known, powerW, ...change }]) => {
          const [changed] = fanBySimilarity([known], change);
          return [id, { ...changed!, powerW: fanPowerBySimilarity(powerW, change) }];
        }),
      ),
    };
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** A fan on its duct, once by rise against loss and once as a network of our laws. */
function solvedSystem(given: z.infer<typeof systemSchema>) {
  const { air, points, interpolation } = given;
  const { areaM2, hydraulicDiameterM } = roundDuctSize(given.duct.diameterM);
  const { lengthM, roughnessM, lossCoefficient } = given.duct;
  const section = { lengthM, areaM2, hydraulicDiameterM, roughnessM, lossCoefficient };
  const duct: DuctDescription = { kind: 'duct', sections: [{ ...section, frictionMultiplier: 1 }] };
  const fan: FanCurveDescription = {
    kind: 'fanCurve',
    points,
    interpolation,
    beyondShutOff: 'blocked',
    risingPart: 'envelope',
  };
  const systemLossPa = (volumeFlowM3PerS: number): number =>
    ductLoss(duct, { volumeFlowM3PerS, air });
  const crossings = operatingPoints({ points, interpolation, systemLossPa });
  const place = { heightM: 0, air };
  const link = { fromHeightM: 0, toHeightM: 0 };
  const { links, zones } = solvedNetwork({
    outdoorAir: air,
    zones: [{ id: 'between', origin: 'between', ...place }],
    boundaries: [
      { id: 'kitchen', origin: 'kitchen', pressurePa: 0, ...place },
      { id: 'outdoors', origin: 'outdoors', pressurePa: 0, ...place },
    ],
    links: [
      { id: 'fan', origin: 'fan', from: 'kitchen', to: 'between', law: fan, ...link },
      { id: 'duct', origin: 'duct', from: 'between', to: 'outdoors', law: duct, ...link },
    ],
  });
  return {
    systemLossPa: systemLossPa(given.systemAtM3PerS),
    crossings: crossings.length,
    riseAgainstLoss: {
      volumeFlowM3PerS: crossings[0]?.volumeFlowM3PerS,
      pressureRisePa: crossings[0]?.pressureRisePa,
    },
    network: {
      volumeFlowM3PerS: links['fan']?.volumeFlowM3PerS,
      pressureRisePa: zones['between']?.pressurePa,
    },
  };
}

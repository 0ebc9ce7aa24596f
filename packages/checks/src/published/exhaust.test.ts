import {
  coefficientFromFlow,
  referenceAir,
  typicalFanCurve,
  type FlowLawDescription,
} from '@evendraft/airflow';
import { convert } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const house = z.strictObject({
  flowAt50PaCfm: z.number(),
  exponent: z.number(),
  // One of the two: a constant flow, or a fan of which the rated flow is known.
  exhaustCfm: z.number().exactOptional(),
  fan: z
    .strictObject({
      ratedCfm: z.number(),
      speedCfm: z.number(),
      ratingPressurePa: z.number(),
      shutOffPressurePa: z.number(),
    })
    .exactOptional(),
  // A sharp-edged round opening beside the leaks.
  opening: z
    .strictObject({ diameterIn: z.number(), dischargeCoefficient: z.number() })
    .exactOptional(),
});
const input = z.strictObject({ runs: z.record(z.string(), house) });

for (const { name, input: given, expected } of publishedCases('exhaust', input)) {
  test(`exhaust: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.runs).map(([id, run]) => [id, solvedHouse(run)]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** A house of one zone, with outdoors around it. */
function solvedHouse(run: z.infer<typeof house>) {
  const { temperatureC, densityKgPerM3 } = referenceAir;
  const air = { temperatureC, densityKgPerM3 };
  const { zones } = solvedNetwork({
    outdoorAir: air,
    zones: [{ id: 'house', origin: 'house', heightM: 0, air }],
    boundaries: [{ id: 'outdoors', origin: 'outdoors', heightM: 0, pressurePa: 0, air }],
    links: lawsOf(run).map((law) => ({
      id: law.kind,
      origin: law.kind,
      from: 'house',
      to: 'outdoors',
      fromHeightM: 0,
      toHeightM: 0,
      law,
    })),
  });
  return zones['house'];
}

/** What joins the house to outdoors; positive is out of the house. */
function lawsOf({ flowAt50PaCfm, exponent, exhaustCfm, fan, opening }: z.infer<typeof house>) {
  const flowAt50Pa = flowM3PerS(flowAt50PaCfm);
  const laws: FlowLawDescription[] = [
    {
      kind: 'powerLaw',
      coefficientM3PerSPaN: coefficientFromFlow({
        volumeFlowM3PerS: flowAt50Pa,
        pressurePa: 50,
        exponent,
      }),
      exponent,
    },
  ];
  if (exhaustCfm !== undefined) {
    laws.push({ kind: 'fixedFlow', volumeFlowM3PerS: flowM3PerS(exhaustCfm) });
  }
  if (fan !== undefined) {
    const { ratedCfm, speedCfm, ...pressures } = fan;
    const points = typicalFanCurve({
      ratedFlowM3PerS: flowM3PerS(ratedCfm),
      speedFlowM3PerS: flowM3PerS(speedCfm),
      ...pressures,
    });
    laws.push({ kind: 'fanCurve', points, beyondShutOff: 'blocked' });
  }
  if (opening !== undefined) {
    const { diameterIn, dischargeCoefficient } = opening;
    const diameterM = convert(String(diameterIn), 'in', 'm').value;
    laws.push({ kind: 'orifice', areaM2: (Math.PI / 4) * diameterM ** 2, dischargeCoefficient });
  }
  return laws;
}

const flowM3PerS = (cfm: number) => convert(String(cfm), 'cfm', 'm3/s').value;

import {
  airAsFlueGas,
  flueConstructions,
  flueInSteadyState,
  flueLosses,
  type FluePiece,
} from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({
  /** By Darcy and Weisbach, stated instead of a roughness. */
  frictionFactor: z.number(),
  heightM: z.number(),
  diameterM: z.number(),
  gasTemperatureC: z.number(),
  outdoorTemperatureC: z.number(),
  pressurePa: z.number(),
  flowsKgPerS: z.record(z.string(), z.number()),
});

for (const { name, input: given, expected } of publishedCases('flue-friction', input)) {
  test(`flue friction: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.flowsKgPerS).map(([id, flow]) => [
        id,
        { availableDraftPa: availableDraft(given, flow) },
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** Draft of a stack whose gas does not cool, less the losses of its flow. */
function availableDraft(stack: z.infer<typeof input>, massFlowKgPerS: number): number {
  const { heightM, diameterM, gasTemperatureC, outdoorTemperatureC, pressurePa } = stack;
  const piece: FluePiece = {
    lengthM: heightM,
    riseM: heightM,
    hydraulicDiameterM: diameterM,
    areaM2: (Math.PI / 4) * diameterM ** 2,
    construction: flueConstructions['masonry, unlined'],
    surroundings: 'outdoors',
    ambientTemperatureC: gasTemperatureC,
    lossCoefficient: (stack.frictionFactor * heightM) / diameterM,
  };
  const state = flueInSteadyState({
    pieces: [piece],
    massFlowKgPerS,
    gas: airAsFlueGas,
    inletTemperatureC: gasTemperatureC,
    outdoorTemperatureC,
    pressurePa,
  });
  // The friction is stated and stands as a loss coefficient: the length would add that of the wall.
  const [lossPa = NaN] = flueLosses([{ ...piece, lengthM: 0 }], state, massFlowKgPerS);
  return state.draftPa - lossPa;
}

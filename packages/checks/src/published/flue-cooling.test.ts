import { flueCooling, flueDraft } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const vent = z.strictObject({
  /** Length and height. */
  lengthM: z.number(),
  diameterM: z.number(),
  heatTransferWPerM2K: z.number(),
  massFlowKgPerS: z.number(),
  specificHeatJPerKgK: z.number(),
  inletTemperatureC: z.number(),
  /** Around the vent and outdoors. */
  ambientTemperatureC: z.number(),
  pressurePa: z.number(),
});
const input = z.strictObject({ vents: z.record(z.string(), vent) });

for (const { name, input: given, expected } of publishedCases('flue-cooling', input)) {
  test(`flue cooling: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.vents).map(([id, flue]) => {
        const cooled = flueCooling({
          inletTemperatureC: flue.inletTemperatureC,
          ambientTemperatureC: flue.ambientTemperatureC,
          conductanceWPerK: flue.heatTransferWPerM2K * Math.PI * flue.diameterM * flue.lengthM,
          heatCapacityFlowWPerK: flue.massFlowKgPerS * flue.specificHeatJPerKgK,
        });
        const draftPa = flueDraft({
          heightM: flue.lengthM,
          gasTemperatureC: cooled.meanTemperatureC,
          outdoorTemperatureC: flue.ambientTemperatureC,
          pressurePa: flue.pressurePa,
        });
        return [id, { ...cooled, draftPa }];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

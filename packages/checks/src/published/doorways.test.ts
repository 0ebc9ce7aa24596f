import { airAt, exchangeCoefficient } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const pair = z.strictObject({
  coolC: z.number(),
  warmC: z.number(),
  widthM: z.number(),
  heightM: z.number(),
  /** By the difference of temperature when absent. */
  dischargeCoefficient: z.number().exactOptional(),
});
const input = z.strictObject({ rooms: z.record(z.string(), pair) });

for (const { name, input: given, expected } of publishedCases('doorways', input)) {
  test(`doorways: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(given.rooms).map(([id, rooms]) => [id, exchange(rooms)]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** A cool room that has only a doorway, to a warm room of known pressure. */
function exchange({ coolC, warmC, widthM, heightM, dischargeCoefficient }: z.infer<typeof pair>) {
  const cool = airAt({ temperatureC: coolC, pressurePa: 101325 });
  const warm = airAt({ temperatureC: warmC, pressurePa: 101325 });
  const { zones, links } = solvedNetwork({
    outdoorAir: warm,
    zones: [{ id: 'cool', origin: 'cool', heightM: 0, air: cool }],
    boundaries: [{ id: 'warm', origin: 'warm', heightM: 0, pressurePa: 0, air: warm }],
    links: [
      {
        id: 'doorway',
        origin: 'doorway',
        from: 'cool',
        to: 'warm',
        fromHeightM: 0,
        toHeightM: 0,
        law: {
          kind: 'doorway',
          widthM,
          heightM,
          dischargeCoefficient: dischargeCoefficient ?? exchangeCoefficient(warmC - coolC),
        },
      },
    ],
  });
  const { forwardKgPerS, backwardKgPerS, pressureDifferencePa } = links['doorway']!;
  return {
    sillPa: pressureDifferencePa,
    neutralHeightM: zones['cool']?.neutralLevelM,
    coolStreamKgPerS: forwardKgPerS,
    warmStreamKgPerS: backwardKgPerS,
    exchangeM3PerS:
      (forwardKgPerS / cool.densityKgPerM3 + backwardKgPerS / warm.densityKgPerM3) / 2,
  };
}

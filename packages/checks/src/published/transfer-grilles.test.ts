import { referenceAir, type FlowLawDescription } from '@evendraft/airflow';
import { convert } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';
import { solvedNetwork } from './solved-network.js';

const room = z.strictObject({
  supplyCfm: z.number(),
  undercutIn2: z.number(),
  /** Free area; 0 is a room without a grille. */
  grilleIn2: z.number(),
});
const input = z.strictObject({
  dischargeCoefficient: z.number(),
  rooms: z.record(z.string(), room),
});

for (const { name, input: report, expected } of publishedCases('transfer-grilles', input)) {
  const { rooms, dischargeCoefficient } = report;
  test(`transfer grilles: ${name}`, () => {
    const computed = Object.fromEntries(
      Object.entries(rooms).map(([id, { supplyCfm, undercutIn2, grilleIn2 }]) => {
        const supplyM3PerS = convert(String(supplyCfm), 'cfm', 'm3/s').value;
        const openings = [undercutIn2, grilleIn2]
          .filter((areaIn2) => areaIn2 > 0)
          .map((areaIn2): FlowLawDescription => {
            const areaM2 = convert(String(areaIn2), 'in2', 'm2').value;
            return { kind: 'orifice', areaM2, dischargeCoefficient };
          });
        return [id, solvedRoom(supplyM3PerS, openings)];
      }),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

/** A closed room that gets a supply and gives it back to the hall through openings. */
function solvedRoom(volumeFlowM3PerS: number, openings: readonly FlowLawDescription[]) {
  const { temperatureC, densityKgPerM3 } = referenceAir;
  const air = { temperatureC, densityKgPerM3 };
  const laws: readonly FlowLawDescription[] = [
    { kind: 'fixedFlow', volumeFlowM3PerS: -volumeFlowM3PerS },
    ...openings,
  ];
  const { zones } = solvedNetwork({
    outdoorAir: air,
    zones: [{ id: 'room', origin: 'room', heightM: 0, air }],
    boundaries: [{ id: 'hall', origin: 'hall', heightM: 0, pressurePa: 0, air }],
    links: laws.map((law, index) => ({
      id: `link ${index}`,
      origin: `link ${index}`,
      from: 'room',
      to: 'hall',
      fromHeightM: 0,
      toHeightM: 0,
      law,
    })),
  });
  return zones['room'];
}

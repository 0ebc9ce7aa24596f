import { describe, expect, it } from 'vitest';
import { BatchShapeError } from './batch-shape-error.js';
import { buildNetwork } from './build-network.js';
import type { BuiltNetwork } from './built-network.js';
import { batchRow, batchStatuses, createBatchResult, solveBatch } from './solve-batch.js';
import { solveNetwork } from './solve-network.js';

const air = { temperatureC: 20, densityKgPerM3: 1.2 };
const solvedStatus = batchStatuses.indexOf('solved');

describe('a batch', () => {
  const network = twoRooms();
  const count = 600;
  const fractions = Array.from({ length: count }, (_, row) => row / count);
  const batch = {
    count,
    boundaryPressuresPa: Float64Array.from(fractions.flatMap((f) => [0, 20 * f - 10])),
    outdoorAir: {
      temperatureC: Float64Array.from(fractions, (f) => 30 - 50 * f),
      densityKgPerM3: Float64Array.from(fractions, (f) => 1.16 + 0.25 * f),
    },
    linkScale: Float64Array.from(fractions.flatMap((f, row) => [1, 1, row % 3 === 0 ? 0 : 1, f])),
    linkOffsetPa: Float64Array.from(fractions.flatMap((f) => [0, f, 0, -f])),
  };

  it('gives row by row what single solves give', () => {
    const result = solveBatch(network, batch, { flows: true });
    for (const row of [0, 1, 254, 255, 256, 257, 599]) {
      const single = solveNetwork(network, {
        boundaryPressuresPa: batch.boundaryPressuresPa.slice(2 * row, 2 * row + 2),
        outdoorAir: {
          temperatureC: batch.outdoorAir.temperatureC[row]!,
          densityKgPerM3: batch.outdoorAir.densityKgPerM3[row]!,
        },
        linkScale: batch.linkScale.slice(4 * row, 4 * row + 4),
        linkOffsetPa: batch.linkOffsetPa.slice(4 * row, 4 * row + 4),
      });
      if (single.status !== 'solved') throw new Error(single.hint);
      expect(result.status[row]).toBe(solvedStatus);
      single.pressuresPa.forEach((pressure, zone) => {
        // Both stop at 1e-9 of the flow through each zone, from different starts.
        expect(Math.abs(result.pressuresPa[2 * row + zone]! - pressure)).toBeLessThan(1e-6);
      });
      single.links.massFlowKgPerS.forEach((flow, link) => {
        expect(Math.abs(result.massFlowKgPerS[4 * row + link]! - flow)).toBeLessThan(1e-9);
      });
    }
  });

  it('is the same however it is cut, and in whatever order', () => {
    const whole = solveBatch(network, batch);
    const into = createBatchResult(network, count, false);
    solveBatch(network, batch, { into, rows: [500, 600] });
    solveBatch(network, batch, { into, rows: [0, 99] });
    solveBatch(network, batch, { into, rows: [99, 500] });
    expect(into).toEqual(whole);
  });

  it('reads a row as a single solve with its proof', () => {
    const result = solveBatch(network, batch);
    const row = batchRow(network, batch, { result, row: 300 });
    expect(row.status === 'solved' && row.proof.enclosed).toBe(true);
    if (row.status === 'solved') {
      expect(Math.abs(row.pressuresPa[0]! - result.pressuresPa[600]!)).toBeLessThan(1e-6);
    }
  });
});

it('fills a row that has no answer with NaN, gives it a status, and goes on', () => {
  const network = twoRooms();
  const batch = {
    count: 4,
    linkScale: Float64Array.from([1, 1, 1, 1, 0, 0, 1, 1, 1, NaN, 1, 1, 1, 1, 1, 1]),
  };
  const result = solveBatch(network, batch, { flows: true });
  expect([...result.status].map((status) => batchStatuses[status])).toEqual([
    'solved',
    'infeasible',
    'invalid-scenario',
    'solved',
  ]);
  expect([...result.pressuresPa.slice(2, 6)].every(Number.isNaN)).toBe(true);
  expect([...result.massFlowKgPerS.slice(4, 12)].every(Number.isNaN)).toBe(true);
  expect(result.pressuresPa[6]).toBeCloseTo(result.pressuresPa[0]!, 9);
  const read = batchRow(network, batch, { result, row: 1 });
  expect(read).toMatchObject({ status: 'infeasible', zones: ['a', 'b'] });
});

it('throws by name when an array has the wrong length', () => {
  const wrong = { count: 2, linkOffsetPa: new Float64Array(3) };
  expect(() => solveBatch(twoRooms(), wrong)).toThrow(BatchShapeError);
});

function twoRooms(): BuiltNetwork {
  const link = (id: string, from: string, to: string, coefficientM3PerSPaN: number) => ({
    id,
    origin: id,
    from,
    to,
    fromHeightM: 1,
    toHeightM: 1,
    law: { kind: 'powerLaw', coefficientM3PerSPaN, exponent: 0.65 } as const,
  });
  const result = buildNetwork({
    outdoorAir: air,
    zones: ['a', 'b'].map((id) => ({ id, origin: id, heightM: 0, air })),
    boundaries: ['out', 'wind'].map((id) => ({ id, origin: id, heightM: 0, pressurePa: 0, air })),
    links: [
      link('leak a', 'a', 'out', 0.01),
      link('leak b', 'wind', 'b', 0.02),
      link('door', 'a', 'b', 0.2),
      {
        ...link('fan', 'a', 'out', 1),
        law: { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 },
      },
    ],
  });
  if (result.status === 'rejected') throw new Error(JSON.stringify(result.issues));
  return result.network;
}

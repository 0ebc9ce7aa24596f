import { referenceAir } from '@evendraft/airflow';
import { buildNetwork, solveNetwork, type LinkDescription } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { roomProducts } from './room-products.js';

const at = { origin: 'test', heightM: 0, air: referenceAir };
const level = { origin: 'test', fromHeightM: 0, toHeightM: 0 };

/** Outdoor air through rooms in a row, 0.1 kg/s, and out at the end. */
function row(rooms: readonly string[]) {
  const links = [...rooms, 'outdoors'].map((to, i): LinkDescription => {
    const from = rooms[i - 1] ?? 'outdoors';
    const law =
      i === 0
        ? ({ kind: 'fixedFlow', massFlowKgPerS: 0.1 } as const)
        : ({ kind: 'powerLaw', coefficientM3PerSPaN: 0.1, exponent: 0.6 } as const);
    return { id: `${from} to ${to}`, from, to, ...level, law };
  });
  const built = buildNetwork({
    outdoorAir: referenceAir,
    zones: rooms.map((id) => ({ id, ...at })),
    boundaries: [{ id: 'outdoors', pressurePa: 0, ...at }],
    links,
  });
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
  const balance = solveNetwork(built.network);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  return { network: built.network, balance };
}

describe('a product in the air of rooms', () => {
  it('comes to source over flow in one room, as 1 − e^(−t/τ)', () => {
    const { steady, course } = roomProducts({
      ...row(['room']),
      airKg: [60],
      sources: [{ zone: 0, perS: 1e-6 }],
      course: { durationS: 3600, steps: 360 },
    });
    expect(steady[0]! / 1e-5).toBeCloseTo(1, 8);
    for (const { timeS, content } of course) {
      // A second-order method at a sixtieth of the time constant: 1e-5 of the end.
      expect(content[0]! / 1e-5).toBeCloseTo(1 - Math.exp((-timeS * 0.1) / 60), 4);
    }
  });

  it('halves the error by four when the step is halved', () => {
    const errorOf = (steps: number): number => {
      const { course } = roomProducts({
        ...row(['room']),
        airKg: [60],
        sources: [{ zone: 0, perS: 1e-6 }],
        course: { durationS: 600, steps },
      });
      return Math.abs(course.at(-1)!.content[0]! / 1e-5 - (1 - Math.exp(-1)));
    };
    expect(errorOf(10) / errorOf(20)).toBeGreaterThan(3.6);
    expect(errorOf(10) / errorOf(20)).toBeLessThan(4.4);
  });

  it('passes on to the rooms behind its source, not to those before', () => {
    const { steady } = roomProducts({
      ...row(['before', 'source', 'behind']),
      airKg: [60, 60, 60],
      sources: [{ zone: 1, perS: 1e-6 }],
    });
    expect(steady[0]).toBe(0);
    expect(steady[1]! / 1e-5).toBeCloseTo(1, 8);
    expect(steady[2]! / 1e-5).toBeCloseTo(1, 8);
  });

  it('fills a place without volume at once', () => {
    const { course } = roomProducts({
      ...row(['junction', 'room']),
      airKg: [0, 60],
      sources: [{ zone: 0, perS: 1e-6 }],
      course: { durationS: 60, steps: 6 },
    });
    expect(course[1]!.content[0]! / 1e-5).toBeCloseTo(1, 8);
    expect(course[1]!.content[1]!).toBeLessThan(2e-6);
  });
});

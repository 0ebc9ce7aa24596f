import { existsSync } from 'node:fs';
import {
  createSituationPool,
  situationAnswerer,
  type AskedKind,
  type SituationAnswers,
} from '@evendraft/studies';
import { parseHouse, type House } from 'evendraft';
import { describe, expect, it } from 'vitest';
import { situationThread } from './situation-workers.js';

/** Invented: flues whose air may go either way. */
function house(): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Plum Court 21',
    floorArea: '1450 ft2',
    airtightness: '900 cfm at 50 Pa',
    exhaust: { hood: { low: '130 cfm', high: '350 cfm' }, dryer: '150 cfm' },
    appliances: {
      furnace: {
        ...{ vent: 'natural draft', fuel: 'gas', input: '75 kBtu/h' },
        flue: { height: '16 ft', diameter: '6 in', collarHeight: '5 ft' },
      },
    },
    weather: [
      { name: 'cold', outdoorTemperature: '-15 C' },
      { name: 'mild', outdoorTemperature: '15 C' },
    ],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

const built = existsSync(new URL('../dist/workers/situation-worker.js', import.meta.url));

describe('threads that solve situations', () => {
  it.skipIf(!built)('give what one thread gives, bit for bit, however many they are', async () => {
    const answer = situationAnswerer();
    answer({ kind: 'house', house: house() });
    const alone = answer({ kind: 'situations', first: 0, end: 12 });
    expect(alone).toHaveLength(12);
    for (const workers of [1, 3]) {
      const pool = createSituationPool(house(), { createWorker: situationThread, workers });
      const parts = await Promise.all(
        [0, 4, 8].map((first) => pool.ask({ kind: 'situations', first, end: first + 4 })),
      );
      pool.close();
      expect(parts.flat()).toEqual(alone);
      await expect(pool.ask({ kind: 'situations', first: 0, end: 1 })).rejects.toThrow('closed');
    }
  });

  it.skipIf(!built)('give what a search and a year ask for, bit for bit', async () => {
    const of = house();
    const answer = situationAnswerer();
    answer({ kind: 'house', house: of });
    const at = { weather: 0, airtightnessCase: 0 };
    const running = { hood: 'high', dryer: 'on' };
    const states = [{ running, doors: {} }];
    const hours = { hours: 3, temperatureC: -4, windSpeedMPerS: 5, windFromDeg: 200 };
    const pool = createSituationPool(of, { createWorker: situationThread, workers: 2 });
    const requests = [
      { kind: 'pressures', at, states },
      { kind: 'bounds', at, states },
      { kind: 'balances', questions: states.map((state) => ({ ...at, state })) },
      { kind: 'hour', state: states[0]!, hours },
    ] as const;
    const replies = await Promise.all(requests.map((request) => pool.ask<AskedKind>(request)));
    pool.close();
    expect(replies).toEqual(requests.map((request) => answer(request)));
    const [pressures, bounds] = replies as [SituationAnswers['bounds'], SituationAnswers['bounds']];
    // A bound lies beyond what is solved, by no more than what the proof leaves open where nothing is undecided.
    expect(bounds[0]!.lowestPa[0]! - pressures[0]!.lowestPa[0]!).toBeLessThan(1e-6);
    expect(pressures[0]!.lowestPa[0]).toBeLessThan(-1);
  });
});

import { existsSync } from 'node:fs';
import { situationAnswerer, createSituationPool } from '@evendraft/studies';
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
});

import type { House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { compiled, device, fan, inventedHouse, weather } from '../../test-data/invented-house.js';
import { workersInTurns } from '../../test-data/workers-in-turns.js';
import {
  createSituationPool,
  type SituationPool,
  type SituationWorker,
} from '../workers/situation-pool.js';
import { listedSituations } from './listed-situations.js';
import { solveListed } from './solve-listed.js';

const house = compiled(
  inventedHouse({
    devices: ['dryer', 'hood', 'bath'].map((id, i) => device(id, { on: fan(0.05 + 0.03 * i) })),
    weathers: Array.from({ length: 12 }, (_, i) => weather(`w${i}`, 2 * i - 10, i % 7)),
  }),
);
const always = { tryMs: 0, worthMs: 0 };

describe('situations solved one by one', () => {
  const run = (createPool?: (of: House) => SituationPool, stopped = () => false) => {
    const progress: number[] = [];
    const solved = solveListed(house, listedSituations(house), {
      createPool,
      onProgress: (done) => progress.push(done),
      stopped,
      patience: always,
    });
    return solved.then((all) => ({ all, progress }));
  };

  it('are the same, bit for bit, for any number of workers and none', async () => {
    const alone = await run();
    expect(alone.all).toHaveLength(2 ** 3 * 2 * 12);
    for (const workers of [1, 2, 5]) {
      const together = await run(workersInTurns(workers));
      expect(together.all).toEqual(alone.all);
      expect(together.progress.at(-1)).toBe(alone.all.length);
      expect(together.progress.length).toBeLessThan(alone.progress.length);
    }
  });

  it('are solved without workers where these would not pay', async () => {
    let asked = 0;
    const { all } = await solveListed(house, listedSituations(house), {
      createPool: (of) => {
        asked += 1;
        return workersInTurns(2)(of);
      },
      onProgress: undefined,
      stopped: () => false,
      patience: { tryMs: 0, worthMs: 3600_000 },
    }).then((solved) => ({ all: solved }));
    expect([asked, all.length]).toEqual([0, 192]);
  });

  it('keep what is done where the work is stopped, with workers and without', async () => {
    const { all } = await run();
    let looks = 0;
    const alone = await run(undefined, () => looks++ >= 50);
    expect(alone.all).toEqual(all.slice(0, 50));
    looks = 0;
    const together = await run(workersInTurns(2), () => looks++ >= 4);
    expect(together.all.length).toBeGreaterThan(1);
    expect(together.all.length).toBeLessThan(all.length);
    for (const each of together.all) expect(all).toContainEqual(each);
  });

  it('fail with the fault of a worker', async () => {
    const broken = (): SituationWorker => {
      let fail: (error: unknown) => void = () => undefined;
      return {
        postMessage: ({ kind }) => {
          if (kind === 'situations') setTimeout(() => fail(new Error('out of memory')), 0);
        },
        onMessage: () => undefined,
        onError: (listener) => void (fail = listener),
        terminate: () => undefined,
      };
    };
    const work = run((of) => createSituationPool(of, { workers: 2, createWorker: broken }));
    await expect(work).rejects.toThrow('out of memory');
  });
});

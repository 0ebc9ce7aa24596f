import type { House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  fan,
  hole,
  inventedHouse,
  makeUp,
  weather,
} from '../../test-data/invented-house.js';
import { workersInTurns } from '../../test-data/workers-in-turns.js';
import type { SituationPool } from '../workers/situation-pool.js';
import { searchExtremes, type Extremes } from './search-extremes.js';
import { situationSolver } from './situation-solver.js';
import { solveStates } from './solve-states.js';

const shaft = {
  id: 'shaft',
  origin: 'openings.shaft',
  zone: 'utility',
  to: { kind: 'roof' },
  heightM: 1,
  riseM: 7,
  law: hole(0.02),
  duringTest: 'sealed',
} as const;
const given = {
  devices: [
    device('hood', { low: fan(0.06), high: fan(0.14) }),
    ...[0.01, 0.02, 0.03].map((flow, index) =>
      device(`fan ${index}`, { on: constantFlow(flow) }, { zone: 'hall' }),
    ),
  ],
  makeUpOpenings: [makeUp('inlet', 'hood')],
  weathers: [weather('cold', -12, 3), weather('mild', 12), weather('hot', 33, 6)],
};
const plain = compiled(inventedHouse(given));
const withShaft = compiled(inventedHouse({ ...given, openings: [shaft] }));

/** What a search found, as plain data. */
function told({ found, coverage, settled }: Extremes): unknown {
  const question = (of: Extremes['coverage']['unsolved'][number]) => [
    ...[of.state, of.weather.name, of.airtightnessCase],
  ];
  return {
    found: found.map((each) => [each.kind, each.zone, question(each.question), each.pressures]),
    coverage: { ...coverage, unsolved: coverage.unsolved.map(question) },
    settled,
  };
}

async function searched(
  house: typeof plain,
  options: {
    readonly createPool?: (house: House) => SituationPool;
    readonly stopped?: () => boolean;
  } = {},
): Promise<{ readonly extremes: Extremes; readonly progress: readonly number[] }> {
  const solver = situationSolver(house, { createPool: options.createPool, worthMs: 0 });
  const progress: number[] = [];
  const extremes = await searchExtremes({
    compiled: house,
    solver,
    onProgress: (done) => void progress.push(done),
    ...(options.stopped === undefined ? {} : { stopped: options.stopped }),
  }).finally(solver.close);
  return { extremes, progress };
}

describe.each([
  ['a house whose settings are ordered', plain],
  ['a house with a shaft that may turn', withShaft],
])('the search of %s', (_, house) => {
  it('finds the same with the same counts for any number of workers and none', async () => {
    const alone = await searched(house);
    expect(alone.extremes.coverage).toMatchObject({ premiseHolds: true, unsolved: [] });
    expect(alone.extremes.coverage.solves).toBeGreaterThan(10);
    for (const workers of [1, 2, 3]) {
      const together = await searched(house, { createPool: workersInTurns(workers) });
      expect(told(together.extremes)).toEqual(told(alone.extremes));
      expect(together.progress).toEqual(alone.progress);
    }
  });

  it('tells of progress that never goes back, up to all situations', async () => {
    const { extremes, progress } = await searched(house);
    expect(extremes.settled.done).toBe(extremes.settled.of);
    // States: three of the hood, two of each fan, two of the door; in three weathers.
    expect(extremes.settled.of).toBe(3 * 2 ** 3 * 2 * 3);
    progress.forEach((done, index) => {
      expect(done).toBeGreaterThanOrEqual(progress[index - 1] ?? 0);
    });
    expect(progress.at(-1)).toBe(extremes.settled.of);
  });

  it.each([0, 3])(
    'keeps what is settled where it is stopped half way, with %i workers',
    async (n) => {
      let looks = 0;
      const { extremes } = await searched(house, {
        ...(n === 0 ? {} : { createPool: workersInTurns(n) }),
        stopped: () => (looks += 1) > 14,
      });
      const { found, settled } = extremes;
      expect(settled.done).toBeLessThan(settled.of);
      expect(found.length).toBeGreaterThan(0);
      for (const { question, pressures } of found) {
        const { state, weather: at, airtightnessCase = 0 } = question;
        const place = { compiled: house, weather: at, airtightnessCase };
        const [again] = solveStates(place, [state]);
        again!.lowestPa.forEach((pressurePa, zone) => {
          // In another batch a solve may start elsewhere; it ends within what the proof leaves open.
          expect(Math.abs(pressurePa - pressures.lowestPa[zone]!)).toBeLessThan(1e-6);
        });
      }
    },
  );

  it('fails with the fault of a worker', async () => {
    const broken: SituationPool = {
      workers: 2,
      ask: () => Promise.reject(new Error('out of memory')),
      close: () => undefined,
    };
    await expect(searched(house, { createPool: () => broken })).rejects.toThrow('out of memory');
  });
});

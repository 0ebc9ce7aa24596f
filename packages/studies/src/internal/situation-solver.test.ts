import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  inventedHouse,
  weather,
} from '../../test-data/invented-house.js';
import { workersInTurns } from '../../test-data/workers-in-turns.js';
import type { Asked } from '../workers/situation-request.js';
import { answeredInOrder } from './answered-in-order.js';
import { situationSolver } from './situation-solver.js';

const house = compiled(
  inventedHouse({
    devices: [device('hood', { on: constantFlow(0.1) })],
    weathers: [weather('cold', -15)],
  }),
);
const state = { running: { hood: 'on' }, doors: { 'utility door': 'open' } } as const;
const hours = Array.from({ length: 40 }, (_, index): Asked<'hour'> => ({
  kind: 'hour',
  state,
  hours: { hours: 10, temperatureC: index - 20, windSpeedMPerS: index / 8, windFromDeg: 9 * index },
}));

async function answers(options: Parameters<typeof situationSolver>[1]): Promise<unknown[]> {
  const solver = situationSolver(house, options);
  const left = [...hours];
  const all: unknown[] = [];
  const inOrder = answeredInOrder(
    () => left.shift(),
    (request) => solver.ask(request),
  );
  for await (const { question, answer } of inOrder) all.push([question.hours.temperatureC, answer]);
  solver.close();
  return all;
}

describe('what is asked of the situations of a house', () => {
  it('is answered in the order of the questions, the same by any number of workers and none', async () => {
    const alone = await answers({});
    expect(alone).toHaveLength(hours.length);
    expect(alone).not.toContainEqual([expect.anything(), null]);
    for (const workers of [1, 3]) {
      const together = await answers({ createPool: workersInTurns(workers), worthMs: 0 });
      expect(together).toEqual(alone);
    }
  });

  it('needs no workers while it is short', async () => {
    let made = 0;
    const createPool = (of: typeof house.house) => {
      made += 1;
      return workersInTurns(2)(of);
    };
    expect(await answers({ createPool, worthMs: 3600_000 })).toEqual(await answers({}));
    expect(made).toBe(0);
    await answers({ createPool, worthMs: 0 });
    expect(made).toBe(1);
  });
});

import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  inventedHouse,
  makeUp,
  hole,
  weather,
} from '../test-data/invented-house.js';
import type { PressureTarget } from './pressure-target.js';
import { togetherStudy } from './together-study.js';

const target: PressureTarget = {
  id: 'water heater',
  zone: 'hall',
  quantity: 'change from baseline',
  limitPa: -5,
  side: 'not below',
};
/** The leaks carry 0.0448 m³/s at 5 Pa. */
const house = (makeUpOpenings: ReturnType<typeof makeUp>[] = []) =>
  compiled(
    inventedHouse(
      {
        devices: Object.entries({ a: 0.02, b: 0.02, c: 0.03 }).map(([id, q]) =>
          device(id, { on: constantFlow(q) }, { zone: 'hall' }),
        ),
        makeUpOpenings,
        weathers: [weather('still', 20)],
      },
      ['hall'],
    ),
  );

describe('what may run together', () => {
  it('is what the leaks carry at the limit', async () => {
    const study = await togetherStudy(house(), [target]);
    expect(study.largestThatKeep).toEqual([['a', 'b'], ['c']]);
    expect(study.smallestThatBreak).toEqual([
      ['a', 'c'],
      ['b', 'c'],
    ]);
  });

  it('grows by a device that brings its own make-up air', async () => {
    const study = await togetherStudy(house([makeUp('inlet', 'c', { openLaw: hole(0.1) })]), [
      target,
    ]);
    expect(study.largestThatKeep).toEqual([['a', 'b', 'c']]);
    expect(study.smallestThatBreak).toEqual([]);
  });
});

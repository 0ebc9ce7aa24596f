import { describe, expect, it } from 'vitest';
import {
  constantFlow,
  device,
  hole,
  inventedHouse,
  leak,
  makeUp,
  weather,
} from '../test-data/invented-house.js';
import { failureCases, failureStudy } from './failure-study.js';

const house = inventedHouse(
  {
    devices: [
      device('hood', { on: constantFlow(0.2) }, { zone: 'hall' }),
      device(
        'supply',
        { on: constantFlow(0.1) },
        {
          zone: 'hall',
          direction: 'supply',
          kind: 'supply fan',
          interlock: { driver: 'hood' },
        },
      ),
    ],
    makeUpOpenings: [makeUp('inlet', 'hood', { openLaw: hole(0.02), closedLaw: leak(1e-4) })],
    weathers: [weather('still', 20)],
  },
  ['hall'],
);

describe('what if it fails', () => {
  it('is deeper with a damper stuck shut, a clogged filter or a failed fan, and as deep with one stuck open', async () => {
    const cases = failureCases(house);
    const results = await failureStudy([
      { item: 'nothing', failure: 'fan failed', house },
      ...cases,
    ]);
    const lowest = Object.fromEntries(
      results.map(({ item, failure, zones }) => [
        `${item}: ${failure}`,
        zones[0]!.lowest.pressurePa,
      ]),
    );
    const sound = lowest['nothing: fan failed']!;
    expect(lowest['inlet: damper stuck shut']!).toBeLessThan(sound - 1);
    expect(lowest['inlet: filter clogged']!).toBeLessThan(sound - 1);
    expect(lowest['supply: fan failed']!).toBeLessThan(sound - 1);
    expect(lowest['supply: filter clogged']!).toBeLessThan(sound - 1);
    // The hood opens the damper in the worst state, so that one stuck open changes nothing there.
    expect(lowest['inlet: damper stuck open']).toBeCloseTo(sound, 6);
    expect(lowest['inlet: gasket leaking']).toBeCloseTo(sound, 6);
    expect(lowest['inlet: damper stuck shut']!).toBeLessThan(lowest['inlet: filter clogged']!);
  });
});

import { countOperatingStates, operatingStates } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { constantFlow, device, fan, hole, inventedHouse } from '../../test-data/invented-house.js';
import { combinationsOf, doorSwitchesOf, stateOf, switchesOf } from './switches.js';

describe('switches', () => {
  it('make the same states in the same order as the house lists them', () => {
    const house = inventedHouse(
      {
        devices: [
          device('hood', { low: fan(0.1), high: fan(0.2) }),
          device('supply', { on: constantFlow(0.1) }, { interlock: { driver: 'hood' } }),
          device('bath', { on: fan(0.04) }, { continuous: true }),
          device('dryer', { on: fan(0.07) }),
          device('condenser', {}, { kind: 'condensing dryer' }),
        ],
        ventilators: [
          {
            id: 'ventilator',
            origin: 'ventilators.ventilator',
            supplyZone: 'hall',
            exhaustZone: 'utility',
            supplyFlowM3PerS: 0.05,
            exhaustFlowM3PerS: 0.05,
            continuous: false,
          },
        ],
        openings: [
          {
            id: 'window',
            origin: 'openings.window',
            zone: 'hall',
            to: { kind: 'outdoors' },
            heightM: 1,
            law: hole(0.1),
            positions: ['shut', 'open'],
            duringTest: 'sealed',
          },
        ],
      },
      ['hall', 'utility', 'attic'],
    );
    const made = [...combinationsOf(doorSwitchesOf(house))].flatMap((doors) =>
      [...combinationsOf(switchesOf(house))].map((settings) => stateOf(settings, doors)),
    );
    expect(made).toEqual(operatingStates(house));
    expect(made).toHaveLength(countOperatingStates(house));
    expect(made.length).toBe(3 * 2 * 2 * 2 * 2 * 2);
  });
});

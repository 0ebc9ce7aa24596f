import { defaultLimitSet } from '@evendraft/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';
import { howFar, type HowFar } from './how-far.js';

const cfm = 0.028316846592 / 60;
// Still air as warm as the room: the leaks alone answer to the exhaust.
const house = inventedRow({
  exhaust: { hood: '300 cfm', dryer: '40 cfm' },
  airtightness: '3000 cfm at 50 Pa',
  weather: [{ name: 'still', outdoorTemperature: '20 C' }],
  appliances: {
    heater: { vent: 'natural draft', fuel: 'gas', kind: 'water heater' },
    boiler: { vent: 'sealed combustion', fuel: 'gas', kind: 'boiler' },
  },
});

describe('how far a house may go', () => {
  let answer: HowFar;
  beforeAll(async () => {
    answer = await howFar(house, defaultLimitSet);
  }, 60_000);
  const sized = (appliance: string): number => {
    const found = answer.airtightness.find((each) => each.appliance === appliance)?.answer;
    return found?.status === 'found' ? found.flowM3PerS : Number.NaN;
  };

  it('asks for each appliance how tight the house may become: more so, the more suction it bears', () => {
    expect(sized('heater')).toBeGreaterThan(sized('boiler'));
    for (const { answer: flow } of answer.airtightness) {
      if (flow.status !== 'found') throw new Error(flow.status);
      expect(flow.marginPa).toBeGreaterThanOrEqual(0);
      expect(flow.failsAtM3PerS ?? 0).toBeLessThan(flow.flowM3PerS);
      expect(flow.situation).toBe('hood + dryer, still');
    }
  });

  it('finds the largest exhaust beside the others, as the power law of the leaks has it', () => {
    const flow = answer.largestExhaust!.answer;
    if (flow.status !== 'found') throw new Error(flow.status);
    // The limit of a natural-draft water heater alone, from the set that was asked.
    const limitPa = -2;
    // The tightest target decides; the dryer runs beside the hood; rated against a
    // duct's pressure, it delivers up to a third more against next to none.
    const whole = 3000 * cfm * (Math.abs(limitPa) / 50) ** 0.65;
    expect(flow.flowM3PerS).toBeGreaterThan(whole - 40 * cfm * 1.33);
    expect(flow.flowM3PerS).toBeLessThan(whole - 40 * cfm * 0.95);
    expect(answer.largestExhaust!.device).toBe('hood');
  });

  it('says which devices may run together', () => {
    expect(answer.together!.devices).toEqual(['hood', 'dryer']);
    expect(JSON.stringify(answer)).not.toContain('null');
  });

  it('asks nothing where no appliance has a limit', async () => {
    const electric = inventedRow({
      appliances: { heater: { vent: 'electric', kind: 'water heater' } },
    });
    const none = await howFar(electric, defaultLimitSet);
    expect(none).toMatchObject({ airtightness: [], withoutLimit: ['heater'] });
    expect(none.together).toBeUndefined();
  });
});

import { operatingStates } from '@evendraft/house';
import { houseWeather } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { compiled, constantFlow, device, inventedHouse } from '../test-data/invented-house.js';
import { balanceStudy } from './balance-study.js';
import { zoneDifferenceStudy } from './zone-difference-study.js';

// More exhaust in the hall narrows what exhaust in the utility room opens.
const network = compiled(
  inventedHouse({
    devices: [
      device('dryer', { on: constantFlow(0.05) }),
      device('hood', { on: constantFlow(0.15) }, { zone: 'hall' }),
    ],
  }),
);

describe('differences between zones', () => {
  it('agree with every state solved by itself, and are not widest with everything on', async () => {
    const study = await zoneDifferenceStudy(network, []);
    const all = network.house.weathers.flatMap((weather) =>
      operatingStates(network.house).map((state) => {
        const balance = balanceStudy(network, {
          state,
          weather: houseWeather(network.house, weather),
        });
        if (balance.status !== 'solved') throw new Error(balance.hint);
        return balance.zones[0]!.pressurePa - balance.zones[1]!.pressurePa;
      }),
    );
    const [pair] = study.pairs;
    // Batch and single solves stop at the same tolerance, not at the same last digit.
    expect(Math.abs(pair!.mostPa - Math.max(...all))).toBeLessThan(1e-6);
    expect(Math.abs(pair!.leastPa - Math.min(...all))).toBeLessThan(1e-6);
    expect(pair!.situations![1].label).toBe('dryer; utility door shut');
    expect(study.method).toBe('every state');
  });

  it('are bounded where there are too many states, never narrower than they are', async () => {
    const exact = await zoneDifferenceStudy(network, [['hall', 'utility']]);
    const wide = await zoneDifferenceStudy(network, [['hall', 'utility']], { listUpTo: 1 });
    expect(wide.method).toBe('bounded');
    expect(wide.pairs[0]!.mostPa).toBeGreaterThan(exact.pairs[0]!.mostPa);
    expect(wide.pairs[0]!.leastPa).toBeLessThan(exact.pairs[0]!.leastPa);
    await expect(zoneDifferenceStudy(network, [['hall', 'attic']])).rejects.toThrow('attic');
  });
});

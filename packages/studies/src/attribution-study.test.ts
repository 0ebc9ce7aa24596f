import { houseWeather } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  inventedHouse,
  makeUp,
} from '../test-data/invented-house.js';
import { attributionStudy } from './attribution-study.js';

const oneRoom = (flows: readonly number[], given: Parameters<typeof inventedHouse>[0] = {}) =>
  compiled(
    inventedHouse(
      {
        devices: flows.map((q, i) => device(`fan ${i}`, { on: constantFlow(q) }, { zone: 'hall' })),
        ...given,
      },
      ['hall'],
    ),
  );

const allOn = (
  network: ReturnType<typeof oneRoom>,
  settings?: Readonly<Record<string, string>>,
) => ({
  zone: 'hall',
  state: {
    running: settings ?? Object.fromEntries(network.house.devices.map(({ id }) => [id, 'on'])),
    doors: {},
  },
  weather: houseWeather(network.house, network.house.weathers[0]!),
});

/** Fall of the one-room house under a flow: the leak's own law, 0.2 m³/s at 50 Pa, n = 0.65, still air at 20 °C. */
const fall = (flowM3PerS: number): number => -50 * (flowM3PerS / 0.2) ** (1 / 0.65);

describe('which device costs how many pascals', () => {
  it('averages over all orders, as worked out by hand for two fans', async () => {
    const network = oneRoom([0.05, 0.03]);
    const study = await attributionStudy(network, allOn(network));
    const first = (fall(0.05) + fall(0.08) - fall(0.03)) / 2;
    const second = (fall(0.03) + fall(0.08) - fall(0.05)) / 2;
    // Air at 20 °C and sea level is 1.2041 kg/m3 to five digits, and heights of leaks cancel in still air.
    expect(study!.shares[0]!.sharePa / first).toBeCloseTo(1, 4);
    expect(study!.shares[1]!.sharePa / second).toBeCloseTo(1, 4);
    expect(study!.shares[0]!.alonePa / fall(0.05)).toBeCloseTo(1, 4);
    expect(study!.shares[1]!.lastPa / (fall(0.08) - fall(0.05))).toBeCloseTo(1, 4);
    expect(study!.method.kind).toBe('all orders');
  });

  it('adds up to the whole fall, and climbs the ladder to the same end', async () => {
    const network = oneRoom([0.02, 0.03, 0.05, 0.01, 0.08, 0.04]);
    const study = (await attributionStudy(network, allOn(network)))!;
    const total = study.pressurePa - study.baselinePa;
    expect(study.shares.reduce((sum, { sharePa }) => sum + sharePa, 0)).toBeCloseTo(total, 9);
    expect(study.ladder.at(-1)!.pressurePa).toBe(study.pressurePa);
    expect(study.ladder.reduce((sum, { addsPa }) => sum + addsPa, 0)).toBeCloseTo(total, 9);
    expect(study.ladder[0]!.device).toBe('fan 4');
  });

  it('counts make-up air with the device that opens it', async () => {
    const network = oneRoom([0.1, 0.05], { makeUpOpenings: [makeUp('inlet', 'fan 0')] });
    const study = (await attributionStudy(network, allOn(network)))!;
    const without = (await attributionStudy(oneRoom([0.1, 0.05]), allOn(oneRoom([0.1, 0.05]))))!;
    expect(study.shares.map(({ device: id }) => id)).toEqual(['fan 0', 'fan 1']);
    expect(study.shares[0]!.sharePa).toBeGreaterThan(without.shares[0]!.sharePa);
  });

  it('samples orders beyond ten devices, adds up still, and finds alike what is alike', async () => {
    const network = oneRoom(Array.from({ length: 12 }, () => 0.01));
    const study = (await attributionStudy(network, allOn(network), { orders: 200, seed: 5 }))!;
    const total = study.pressurePa - study.baselinePa;
    expect(study.method).toMatchObject({ kind: 'sampled orders', orders: 200, seed: 5 });
    expect(study.shares.reduce((sum, { sharePa }) => sum + sharePa, 0)).toBeCloseTo(total, 9);
    for (const { sharePa, standardErrorPa } of study.shares) {
      // Equal fans have equal shares; six standard errors leave no room for bad luck.
      expect(Math.abs(sharePa - total / 12)).toBeLessThan(6 * standardErrorPa);
      expect(standardErrorPa).toBeLessThan(0.01 * Math.abs(total));
    }
  });

  it('refuses a zone or an order that it does not know', async () => {
    const network = oneRoom([0.05, 0.03]);
    await expect(attributionStudy(network, { ...allOn(network), zone: 'attic' })).rejects.toThrow(
      'zone is attic',
    );
    await expect(
      attributionStudy(network, allOn(network), { order: ['fan 0', 'fan 0'] }),
    ).rejects.toMatchObject({ code: 'StudyArgument', argument: 'order' });
  });
});

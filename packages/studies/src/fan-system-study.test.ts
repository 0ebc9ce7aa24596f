import { flowAt } from '@evendraft/airflow';
import { houseWeather } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  device,
  fan,
  hole,
  inventedHouse,
  weather,
} from '../test-data/invented-house.js';
import { balanceStudy } from './balance-study.js';
import { fanSystemStudy } from './fan-system-study.js';

const curve = fan(0.2);

/** One room with a fan, with or without a duct in series; as warm outdoors as indoors. */
function roomWith(path: boolean) {
  const network = compiled(
    inventedHouse(
      {
        devices: [
          device(
            'hood',
            { on: curve },
            {
              zone: 'hall',
              ...(path
                ? {
                    path: {
                      before: [],
                      after: [{ name: 'duct', law: hole(0.02), riseM: 0 }],
                      stoppedLaw: hole(0.01),
                    },
                  }
                : {}),
            },
          ),
        ],
        weathers: [weather('mild', 20)],
      },
      ['hall'],
    ),
  );
  const question = {
    state: { running: { hood: 'on' }, doors: {} },
    weather: houseWeather(network.house, network.house.weathers[0]!),
  };
  const balance = balanceStudy(network, question);
  const pressurePa = balance.status === 'solved' ? balance.zones[0]!.pressurePa : Number.NaN;
  const [study] = fanSystemStudy(network, question);
  const density = network.network.description.zones[0]!.air.densityKgPerM3;
  return { study: study!, pressurePa, density };
}

describe('fan and system', () => {
  it('meet on the curve of the fan, with the suction of the house on top of the duct', () => {
    const { study, pressurePa, density } = roomWith(true);
    const { delivered, withoutSuction, houseSuctionPa } = study;
    const onCurve = flowAt(curve, -delivered.pressurePa, {
      from: { temperatureC: 20, densityKgPerM3: density },
      to: { temperatureC: 20, densityKgPerM3: density },
    });
    expect(onCurve.massFlowKgPerS / density).toBeCloseTo(delivered.flowM3PerS, 9);
    // The duct is a hole: dP = rho/2 (Q/(0.6 A))^2.
    const drop = (density / 2) * (delivered.flowM3PerS / (0.6 * 0.02)) ** 2;
    // Air on both sides is alike, so that the house adds its own pressure and nothing else.
    expect(houseSuctionPa).toBeCloseTo(-pressurePa, 6);
    expect(delivered.pressurePa).toBeCloseTo(drop - pressurePa, 6);
    expect(withoutSuction.flowM3PerS).toBeGreaterThan(delivered.flowM3PerS);
    const alone = (density / 2) * (withoutSuction.flowM3PerS / (0.6 * 0.02)) ** 2;
    expect(withoutSuction.pressurePa).toBeCloseTo(alone, 6);
  });

  it('have a duct without drop where the curve is that of the device as installed', () => {
    const { study, pressurePa } = roomWith(false);
    expect(study.system.every((point) => point.pressurePa === 0)).toBe(true);
    expect(study.houseSuctionPa).toBeCloseTo(-pressurePa, 9);
    expect(study.withoutSuction.pressurePa).toBeCloseTo(0, 9);
    const free = study.fanCurve.find((point) => point.pressurePa === 0)!;
    expect(study.withoutSuction.flowM3PerS).toBeCloseTo(free.flowM3PerS, 9);
  });
});

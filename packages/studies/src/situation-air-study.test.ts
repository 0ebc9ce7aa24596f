import { houseWeather } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  hole,
  inventedHouse,
  makeUp,
  weather,
} from '../test-data/invented-house.js';
import { airSpecificHeat } from './air-heat.js';
import { situationAirStudy } from './situation-air-study.js';

const network = compiled(
  inventedHouse(
    {
      devices: [device('hood', { on: constantFlow(0.2) }, { zone: 'hall' })],
      makeUpOpenings: [makeUp('inlet', 'hood', { openLaw: hole(0.05) })],
      weathers: [weather('cold', -15)],
    },
    ['hall'],
  ),
);
const question = {
  state: { running: { hood: 'on' }, doors: {} },
  weather: houseWeather(network.house, network.house.weathers[0]!),
};

describe('the air of a situation', () => {
  it('balances: what the hood takes comes in, and is heated from outdoors to the room', () => {
    const air = situationAirStudy(network, question)!;
    // The hood moves 0.2 m3/s of room air at 20 °C and sea level; all of it comes in once the leaks only let in.
    const density = network.network.description.zones[0]!.air.densityKgPerM3;
    expect(air.inflowKgPerS).toBeGreaterThanOrEqual(0.2 * density * (1 - 1e-9));
    expect(air.heatW).toBeCloseTo(air.inflowKgPerS * airSpecificHeat * 35, 6);
    expect(air.inducedHeatW).toBeLessThan(air.heatW);
    const [inlet] = air.entries;
    expect(inlet!.item).toBe('inlet');
    expect(inlet!.velocityMPerS).toBeCloseTo(inlet!.volumeFlowM3PerS / 0.05, 9);
    const outdoors = question.weather.outdoorAir.densityKgPerM3;
    expect(air.temperingW).toBeCloseTo(
      inlet!.volumeFlowM3PerS * outdoors * airSpecificHeat * 25,
      6,
    );
  });
});

import { houseWeather } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  inventedHouse,
  weather,
} from '../test-data/invented-house.js';
import { situationAirStudy } from './situation-air-study.js';
import { yearlyAirStudy, type HourlyYear } from './yearly-air-study.js';

const network = compiled(
  inventedHouse(
    {
      devices: [device('hood', { on: constantFlow(0.1) }, { zone: 'hall' })],
      weathers: [weather('cold', -15)],
    },
    ['hall'],
  ),
);
const state = { running: { hood: 'on' }, doors: {} };
const study = (year: HourlyYear, hoursPerDay = 24) =>
  yearlyAirStudy(network, { state, hoursPerDay, year });
const constant = (value: number, hours = 48): readonly number[] => Array<number>(hours).fill(value);

describe('the air of a year', () => {
  it('is that of one situation for as long as its weather lasts and the hood is in use', async () => {
    const year: HourlyYear = { kind: 'hourly', temperaturesC: constant(-15) };
    const [only] = network.house.weathers;
    const air = situationAirStudy(network, { state, weather: houseWeather(network.house, only!) })!;
    const found = await study(year, 6);
    // 48 hours of which a quarter is in use.
    expect(found.heatingKWh / ((air.inducedHeatW * 12) / 1000)).toBeCloseTo(1, 9);
    expect(found.coolingKWh).toBe(0);
    expect(found.weathersSolved).toBe(1);
    expect(found.taken).toEqual(['still air', 'standard pressure at the altitude']);
  });

  it('counts warmth and cold apart', async () => {
    const found = await study({
      kind: 'hourly',
      temperaturesC: [...constant(-5), ...constant(33)],
    });
    expect(found.heatingKWh).toBeGreaterThan(found.coolingKWh);
    expect(found.coolingKWh).toBeGreaterThan(0);
  });

  it('finds less induced air in wind, in which air enters also without the hood', async () => {
    const still = await study({ kind: 'hourly', temperaturesC: constant(0) });
    const windy = await study({
      kind: 'hourly',
      temperaturesC: constant(0),
      windSpeedsMPerS: constant(9),
      windFromDeg: constant(270),
    });
    expect(windy.inducedKgPerS).toBeLessThan(still.inducedKgPerS);
    expect(windy.taken).toEqual(['standard pressure at the altitude']);
    const front = await study({
      kind: 'hourly',
      temperaturesC: constant(0),
      windSpeedsMPerS: constant(9),
    });
    expect(front.taken).toContain('wind from the front');
  });

  it('moves less mass in thinner air', async () => {
    const at = (pressurePa: number) =>
      study({ kind: 'hourly', temperaturesC: constant(19.9), pressuresPa: constant(pressurePa) });
    const [low, sea] = [await at(81_060), await at(101_325)];
    // With next to no stack all air is the hood's, whose volume is held: mass is as the pressure, four fifths.
    expect(low.inducedKgPerS / sea.inducedKgPerS).toBeCloseTo(0.8, 2);
  });

  it('agrees within 2 % with hours solved one by one, also where hours must be taken together', async () => {
    const hours = 1200;
    const wave = (mean: number, swing: number, period: number) =>
      Array.from(
        { length: hours },
        (_, hour) => mean + swing * Math.sin((2 * Math.PI * hour) / period),
      );
    const year = {
      kind: 'hourly',
      temperaturesC: wave(6, 14, 400),
      windSpeedsMPerS: wave(4, 3.5, 37),
      windFromDeg: wave(180, 179, 91),
      pressuresPa: wave(98_000, 1500, 211),
    } as const;
    const found = await study(year);
    expect(found.weathersSolved).toBeLessThanOrEqual(400);
    expect(found.alikeWithin.temperatureK).toBeGreaterThan(0.5);
    let heatingJ = 0;
    for (let hour = 0; hour < hours; hour += 1) {
      const { heatingKWh, coolingKWh } = await study({
        kind: 'hourly',
        temperaturesC: [year.temperaturesC[hour]!],
        windSpeedsMPerS: [year.windSpeedsMPerS[hour]!],
        windFromDeg: [year.windFromDeg[hour]!],
        pressuresPa: [year.pressuresPa[hour]!],
      });
      heatingJ += 3.6e6 * (heatingKWh - coolingKWh);
    }
    const together = 3.6e6 * (found.heatingKWh - found.coolingKWh);
    expect(Math.abs(together / heatingJ - 1)).toBeLessThan(0.02);
  }, 60_000);

  it('tells how many weathers are solved of all, and stops with the reason of the signal', async () => {
    const year: HourlyYear = { kind: 'hourly', temperaturesC: [-5, 0, 5, 10, 15, 25] };
    const told: string[] = [];
    const onProgress = (done: number, of: number): void => void told.push(`${done} of ${of}`);
    await yearlyAirStudy(network, { state, hoursPerDay: 3, year }, { onProgress });
    expect(told).toEqual(['1 of 6', '2 of 6', '3 of 6', '4 of 6', '5 of 6', '6 of 6']);
    const stop = new AbortController();
    const stopped = yearlyAirStudy(
      network,
      { state, hoursPerDay: 3, year },
      { signal: stop.signal, onProgress: (done) => done === 3 && stop.abort(new Error('enough')) },
    );
    await expect(stopped).rejects.toThrow('enough');
  });

  it('refuses columns of different lengths', async () => {
    await expect(
      study({ kind: 'hourly', temperaturesC: [1, 2], windSpeedsMPerS: [3] }),
    ).rejects.toThrow('columns of 2 hours');
  });
});

import { describe, expect, it } from 'vitest';
import { sensibleHeat, yearlyAirHeat, yearlyFanEnergy } from './air-heat.js';

const cfm = 0.028316846592 / 60;
const btuPerHour = 0.29307107;

describe('the heat of make-up air', () => {
  it('is 1.08 Btu/h per cfm and degree Fahrenheit, as the handbooks print', () => {
    // 0.075 lb/ft3 is 1.2014 kg/m3.
    const heat = sensibleHeat(300 * cfm * 1.2014, { from: -17.777778, to: 21.111111 });
    // 300 cfm over 70 °F: 1.08 · 300 · 70 = 22,680 Btu/h; the printed factor has three digits.
    expect(heat / btuPerHour / 22_680).toBeCloseTo(1, 2);
  });

  it('is about 1.21 kW per m3/s and kelvin in SI units', () => {
    // Air of 1.2041 kg/m3; the handbooks round to 1.2 or 1.21.
    expect(sensibleHeat(1.2041, { from: 0, to: 1 }) / 1211).toBeCloseTo(1, 3);
    expect(sensibleHeat(0.1, { from: 30, to: 20 })).toBeLessThan(0);
  });

  it('agrees between degree days and the hours that they sum up', () => {
    const temperaturesC = Float64Array.from(
      { length: 8760 },
      (_, hour) => 10 - 12 * Math.cos((2 * Math.PI * Math.floor(hour / 24)) / 365),
    );
    const roomTemperatureC = 20;
    let [heating, cooling] = [0, 0];
    for (let day = 0; day < 365; day += 1) {
      const difference = roomTemperatureC - temperaturesC[24 * day]!;
      if (difference > 0) heating += difference;
      else cooling -= difference;
    }
    const flow = { massFlowKgPerS: 0.1, hoursPerDay: 3, roomTemperatureC };
    const hourly = yearlyAirHeat(flow, { kind: 'hourly', temperaturesC });
    const days = yearlyAirHeat(flow, {
      kind: 'degree days',
      heatingKelvinDays: heating,
      coolingKelvinDays: cooling,
    });
    expect(hourly.heatingKWh / days.heatingKWh).toBeCloseTo(1, 9);
    expect(hourly.coolingKWh / days.coolingKWh).toBeCloseTo(1, 9);
    expect(() =>
      yearlyAirHeat({ ...flow, hoursPerDay: 25 }, { kind: 'hourly', temperaturesC }),
    ).toThrow('hoursPerDay');
  });

  it('takes a fan of 100 Pa at 0.3 m3/s, three tenths efficient and an hour a day, 36.5 kWh', () => {
    const fan = { volumeFlowM3PerS: 0.3, pressureRisePa: 100, efficiency: 0.3, hoursPerDay: 1 };
    expect(yearlyFanEnergy(fan)).toBeCloseTo(36.5, 9);
    expect(() => yearlyFanEnergy({ ...fan, efficiency: 0 })).toThrow('efficiency');
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moistAirDensity } from './moist-air-density.js';

const seed = 1101;
const temperatureC = fc.double({ min: -40, max: 45, noNaN: true });
const pressurePa = fc.double({ min: 60000, max: 110000, noNaN: true });
const relativeHumidity = fc.double({ min: 0, max: 1, noNaN: true });

test('air gets lighter when it is warmer, more humid, or under less pressure', () => {
  fc.assert(
    fc.property(temperatureC, pressurePa, relativeHumidity, (t, p, h) => {
      const density = moistAirDensity({ temperatureC: t, pressurePa: p, relativeHumidity: h });
      const warmer = moistAirDensity({ temperatureC: t + 1, pressurePa: p, relativeHumidity: h });
      const drier = moistAirDensity({ temperatureC: t, pressurePa: p, relativeHumidity: h / 2 });
      const higher = moistAirDensity({
        temperatureC: t,
        pressurePa: p - 1000,
        relativeHumidity: h,
      });
      expect(warmer).toBeLessThan(density);
      expect(drier).toBeGreaterThanOrEqual(density);
      expect(higher).toBeLessThan(density);
    }),
    { seed },
  );
});

test('dry density is proportional to pressure', () => {
  fc.assert(
    fc.property(temperatureC, pressurePa, (t, p) => {
      const dry = { temperatureC: t, relativeHumidity: 0 };
      const whole = moistAirDensity({ ...dry, pressurePa: p });
      const half = moistAirDensity({ ...dry, pressurePa: p / 2 });
      expect(Math.abs(half / whole - 0.5)).toBeLessThan(1e-12);
    }),
    { seed },
  );
});

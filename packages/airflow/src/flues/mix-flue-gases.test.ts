import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { draftHoodMixing } from './draft-hood-mixing.js';
import { mixFlueGases, type GasStream } from './mix-flue-gases.js';

const streams: fc.Arbitrary<GasStream[]> = fc.array(
  fc.record({
    massFlowKgPerS: fc.double({ min: 0, max: 0.05, noNaN: true }),
    temperatureC: fc.double({ min: -30, max: 500, noNaN: true }),
  }),
  { minLength: 1, maxLength: 5 },
);

test('mass adds, and the mixture is neither hotter nor colder than what is mixed', () => {
  fc.assert(
    fc.property(streams, (given) => {
      const mixed = mixFlueGases(given);
      const flowing = given.filter(({ massFlowKgPerS }) => massFlowKgPerS > 1e-12);
      fc.pre(flowing.length === given.length);
      const total = given.reduce((sum, { massFlowKgPerS }) => sum + massFlowKgPerS, 0);
      expectNear(mixed!.massFlowKgPerS, total);
      const temperatures = given.map(({ temperatureC }) => temperatureC);
      expect(mixed!.temperatureC).toBeGreaterThanOrEqual(Math.min(...temperatures) - 1e-9);
      expect(mixed!.temperatureC).toBeLessThanOrEqual(Math.max(...temperatures) + 1e-9);
    }),
    { seed: 1127 },
  );
});

test('gas and dilution mix as a draft hood says', () => {
  const hood = draftHoodMixing({
    applianceFlowKgPerS: 0.005,
    applianceTemperatureC: 220,
    ventFlowKgPerS: 0.008,
    roomTemperatureC: 20,
    outdoorTemperatureC: -5,
  });
  const mixed = mixFlueGases([
    { massFlowKgPerS: 0.005, temperatureC: 220 },
    { massFlowKgPerS: hood.dilutionKgPerS, temperatureC: 20 },
  ]);
  expectNear(mixed!.temperatureC, hood.ventInletTemperatureC);
});

test('nothing mixes of nothing, and a stream that flows out is refused', () => {
  expect(mixFlueGases([])).toBeUndefined();
  expect(mixFlueGases([{ massFlowKgPerS: 0, temperatureC: 20 }])).toBeUndefined();
  expect(() => mixFlueGases([{ massFlowKgPerS: -0.01, temperatureC: 20 }])).toThrow(
    'massFlowKgPerS is -0.01',
  );
});

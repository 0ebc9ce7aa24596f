import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { infiltrationWithFan, type FanRule } from './infiltration-with-fan.js';
import type { ShelterClass } from './shelter-classes.js';
import { superposedInfiltration, type HouseInWeather } from './superposed-infiltration.js';

const seed = 1122;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const houses: fc.Arbitrary<HouseInWeather> = fc.record({
  effectiveLeakageAreaM2: between(0.001, 0.5),
  temperatureDifferenceK: between(-20, 60),
  windSpeedMPerS: between(0, 20),
  storeys: fc.constantFrom(1 as const, 2 as const, 3 as const),
  shelterClass: fc.constantFrom(1 as const, 2 as const, 3 as const, 4 as const, 5 as const),
});

test('the squares of stack and wind add, and the area is a factor', () => {
  fc.assert(
    fc.property(houses, (house) => {
      const both = superposedInfiltration(house);
      const stack = superposedInfiltration({ ...house, windSpeedMPerS: 0 });
      const wind = superposedInfiltration({ ...house, temperatureDifferenceK: 0 });
      expectNear(both, Math.hypot(stack, wind), { absolute: 1e-15, relative: 1e-12 });
      const twice = 2 * house.effectiveLeakageAreaM2;
      expectNear(superposedInfiltration({ ...house, effectiveLeakageAreaM2: twice }), 2 * both);
    }),
    { seed },
  );
});

test('a taller house takes in more, cold or warm outdoors', () => {
  fc.assert(
    fc.property(houses, (house) => {
      fc.pre(Math.abs(house.temperatureDifferenceK) > 1e-3);
      const flows = ([1, 2, 3] as const).map((storeys) =>
        superposedInfiltration({ ...house, storeys }),
      );
      expect(flows[1]).toBeGreaterThan(flows[0]!);
      expect(flows[2]).toBeGreaterThan(flows[1]!);
      const turned = { ...house, temperatureDifferenceK: -house.temperatureDifferenceK };
      expect(superposedInfiltration(turned)).toBe(superposedInfiltration(house));
    }),
    { seed },
  );
});

test('what enters is never less than the fan nor than the infiltration, and never more than both', () => {
  const rules = fc.constantFrom<FanRule>('half fan', 'quadrature');
  fc.assert(
    fc.property(between(0, 1), between(0, 1), rules, (infiltration, fan, rule) => {
      const flow = infiltrationWithFan({
        infiltrationM3PerS: infiltration,
        unbalancedFlowM3PerS: fan,
        rule,
      });
      expect(flow).toBeGreaterThanOrEqual(Math.max(infiltration, fan) * (1 - 1e-15));
      expect(flow).toBeLessThanOrEqual((infiltration + fan) * (1 + 1e-15));
    }),
    { seed },
  );
});

test('names and numbers that do not exist are refused', () => {
  const house = {
    effectiveLeakageAreaM2: 0.05,
    temperatureDifferenceK: 10,
    windSpeedMPerS: 3,
    storeys: 1,
    shelterClass: 3,
  } as const;
  expect(() => superposedInfiltration({ ...house, storeys: 4 as unknown as 3 })).toThrow('1, 2, 3');
  expect(() =>
    superposedInfiltration({ ...house, shelterClass: 0 as unknown as ShelterClass }),
  ).toThrow('1, 2, 3, 4, 5');
  expect(() =>
    infiltrationWithFan({
      infiltrationM3PerS: 1,
      unbalancedFlowM3PerS: 1,
      rule: 'sum' as unknown as FanRule,
    }),
  ).toThrow('half fan, quadrature');
});

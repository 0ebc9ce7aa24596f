import {
  baselineOf,
  houseWeather,
  type CompiledHouse,
  type OperatingState,
} from '@evendraft/house';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  fan,
  hole,
  inventedHouse,
  makeUp,
  weather,
} from '../../test-data/invented-house.js';
import { pressureRangeStudy } from '../pressure-range-study.js';
import { resolveColumns, type PressureSpan } from '../resolve-columns.js';
import { worstCaseStudy } from '../worst-case-study.js';

const drawn = fc.record({
  rise: fc.double({ min: 2, max: 10, noNaN: true }),
  area: fc.double({ min: 0.005, max: 0.06, noNaN: true }),
  flows: fc.array(fc.double({ min: 0.002, max: 0.12, noNaN: true }), {
    minLength: 4,
    maxLength: 5,
  }),
  outdoorsC: fc.constantFrom(-15, 5, 33),
  madeUp: fc.boolean(),
});

/** Pressures over all balances of a state in the only weather of a house. */
function spanIn(network: CompiledHouse, state: OperatingState): PressureSpan {
  const at = houseWeather(network.house, network.house.weathers[0]!);
  const resolved = resolveColumns(network, { state, weather: at, airtightnessCase: 0 });
  if (resolved.span === undefined) throw new Error('not solved');
  return resolved.span;
}

describe('the worst case of a house with a shaft', () => {
  it('is what going through every state finds, although more exhaust may turn the shaft and raise a pressure', async () => {
    await fc.assert(
      fc.asyncProperty(drawn, async ({ rise, area, flows, outdoorsC, madeUp }) => {
        const network = compiled(
          inventedHouse({
            devices: flows.map((flow, index) =>
              device(
                `fan ${index}`,
                index % 2 === 0
                  ? { on: constantFlow(flow) }
                  : { low: fan(flow, flow / 2), high: fan(flow) },
                { zone: index % 3 === 0 ? 'hall' : 'utility' },
              ),
            ),
            makeUpOpenings: madeUp ? [makeUp('inlet', 'fan 0')] : [],
            openings: [
              {
                id: 'shaft',
                origin: 'openings.shaft',
                zone: 'utility',
                to: { kind: 'roof' },
                heightM: 1,
                riseM: rise,
                law: hole(area),
                duringTest: 'sealed',
              },
            ],
            weathers: [weather('given', outdoorsC)],
          }),
        );
        expect(network.twoStateLinks).toHaveLength(1);
        const every = await worstCaseStudy(network, { listUpTo: Infinity });
        const range = await pressureRangeStudy(network);
        expect(range.coverage.proved).toBe(true);
        const spans = every.situations.map(({ state }) => spanIn(network, state));
        const before = every.situations.map(({ state }) => spanIn(network, baselineOf(state)));
        range.zones.forEach((zone, index) => {
          const readings = every.situations.map((situation) => situation.zones[index]!);
          const pressures = readings.map(({ pressurePa }) => pressurePa);
          const changes = readings.map(({ changeFromBaselinePa }) => changeFromBaselinePa);
          const highs = spans.map(({ highestPa }) => highestPa[index]!);
          const rises = highs.map((high, state) => high - before[state]!.lowestPa[index]!);
          // States within 1e-4 Pa tie, and either may be named.
          const near = (one: number, other: number): void => {
            expect(Math.abs(one - other)).toBeLessThan(1.01e-4);
          };
          near(zone.lowest.pressurePa, Math.min(...pressures));
          near(zone.highest.pressurePa, Math.max(...highs));
          near(zone.largestFall.changeFromBaselinePa, Math.min(...changes));
          near(zone.largestRise.changeFromBaselinePa, Math.max(...rises));
        });
      }),
      { numRuns: 8 },
    );
  }, 60_000);

  it('takes far fewer solves than states where there are many', async () => {
    const devices = Array.from({ length: 14 }, (_, index) =>
      device(`fan ${index}`, { on: constantFlow(0.004 * (index + 1)) }),
    );
    const shaft = {
      id: 'shaft',
      origin: 'openings.shaft',
      zone: 'utility',
      to: { kind: 'roof' },
      heightM: 1,
      riseM: 7,
      law: hole(0.02),
      duringTest: 'sealed',
    } as const;
    const network = compiled(
      inventedHouse({ devices, openings: [shaft], weathers: [weather('cold', -10)] }),
    );
    const range = await pressureRangeStudy(network);
    expect(range.coverage).toMatchObject({ situations: 2 ** 15, proved: true });
    expect(range.solves).toBeLessThan(2 ** 12);
  }, 60_000);
});

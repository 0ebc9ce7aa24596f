import { houseWeather, operatingStates, type House } from '@evendraft/house';
import fc from 'fast-check';
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
import type { PressureTarget } from './pressure-target.js';
import type { Remedy } from './remedy.js';
import { sizeRemedy, type SizingResult } from './size-remedy.js';
import { airtightness, exhaustFlow, speedCap, transferOpening } from './sized/house-remedies.js';
import {
  barometricMakeUp,
  makeUpDuct,
  motorizedMakeUp,
  passiveOpening,
  poweredMakeUp,
} from './sized/make-up-remedies.js';
import { togetherStudy } from './together-study.js';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const between = (from: number, to: number, at: number): number => from + (to - from) * at;

/** A house of two rooms with a hood behind a duct and a flap, a dryer, and a warm flue open to the utility. */
const anyHouse: fc.Arbitrary<House> = fc
  .record({ hood: share, dryer: share, flue: share, duct: share, tight: share, cold: share })
  .map((drawn) =>
    inventedHouse({
      devices: [
        device(
          'hood',
          { low: fan(0.1), high: fan(between(0.12, 0.35, drawn.hood)) },
          {
            zone: 'hall',
            kind: 'hood',
            path: {
              stoppedLaw: hole(0.01),
              before: [],
              after: [
                { name: 'duct', law: hole(between(0.015, 0.04, drawn.duct)), riseM: 2 },
                {
                  name: 'damper',
                  law: {
                    kind: 'oneWayDamper',
                    coefficientM3PerSPaN: 0.03,
                    exponent: 0.5,
                    crackingPressurePa: 2,
                    closedLeakage: { coefficientM3PerSPaN: 5e-4, exponent: 0.6 },
                  },
                  riseM: 0,
                },
              ],
            },
            speeds: [
              { name: 'low', ratedFlowM3PerS: 0.1, law: fan(0.1) },
              {
                name: 'high',
                ratedFlowM3PerS: between(0.12, 0.35, drawn.hood),
                law: fan(between(0.12, 0.35, drawn.hood)),
              },
            ],
          },
        ),
        device('dryer', { on: fan(between(0.02, 0.07, drawn.dryer)) }),
      ],
      openings: [
        {
          id: 'flue',
          origin: 'openings.flue',
          zone: 'utility',
          to: { kind: 'roof' },
          heightM: 1.5,
          law: hole(between(0.002, 0.012, drawn.flue)),
          parts: [{ name: 'shaft', law: hole(0.015), riseM: -5 }],
          duringTest: 'sealed',
        },
      ],
      airtightness: {
        ...inventedHouse().airtightness,
        cases: [
          { name: 'tested', volumeFlowM3PerS: between(0.1, 0.5, drawn.tight), pressurePa: 50 },
        ],
      },
      weathers: [weather('cold', between(-20, 5, drawn.cold)), weather('windy', 10, 6)],
    }),
  );

const duct = { zone: 'hall', run: { lengthM: 4, elbows: 2 } };
const limited = (remedy: Remedy): Remedy => ({
  ...remedy,
  offered:
    remedy.offered.kind === 'listed'
      ? { kind: 'listed', sizes: remedy.offered.sizes.filter((_, place) => place % 4 === 1) }
      : remedy.offered,
});
const kinds: Readonly<Record<string, (house: House) => Remedy>> = {
  'a passive opening': (house) => passiveOpening(house, duct),
  'a make-up duct': (house) => makeUpDuct(house, duct),
  'a barometric duct': (house) => barometricMakeUp(house, { ...duct, opensAtPa: 1 }),
  'a motorized duct': (house) => motorizedMakeUp(house, { ...duct, opensWith: { driver: 'hood' } }),
  'powered make-up air': (house) => poweredMakeUp(house, { ...duct, follows: 'hood' }),
  'a speed cap': (house) => speedCap(house, 'hood'),
  'a transfer opening': (house) => transferOpening(house, ['utility', 'hall']),
  'the airtightness': (house) => airtightness(house),
  'the largest exhaust': (house) => exhaustFlow(house, 'hood'),
};

/** Every size of a catalogue; of a size that may be any, the ends and both sides of the answer. */
function chosenOf(result: SizingResult, { offered }: Remedy): SizingResult['tried'] {
  if (offered.kind === 'listed') return result.tried;
  const wanted =
    result.status === 'sized'
      ? [result.size, result.failsAt]
      : result.status === 'impossible'
        ? [result.best]
        : [];
  const last = result.tried.length - 1;
  return result.tried.filter(
    ({ size }, place) => place === 0 || place === last || wanted.includes(size),
  );
}

/** The least margin over all states and weathers, each solved alone; NaN where one is not solved [Pa]. */
function leastMargin(house: House, { limitPa, zone }: PressureTarget): number {
  const network = compiled(house);
  const margins = house.weathers.flatMap((each) =>
    operatingStates(house).map((state) => {
      const balance = balanceStudy(network, { state, weather: houseWeather(house, each) });
      if (balance.status !== 'solved') return Number.NaN;
      const reading = balance.zones.find((found) => found.zone === zone)!;
      return reading.changeFromBaselinePa - limitPa;
    }),
  );
  return Math.min(...margins);
}

describe('the size of a remedy for any house with ducts and a flue', () => {
  it.each(Object.entries(kinds))(
    'of %s: each size that was tried holds or fails as going through every state says',
    async (_, remedyOf) => {
      let statuses = '';
      await fc.assert(
        fc.asyncProperty(anyHouse, share, async (house, at) => {
          const target: PressureTarget = {
            id: 'heater',
            zone: 'utility',
            quantity: 'change from baseline',
            limitPa: -between(2, 12, at),
            side: 'not below',
          };
          const remedy = limited(remedyOf(house));
          const result = await sizeRemedy(house, { remedy, targets: [target] });
          statuses += `${result.status};`;
          if (result.status === 'nothing needed') {
            expect(leastMargin(house, target)).toBeGreaterThan(-1e-3);
            return;
          }
          for (const { size, holds } of chosenOf(result, remedy)) {
            const margin = leastMargin(remedy.houseWith(size), target);
            // Single and batch solves stop at one tolerance, not at one last digit.
            if (Math.abs(margin) > 1e-3) expect([size, holds]).toEqual([size, margin > 0]);
          }
          if (result.status !== 'sized') return;
          const better = result.tried.filter(({ size }) =>
            remedy.wanted === 'smallest' ? size < result.size : size > result.size,
          );
          expect(better.every(({ holds }) => !holds)).toBe(true);
          expect(result.proved).toBe(true);
        }),
        { seed: 11, numRuns: 2 },
      );
      expect(statuses).toMatch(/sized|impossible/);
    },
    60_000,
  );

  it('tells which devices may run together, as solving each set alone says', async () => {
    await fc.assert(
      fc.asyncProperty(anyHouse, share, async (house, at) => {
        const target: PressureTarget = {
          id: 'heater',
          zone: 'utility',
          quantity: 'change from baseline',
          limitPa: -between(2, 12, at),
          side: 'not below',
        };
        const study = await togetherStudy(compiled(house), [target]);
        const only = (ids: readonly string[]): House => ({
          ...house,
          // What does not run stands still, with its duct.
          devices: house.devices.map((each) =>
            ids.includes(each.id)
              ? { ...each, continuous: false, speeds: each.speeds.slice(-1) }
              : { ...each, speeds: each.speeds.slice(0, 0) },
          ),
        });
        for (const ids of study.largestThatKeep) {
          expect(leastMargin(only(ids), target)).toBeGreaterThan(-1e-3);
        }
        for (const ids of study.smallestThatBreak) {
          expect(leastMargin(only(ids), target)).toBeLessThan(1e-3);
        }
        expect(study.largestThatKeep.length + study.smallestThatBreak.length).toBeGreaterThan(0);
      }),
      { seed: 12, numRuns: 4 },
    );
  });
});

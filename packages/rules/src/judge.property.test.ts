import type { Appliance, House } from '@evendraft/house';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { appliance, house, study } from '../test-data/invented-study.js';
import type { Verdict } from './finding.js';
import { judge } from './judge.js';
import { limitSets } from './limit-sets.js';

const seed = 20261125;
const kinds = [
  'water heater',
  'furnace',
  'boiler',
  'fireplace',
  'wood stove',
  'room heater',
  'decorative gas appliance',
] as const;
const vents = [
  'natural draft',
  'fan assisted',
  'induced draft',
  'power vented',
  'direct vent',
  'sealed combustion',
  'open hearth',
  'closed stove',
  'unvented',
  'electric',
] as const;
const fuels = ['gas', 'oil', 'wood', 'pellets', 'not stated'] as const;

const chimneys: fc.Arbitrary<NonNullable<Appliance['chimney']>> = fc.record({
  heightM: fc.double({ min: 0, max: 30, noNaN: true }),
  exterior: fc.option(fc.boolean(), { nil: undefined }),
});
const withoutChimney: fc.Arbitrary<Appliance> = fc
  .record({
    kind: fc.constantFrom(...kinds),
    vent: fc.constantFrom(...vents),
    fuel: fc.constantFrom(...fuels),
    ventDamper: fc.boolean(),
    sharesVentWith: fc.subarray(['a0', 'a1', 'a2', 'a3', 'nobody']),
  })
  .map(appliance);
const withChimney = fc
  .tuple(withoutChimney, chimneys)
  .map(([one, chimney]): Appliance => ({ ...one, chimney }));
const anyAppliance = fc.oneof(withoutChimney, withChimney);
const anyHouse: fc.Arbitrary<House> = fc
  .array(anyAppliance, { minLength: 1, maxLength: 4 })
  .map((list) => house({ appliances: list.map((one, index) => ({ ...one, id: `a${index}` })) }));
const anySet = fc.constantFrom(...limitSets);
const pressure = fc.double({ min: -80, max: 20, noNaN: true });
const rank: Readonly<Record<Verdict, number>> = {
  'not judged': -1,
  'within the limit': 0,
  'near the limit': 1,
  'beyond the limit': 2,
};

describe('judging any house', () => {
  it('gives each appliance one finding of plain JSON and never throws', () => {
    const anyNumber = fc.double();
    const typed = fc.record({
      changePa: anyNumber,
      lowestPa: anyNumber,
      baselinePa: anyNumber,
      unsolved: fc.nat(3),
      noneSolved: fc.boolean(),
      unique: fc.boolean(),
      enclosureRadiusPa: fc.option(fc.double({ min: 0, max: 5, noNaN: true })),
      notEnclosed: fc.nat(2),
      running: fc.dictionary(fc.string(), fc.string()),
    });
    fc.assert(
      fc.property(anyHouse, anySet, typed, (of, limitSet, numbers) => {
        const findings = judge({ house: of, worstCase: study(of, numbers), limitSet });
        expect(findings.map((finding) => finding.appliance)).toEqual(
          of.appliances.map(({ id }) => id),
        );
        for (const finding of findings) {
          expect(finding.judged === undefined).toBe(finding.verdict === 'not judged');
          expect(finding.reason !== undefined).toBe(finding.verdict === 'not judged');
        }
        expect(JSON.parse(JSON.stringify(findings))).toStrictEqual(findings);
      }),
      { seed, numRuns: 500 },
    );
  });

  it('gives no better verdict to more suction', () => {
    fc.assert(
      fc.property(anyHouse, anySet, pressure, pressure, (of, limitSet, one, other) => {
        const [less, more] = [Math.max(one, other), Math.min(one, other)].map((pa) =>
          judge({
            house: of,
            worstCase: study(of, { changePa: pa, lowestPa: pa }),
            limitSet,
          }).map(({ verdict }) => rank[verdict]),
        );
        less?.forEach((verdict, index) => {
          expect(more?.[index]).toBeGreaterThanOrEqual(verdict);
        });
      }),
      { seed, numRuns: 500 },
    );
  });

  it('gives the same verdict and limit whatever things are called and however they are ordered', () => {
    fc.assert(
      fc.property(anyHouse, anySet, pressure, (of, limitSet, pa) => {
        const rename = (id: string) => `renamed ${id} ✓`;
        const renamed = house({
          appliances: of.appliances
            .map((one) => ({
              ...one,
              id: rename(one.id),
              zone: rename(one.zone),
              sharesVentWith: one.sharesVentWith.map(rename),
            }))
            .reverse(),
        });
        const said = (some: House) =>
          judge({
            house: some,
            worstCase: study(some, { changePa: pa, lowestPa: pa }),
            limitSet,
          }).map(({ verdict, judged, notes }) => ({ verdict, judged, notes }));
        expect([...said(renamed)].reverse()).toEqual(said(of));
      }),
      { seed, numRuns: 500 },
    );
  });

  it('never takes a more lenient limit because a fact is missing', () => {
    fc.assert(
      fc.property(withoutChimney, chimneys, anySet, (bare, chimney, limitSet) => {
        const limitOf = (some: Appliance) => {
          const of = house({ appliances: [some] });
          return judge({ house: of, worstCase: study(of), limitSet })[0]?.judged?.limitPa;
        };
        const known = limitOf({ ...bare, chimney });
        fc.pre(known !== undefined);
        expect(limitOf({ ...bare, fuel: 'not stated' })).toBeGreaterThanOrEqual(known);
        expect(limitOf(bare)).toBeGreaterThanOrEqual(known);
      }),
      { seed, numRuns: 500 },
    );
  });
});

import { flowLaws } from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';
import { oneWayLaw, openingLaws, type OpeningLawInFile } from './opening-law.js';

/** One opening for each way in which it may be written. */
const openings: readonly OpeningLawInFile[] = [
  { area: 0.02 },
  { diameter: 0.15 },
  { netFreeArea: 0.02 },
  { grossArea: 0.08, louvre: 'metal' },
  { flow: { kind: 'flow', volumeFlowM3PerS: 0.02, pressurePa: 10 } },
  { leakageArea: { kind: 'area', areaM2: 0.01, referencePressurePa: 4, dischargeCoefficient: 1 } },
  { coefficient: 0.01 },
];

/** Laws that devices are written with, in `reading/read-device-laws.ts`. */
const lawsOfDevices = ['fanCurve', 'fixedFlow'];

/** Laws that doors are written with, in `reading/read-door-leaf.ts`. */
const lawsOfDoors = ['doorway'];

/** Laws of what stands in series with a device or an opening; see `reading/read-device-path.test.ts`. */
const lawsOfPaths = ['duct', 'gravityDamper'];

/** Laws that no key of the house file leads to yet, each with what it waits for. */
const lawsToCome = {
  quadratic: 'a duct of which only two losses are known',
};

function made(opening: OpeningLawInFile) {
  return openingLaws.flatMap((way) => {
    const law = way.make(opening);
    return law === undefined ? [] : [{ key: way.key, ...law }];
  });
}

describe('openingLaws', () => {
  it('reads an opening by exactly the way whose key it has', () => {
    expect(openings.map((opening) => made(opening).map(({ key }) => key))).toEqual(
      openings.map((opening) => Object.keys(opening).slice(0, 1)),
    );
    expect(openings.map((opening) => Object.keys(opening)[0])).toEqual(
      openingLaws.map(({ key }) => key),
    );
  });

  it('leads, with devices, to every law of the table but those that are named', () => {
    const open = openings.flatMap(made).map(({ law }) => law);
    const flaps = open.map((law) => oneWayLaw(law, 3).law);
    const reached = new Set([...open, ...flaps].map(({ kind }) => kind as string));
    expect(
      [
        ...reached,
        ...lawsOfDevices,
        ...lawsOfDoors,
        ...lawsOfPaths,
        ...Object.keys(lawsToCome),
      ].sort(),
    ).toEqual(Object.keys(flowLaws).sort());
  });

  it('takes a quarter of a wooden louvre and three quarters of a metal one', () => {
    // NFPA 54-2012, 9.3.7.
    const [wood] = made({ grossArea: 0.4 });
    const [metal] = made({ grossArea: 0.4, louvre: 'metal' });
    expect(wood?.law).toMatchObject({ kind: 'orifice', areaM2: 0.1 });
    expect(metal?.law).toMatchObject({ kind: 'orifice', areaM2: 0.4 * 0.75 });
  });

  it('lists what it assumes, and nothing that is given', () => {
    expect(openings.flatMap(made).map(({ assumed }) => assumed.map(({ what }) => what))).toEqual([
      ['discharge coefficient'],
      ['discharge coefficient'],
      ['discharge coefficient'],
      ['free share of its louvre', 'discharge coefficient'],
      ['flow exponent'],
      ['flow exponent'],
      ['flow exponent'],
    ]);
    expect(made({ area: 0.02, dischargeCoefficient: 0.61 })[0]?.assumed).toEqual([]);
    expect(made({ coefficient: 0.01, exponent: 0.6 })[0]?.assumed).toEqual([]);
  });
});

import { houseFile } from '../file/house-file.js';
import { commonPractice, ourChoice } from './sources.js';
import { givenOr, readValue, report, type Reading } from './reading.js';

/** What a house file says about the house as a whole; `undefined` where it is missing or wrong. */
export interface Basics {
  readonly name: string | undefined;
  readonly floorAreaM2: number | undefined;
  readonly volumeM3: number | undefined;
  readonly ceilingHeightM: number | undefined;
  readonly storeys: number | undefined;
  readonly altitudeM: number;
  readonly indoorTemperatureC: number;
  readonly frontFacesDeg: number;
  readonly sideRatio: number;
}

/**
 * Reads the keys about the house as a whole.
 *
 * @param reading - where issues and assumptions are collected
 * @param root - the whole file
 * @returns the basics
 */
export function readBasics(reading: Reading, root: Readonly<Record<string, unknown>>): Basics {
  const { shape } = houseFile;
  const number = <
    Key extends
      | 'floorArea'
      | 'volume'
      | 'ceilingHeight'
      | 'storeys'
      | 'altitude'
      | 'indoorTemperature'
      | 'frontFaces',
  >(
    key: Key,
  ): number | undefined => readValue(reading, shape[key], { path: [key], raw: root[key] });

  const plan = readValue(reading, shape.plan, { path: ['plan'], raw: root['plan'] });
  const planRatio = plan && plan.front / plan.side;
  if (planRatio !== undefined && !(planRatio >= 1 / 4 && planRatio <= 4)) {
    // The coefficients of walls are known for no longer plans.
    const found = `a front ${Number(planRatio.toPrecision(3))} times as long as the sides`;
    const parameters = { found, allowed: 'a quarter to four times as long' };
    report(reading, ['plan'], { code: 'value.out-of-range', parameters });
  }
  return {
    name: readValue(reading, shape.name, { path: ['name'], raw: root['name'] }),
    floorAreaM2: number('floorArea'),
    volumeM3: number('volume'),
    ceilingHeightM: number('ceilingHeight'),
    storeys: number('storeys'),
    altitudeM: givenOr(reading, number('altitude'), {
      origin: 'altitude',
      what: 'altitude',
      value: { si: 0, dimension: 'length' },
      source: ourChoice('sea level where none is given'),
    }),
    indoorTemperatureC: givenOr(reading, number('indoorTemperature'), {
      origin: 'indoorTemperature',
      what: 'indoor temperature',
      value: { si: 20, dimension: 'temperature' },
      source: commonPractice('living spaces at about 20 °C (68 °F)'),
    }),
    frontFacesDeg: positiveAngle(
      givenOr(reading, number('frontFaces'), {
        origin: 'frontFaces',
        what: 'where the front looks',
        value: { si: 0, dimension: 'angle' },
        source: ourChoice('north where none is given'),
      }),
    ),
    sideRatio: givenOr(reading, planRatio, {
      origin: 'plan',
      what: 'length of the front over length of the sides',
      value: { si: 1, dimension: 'ratio' },
      source: ourChoice('a square plan where none is given'),
    }),
  };
}

/**
 * An angle as 0 to below 360 degrees.
 *
 * @param degrees - any angle [°]
 * @returns the same direction [°]
 */
export function positiveAngle(degrees: number): number {
  const turned = degrees % 360;
  return turned < 0 ? turned + 360 : turned + 0;
}

import { describe, expect, it } from 'vitest';
import type { House } from '../house.js';
import { parseHouse } from '../parse-house.js';
import { windOnHouse } from './wind-on-house.js';

const file = {
  evendraft: 1,
  name: 'Rowan Point 4',
  floorArea: '1500 ft2',
  airtightness: '500 cfm at 50 Pa',
  frontFaces: 'S',
  plan: { front: '40 ft', side: '20 ft' },
  weather: [{ name: 'gale', outdoorTemperature: '5 C', wind: '10 m/s from S' }],
};

function house(changes: object): House {
  const read = parseHouse({ ...file, ...changes });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.house;
}

/** Pressure over that of a coefficient of 1 at the speed given: calm, front, right, back, left, outlets, roof [-]. */
function coefficients(of: House, speedMPerS: number): readonly number[] {
  return windOnHouse(of, of.weathers[0]!, 1.2).map(
    (pressure) => Number((pressure / (0.6 * speedMPerS ** 2)).toFixed(4)) + 0,
  );
}

describe('the wind of a weather', () => {
  it('is brought from the station to the eaves by the profiles of both terrains', () => {
    // 10 m/s at 10 m over open terrain is 6.154 m/s at 5 m in a suburb: derived from the formula of the handbook.
    const suburban = house({ wind: { terrain: 'suburban', eaveHeight: '5 m' } });
    expect(suburban.weathers[0]!.windSpeedMPerS).toBeCloseTo(6.154, 3);
    const eaves = house({ wind: { terrain: 'suburban', eaveHeight: '10 m' } });
    expect(eaves.weathers[0]!.windSpeedMPerS).toBeCloseTo(7.168, 3);
  });

  it('lists what the file does not say of its station and terrain', () => {
    const { assumptions } = house({ wind: {} });
    const said = assumptions.map(({ what }) => what);
    expect(said).toEqual(
      expect.arrayContaining([
        'terrain around the house',
        'shelter around the house',
        'terrain around the weather station',
        'height of the wind gauge of the weather station',
        'height of the eaves',
      ]),
    );
    const station = assumptions.find(({ what }) => what.startsWith('height of the wind gauge'));
    expect(station).toMatchObject({
      value: { si: 10 },
      source: { document: expect.stringContaining('ASHRAE') as unknown },
    });
  });

  it('is taken as it is where it is given at the eaves, or where the file says nothing of terrain', () => {
    const weather = [{ ...file.weather[0], wind: { speed: '10 m/s', from: 'S', at: 'eaves' } }];
    const told = house({ wind: { terrain: 'city centre' }, weather });
    expect(told.weathers[0]!.windSpeedMPerS).toBe(10);
    const untold = house({});
    expect(untold.weathers[0]!.windSpeedMPerS).toBe(10);
    expect(untold.assumptions.map(({ what }) => what)).toContain(
      'how the wind presses on the house',
    );
  });
});

describe('windOnHouse', () => {
  const at = (speed: string) => [
    { name: 'gale', outdoorTemperature: '5 C', wind: { speed, from: 'S', at: 'eaves' } },
  ];

  it('presses by the table of low buildings, in the column of the shelter', () => {
    // AIVC Technical Note 44, plan 2:1, from memory: long wall at 0 and 180°, short wall at 90°.
    const exposed = house({ wind: { walls: 'low-rise table' }, weather: at('10 m/s') });
    expect(coefficients(exposed, 10)).toEqual([0, 0.5, -0.9, -0.7, -0.9, -0.5, -0.5]);
    const sheltered = house({
      wind: { walls: 'low-rise table', shelter: 'close neighbours' },
      weather: at('10 m/s'),
    });
    expect(coefficients(sheltered, 10).slice(0, 5)).toEqual([0, 0.06, -0.3, -0.3, -0.3]);
  });

  it('slows the wind on walls by the shelter with the correlation, but not that on outlets', () => {
    const [, front] = coefficients(house({ weather: at('10 m/s') }), 10);
    // The correlation at 0°, from the formula: 0.6035.
    expect(front).toBeCloseTo(0.6035, 3);
    const sheltered = house({ wind: { shelter: 3 }, weather: at('10 m/s') });
    // Class 3: 0.7 of the speed, so 0.49 of the pressure.
    expect(coefficients(sheltered, 10)[1]).toBeCloseTo(0.49 * 0.6035, 3);
    expect(coefficients(sheltered, 10)[5]).toBe(-0.5);
  });

  it('gives openings in the roof the mean of its two slopes', () => {
    const roof = (roofPitch: string, from = 'S'): number =>
      coefficients(
        house({
          wind: { roofPitch },
          plan: { front: '30 ft', side: '30 ft' },
          weather: [
            {
              name: 'gale',
              outdoorTemperature: '5 C',
              wind: { speed: '10 m/s', from, at: 'eaves' },
            },
          ],
        }),
        10,
      )[6]!;
    // AIVC Technical Note 44, plan 1:1, exposed, from memory: windward and leeward slope.
    expect(roof('25 deg')).toBeCloseTo((-0.4 + -0.4) / 2, 4);
    expect(roof('40 deg')).toBeCloseTo((0.3 + -0.5) / 2, 4);
    expect(roof('5 deg')).toBeCloseTo((-0.8 + -0.4) / 2, 4);
    // Along the ridge, which runs east to west.
    expect(roof('25 deg', 'W')).toBeCloseTo(-0.6, 4);
  });

  it('grants no suction to outlets that are not clear of the roof', () => {
    const low = house({ wind: { outlets: 'not clear of the roof' }, weather: at('10 m/s') });
    expect(coefficients(low, 10)[5]).toBe(0);
  });

  it('turns with the azimuth of the front', () => {
    const north = house({
      frontFaces: 'N',
      wind: { walls: 'low-rise table' },
      weather: at('10 m/s'),
    });
    expect(coefficients(north, 10).slice(1, 5)).toEqual([-0.7, -0.9, 0.5, -0.9]);
  });
});

describe('a wall that is given by the compass', () => {
  it('is the face that looks nearest that way', () => {
    const faces = (frontFaces: string, to: string) =>
      house({ frontFaces, exhaust: { dryer: { flow: '100 cfm', to } } }).devices[0]!.to;
    expect(faces('SW', 'SW')).toEqual({ kind: 'face', face: 'front' });
    expect(faces('SW', 'NW')).toEqual({ kind: 'face', face: 'right' });
    expect(faces('SW', '60 deg')).toEqual({ kind: 'face', face: 'back' });
    expect(faces('N', 'W')).toEqual({ kind: 'face', face: 'left' });
  });
});

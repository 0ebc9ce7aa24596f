import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { localWindSpeed } from './local-wind-speed.js';
import { terrains, type Terrain } from './terrains.js';

const seed = 1103;
const names = Object.keys(terrains) as Terrain[];
const station = { stationSpeedMPerS: 10, stationHeightM: 10, stationTerrain: 'open' } as const;

test('the station itself has the speed that it measured', () => {
  for (const terrain of names) {
    const there = { ...station, stationTerrain: terrain, heightM: 10, terrain };
    expectNear(localWindSpeed(there), 10);
  }
});

test('wind grows with height and is slower over rougher ground at the height of a house', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 30, noNaN: true }), (heightM) => {
      const speeds = (['city centre', 'suburban', 'open', 'flat'] as const).map((terrain) =>
        localWindSpeed({ ...station, heightM, terrain }),
      );
      expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
      const above = localWindSpeed({ ...station, heightM: heightM * 1.1, terrain: 'suburban' });
      expect(above).toBeGreaterThan(speeds[1] ?? Number.NaN);
    }),
    { seed },
  );
});

test('above the boundary layer the wind no longer grows', () => {
  const at = (heightM: number) => localWindSpeed({ ...station, heightM, terrain: 'flat' });
  expect(at(500)).toBe(at(210));
});

test('an unknown terrain is refused with the names that are known', () => {
  expect(() =>
    localWindSpeed({ ...station, heightM: 5, terrain: 'forest' as unknown as Terrain }),
  ).toThrow('terrain is forest; allowed is city centre, suburban, open, flat');
});

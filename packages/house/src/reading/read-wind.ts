import {
  exposedCapCoefficient,
  localWindSpeed,
  lowOutletCoefficient,
  lowRiseSurfaces,
  shelterClasses,
  terrains,
} from '@evendraft/airflow';
import { formatQuantity } from '@evendraft/units';
import { shelterClassOf, windFile } from '../file/wind-file.js';
import type { Source, WindExposure, Zone } from '../house.js';
import { givenOr, readValue, type Reading } from './reading.js';
import { ourChoice, sourceOf } from './sources.js';

/** How the wind meets the house, and what its speed at a weather station is at the eaves. */
export interface WindRead {
  readonly exposure: WindExposure;
  /** Where its speed was measured, in words. */
  readonly station: string;
  /** Speed at the eaves from that at the station [m/s]. */
  atEaves(stationSpeedMPerS: number): number;
}

/** Where wind is measured by custom. */
const stationSource: Source = {
  document: 'ASHRAE Handbook Fundamentals, airflow around buildings: wind of a weather station',
  status: 'memory',
};

/**
 * Reads what the file says of the wind on the house.
 *
 * @param reading - where issues and assumptions are collected
 * @param root - the whole file
 * @param zones - zones, for the height of the eaves
 * @returns exposure and profile; `undefined` where the file says nothing, or something is wrong
 */
export function readWind(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
  zones: readonly Zone[],
): WindRead | undefined {
  if (root['wind'] === undefined) return undefined;
  const typed = readValue(reading, windFile, { path: ['wind'], raw: root['wind'] });
  if (typed === undefined) return undefined;
  const assumed = <Value extends string>(
    given: Value | undefined,
    of: { readonly what: string; readonly value: Value; readonly source: Source },
  ): Value => {
    if (given !== undefined) return given;
    reading.assumptions.push({ origin: 'wind', ...of });
    return of.value;
  };
  const terrain = assumed(typed.terrain, {
    what: 'terrain around the house',
    value: 'open',
    source: ourChoice('the windier where none is given'),
  });
  const shelter = assumed(typed.shelter, {
    what: 'shelter around the house',
    value: 'none',
    source: ourChoice('no shelter is granted where none is given'),
  });
  const walls = assumed(typed.walls, {
    what: 'pressure coefficients of walls',
    value: 'correlation',
    source: ourChoice('it knows every shape of plan and every direction'),
  });
  const outlets = assumed(typed.outlets, {
    what: 'how outlets at the roof stand in the wind',
    value: 'clear of the roof',
    source: sourceOf(exposedCapCoefficient),
  });
  const stationTerrain = assumed(typed.station?.terrain, {
    what: 'terrain around the weather station',
    value: 'open',
    source: stationSource,
  });
  const stationHeightM = givenOr(reading, typed.station?.height, {
    origin: 'wind.station',
    what: 'height of the wind gauge of the weather station',
    value: { si: 10, dimension: 'length' },
    source: stationSource,
  });
  const living = zones.filter(({ kind }) => kind === 'living');
  const eaveHeightM = givenOr(reading, typed.eaveHeight, {
    origin: 'wind',
    what: 'height of the eaves',
    value: {
      si: Math.max(1, ...living.map(({ floorHeightM, heightM }) => floorHeightM + heightM)),
      dimension: 'length',
    },
    source: ourChoice('the ceiling of the highest living zone above the datum of floor heights'),
  });
  const push = (what: string, value: string, source: Source): void => {
    reading.assumptions.push({ origin: 'wind', what, value, source });
  };
  push('profile of the wind', 'by the terrains of station and house', sourceOf(terrains[terrain]));
  const shelterClass = shelterClassOf[shelter];
  const { speedFactor, tableShelter } = shelterClasses[shelterClass];
  push(
    'what the shelter does',
    walls === 'correlation'
      ? `wind on walls ${speedFactor} of its speed at the eaves`
      : `the table's column for buildings around: ${tableShelter}`,
    sourceOf(shelterClasses[shelterClass]),
  );
  if (walls === 'low-rise table' || typed.roofPitch !== undefined) {
    push(
      'pressure coefficients of low buildings',
      'plans 1:1 and 2:1, whichever is nearer',
      sourceOf(lowRiseSurfaces['square-plan wall']),
    );
  }
  if (typed.roofPitch === undefined) {
    push(
      'wind on openings and leaks of the roof',
      'as on outlets at the roof',
      ourChoice('no roof pitch is given'),
    );
  }
  if (outlets === 'not clear of the roof') {
    push('coefficient of outlets at the roof', '0', sourceOf(lowOutletCoefficient));
  }
  return {
    exposure: {
      shelter: shelterClass,
      walls: walls === 'correlation' ? 'correlation' : 'table',
      outlets,
      ...(typed.roofPitch === undefined ? {} : { roofPitchDeg: typed.roofPitch }),
    },
    station: `at a weather station, ${formatQuantity(stationHeightM, 'length', { system: 'si' })} above ${stationTerrain} terrain; at the eaves by the profile`,
    atEaves: (stationSpeedMPerS) =>
      localWindSpeed({
        ...{ stationSpeedMPerS, stationHeightM, stationTerrain },
        ...{ heightM: eaveHeightM, terrain },
      }),
  };
}

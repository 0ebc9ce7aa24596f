import type { House } from '../house.js';
import { devicePath } from './device-path.js';
import { doorLinks } from './door-links.js';
import type { HousePaths } from './house-link.js';
import { fluePaths } from './flue-paths.js';
import { forcedAirPath } from './forced-air-path.js';
import { leakLinks } from './leak-links.js';
import { makeUpPath, openingPath } from './opening-path.js';
import { ventilatorLinks } from './ventilator-links.js';

/**
 * Every link that any state of the house may need, and every junction. States switch links on and off; none
 * is ever added.
 *
 * @param house - the house
 * @param leakCoefficientM3PerSPaN - coefficient of the whole remaining leakage in the first case [m3/(s Pa^n)]
 * @returns links and junctions in a fixed order
 */
export function housePaths(house: House, leakCoefficientM3PerSPaN: number): HousePaths {
  const paths: readonly HousePaths[] = [
    { links: leakLinks(house, leakCoefficientM3PerSPaN), junctions: [] },
    ...house.openings.map((opening) => openingPath(house, opening)),
    { links: doorLinks(house), junctions: [] },
    ...house.devices.map((device) => devicePath(house, device)),
    ...house.makeUpOpenings.map((opening) => makeUpPath(house, opening)),
    { links: ventilatorLinks(house), junctions: [] },
    fluePaths(house),
    ...(house.forcedAir ?? []).map((system) => forcedAirPath(house, system)),
  ];
  return {
    links: paths.flatMap(({ links }) => links),
    junctions: paths.flatMap(({ junctions }) => junctions),
  };
}

import { airAt, type Air } from '@evendraft/airflow';
import type { NetworkDescription } from '@evendraft/network';
import type { Face, House, Outlet, Weather } from '../house.js';
import type { Junction } from './house-link.js';

/** Outside walls in the order of their boundaries. */
export const faces: readonly Face[] = ['front', 'right', 'back', 'left'];

/** Boundaries that every house has. A user's name cannot begin with `@`. */
const outdoorIds = [
  '@outdoors',
  '@front',
  '@right',
  '@back',
  '@left',
  '@above roof',
  '@roof',
] as const;

/** Nodes of a network: what a house's zones and its surroundings become. */
export type HouseNodes = Pick<NetworkDescription, 'outdoorAir' | 'zones' | 'boundaries'>;

/**
 * Zones and boundaries of a house in a weather. Outdoors is seven boundaries: calm air, four faces, outlets above
 * the roof, the roof itself.
 * Junctions are appended to the house's zones, each with the air of the node that feeds it.
 *
 * @param house - the house
 * @param weather - the weather
 * @param junctions - junctions of its compiled paths
 * @returns nodes with the air of each
 */
export function houseNodes(
  house: House,
  weather: Weather,
  junctions: readonly Junction[],
): HouseNodes {
  const air = (temperatureC: number): Air => airAt({ temperatureC, altitudeM: house.altitudeM });
  const outdoorAir = air(weather.outdoorTemperatureC);
  const zones = house.zones.map((zone) => ({
    id: zone.id,
    origin: zone.origin,
    heightM: zone.floorHeightM,
    air: zone.temperatureC === 'outdoors' ? outdoorAir : air(zone.temperatureC),
  }));
  const boundaries = [
    ...outdoorIds.map((id) => ({
      id,
      origin: 'weather',
      heightM: 0,
      pressurePa: 0,
      air: outdoorAir,
    })),
    ...house.surroundings.map((surrounding) => ({
      id: surrounding.id,
      origin: surrounding.origin,
      heightM: 0,
      pressurePa: surrounding.pressurePa,
      air: air(surrounding.temperatureC),
    })),
  ];
  const airOf = new Map([...zones, ...boundaries].map((node) => [node.id, node.air]));
  return {
    outdoorAir,
    zones: [
      ...zones,
      ...junctions.map(({ id, origin, heightM, airOf: node }) => ({
        id,
        origin,
        heightM,
        air: airOf.get(node) ?? outdoorAir,
      })),
    ],
    boundaries,
  };
}

/**
 * The node at which an opening ends.
 *
 * @param outlet - where it ends
 * @returns id of a zone or boundary
 */
export function openingNode(outlet: Outlet): string {
  switch (outlet.kind) {
    case 'outdoors':
      return '@outdoors';
    case 'face':
      return `@${outlet.face}`;
    case 'roof':
      return '@roof';
    case 'zone':
      return outlet.zone;
    case 'surrounding':
      return outlet.surrounding;
  }
}

/**
 * The node at which a flue, a fan or a ventilator ends; at the roof it stands above it.
 *
 * @param outlet - where it ends
 * @returns id of a zone or boundary
 */
export function outletNode(outlet: Outlet): string {
  return outlet.kind === 'roof' ? '@above roof' : openingNode(outlet);
}

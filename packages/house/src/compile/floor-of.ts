import type { House } from '../house.js';

/**
 * Height of a zone's floor above the house's datum [m].
 *
 * @param house - the house
 * @param zone - id of the zone
 * @returns its floor's height; 0 for what is no zone [m]
 */
export function floorOf(house: House, zone: string): number {
  return house.zones.find(({ id }) => id === zone)?.floorHeightM ?? 0;
}

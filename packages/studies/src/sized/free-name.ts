import type { House } from '@evendraft/house';

/**
 * A name that nothing in a house has yet.
 *
 * @param house - the house
 * @param wanted - the name if it is free
 * @returns the name, numbered where it is taken
 */
export function freeName(house: House, wanted: string): string {
  const items = [
    ...house.zones,
    ...house.surroundings,
    ...house.openings,
    ...house.doors,
    ...house.devices,
    ...house.makeUpOpenings,
    ...house.ventilators,
    ...house.appliances,
  ];
  const taken = new Set(items.map(({ id }) => id));
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : `${wanted} ${number}`;
    if (!taken.has(name)) return name;
  }
}

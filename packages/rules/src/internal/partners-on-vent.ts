import type { Appliance } from '@evendraft/house';

/**
 * The other appliances on the same vent; a house may state a shared vent on one side only.
 *
 * @param appliance - the appliance
 * @param all - all appliances of the house
 * @returns its partners, in the house's order
 */
export function partnersOnVent(
  appliance: Appliance,
  all: readonly Appliance[],
): readonly Appliance[] {
  return all.filter(
    (other) =>
      other.id !== appliance.id &&
      (appliance.sharesVentWith.includes(other.id) || other.sharesVentWith.includes(appliance.id)),
  );
}

import type { Appliance } from '@evendraft/house';
import { chooseLimit } from '../choose-limit.js';
import type { LimitSet } from '../limit-set.js';
import { limitSets } from '../limit-sets.js';

/**
 * Why an appliance is held against no limit at all, whatever the set says.
 *
 * @param appliance - the appliance
 * @returns a sentence, or nothing where it has a vent that suction can upset
 */
export function reasonWithoutVent(appliance: Appliance): string | undefined {
  switch (appliance.vent) {
    case 'electric':
      return 'It is electric: it has no vent that suction could upset, so no depressurization limit is meant for it.';
    case 'unvented':
      return 'It is unvented: its combustion gas enters the room whatever the pressure, which no depressurization limit can judge.';
    default:
      return undefined;
  }
}

/**
 * Why a set has no limit for an appliance, with the sets that come with the library and have one.
 *
 * @param appliance - the appliance
 * @param appliances - all appliances of the house, for shared vents
 * @param limitSet - the set in which no row was found
 * @returns a sentence or two
 */
export function reasonWithoutRow(
  appliance: Appliance,
  appliances: readonly Appliance[],
  limitSet: LimitSet,
): string {
  const elsewhere = limitSets.filter(
    (other) =>
      other.id !== limitSet.id &&
      chooseLimit({ appliance, appliances, limitSet: other }).status === 'chosen',
  );
  const shared = appliance.sharesVentWith.length > 0 ? ' on a shared vent' : '';
  const reason = `The set "${limitSet.id}" has no limit for a ${appliance.kind}, ${appliance.vent}${shared}.`;
  return elsewhere.length === 0
    ? reason
    : `${reason} These sets have one: ${elsewhere.map((other) => other.id).join(', ')}.`;
}

import { insideZoneKinds, type House } from '@evendraft/house';
import { chooseLimit, type LimitSet } from '@evendraft/rules';
import type { PressureTarget } from '@evendraft/studies';

/** The targets that a limit set gives a house, and the appliances that it gives none. */
export interface LimitTargets {
  readonly targets: readonly PressureTarget[];
  /** Appliances without a limit in the set. Nothing is said of them. */
  readonly withoutLimit: readonly string[];
}

/**
 * A pressure above outdoors that no room inside may exceed, as targets.
 *
 * @param house - the house
 * @param limitPa - the highest pressure, above 0 [Pa]
 * @returns a target for each zone inside the envelope
 */
export function targetsAgainstPushing(house: House, limitPa: number): readonly PressureTarget[] {
  return house.zones
    .filter(({ kind }) => insideZoneKinds.includes(kind))
    .map(({ id }) => ({
      id: `${id}: not pushed outward`,
      zone: id,
      quantity: 'zone minus outdoors',
      limitPa,
      side: 'not above',
    }));
}

/**
 * The pressures that the appliances of a house are to keep to by a limit set.
 *
 * @param house - the house
 * @param limitSet - the limits to size to
 * @param reservePa - how far inside each limit a size must stay; 0 when absent [Pa]
 * @returns a target for each appliance with a limit, named `appliance: limit`
 */
export function targetsOfLimitSet(house: House, limitSet: LimitSet, reservePa = 0): LimitTargets {
  const targets: PressureTarget[] = [];
  const withoutLimit: string[] = [];
  for (const appliance of house.appliances) {
    const choice = chooseLimit({ appliance, appliances: house.appliances, limitSet });
    if (choice.status !== 'chosen') {
      withoutLimit.push(appliance.id);
      continue;
    }
    targets.push({
      id: `${appliance.id}: ${choice.limit.id}`,
      zone: appliance.zone,
      quantity: choice.limit.quantity,
      limitPa: Math.min(choice.limit.limitPa + reservePa, -0.01),
      side: 'not below',
    });
  }
  return { targets, withoutLimit };
}

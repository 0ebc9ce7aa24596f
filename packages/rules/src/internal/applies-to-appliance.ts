import type { Appliance } from '@evendraft/house';
import type { AppliesTo } from '../applies-to.js';
import { fit } from './fit.js';
import { partnersOnVent } from './partners-on-vent.js';

/**
 * Whether any one of several descriptions fits an appliance.
 *
 * @param applies - the descriptions
 * @param appliance - the appliance
 * @param appliances - all appliances of the house, for shared vents
 * @returns `unknown` where none fits for certain and the house lacks a fact
 */
export function appliesToAppliance(
  applies: readonly AppliesTo[],
  appliance: Appliance,
  appliances: readonly Appliance[],
): 'yes' | 'no' | 'unknown' {
  const partners = partnersOnVent(appliance, appliances);
  const answers = applies.map((one) => fit(one, appliance, partners).answer);
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}

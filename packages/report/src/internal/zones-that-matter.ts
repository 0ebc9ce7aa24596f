import { insideZoneKinds } from '@evendraft/house';
import type { Assessment } from '../assessment.js';

/**
 * Zones that people live in or an appliance stands in, the deepest worst case first.
 *
 * Attics, garages and other buffers follow the weather; they are in the full report. A house that
 * has nothing else shows them all.
 *
 * @param assessment - what was studied
 * @returns zone names
 */
export function zonesThatMatter(assessment: Assessment): readonly string[] {
  const { house, worstCase } = assessment;
  const withAppliance = new Set(house.appliances.map((appliance) => appliance.zone));
  const inside = house.zones.filter(
    ({ id, kind }) => insideZoneKinds.includes(kind) || withAppliance.has(id),
  );
  const shown = (inside.length > 0 ? inside : house.zones).map(({ id }) => id);
  const depth = new Map(worstCase.zones.map(({ zone, lowest }) => [zone, lowest.pressurePa]));
  const depthOf = (id: string): number => depth.get(id) ?? Number.POSITIVE_INFINITY;
  // Array sorting is stable, so equal depths keep the house's order.
  return shown.sort((a, b) => (depthOf(a) === depthOf(b) ? 0 : depthOf(a) - depthOf(b)));
}

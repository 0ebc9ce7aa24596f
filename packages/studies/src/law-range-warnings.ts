import { flowLawOf, flowLawWarnings, type AirState } from '@evendraft/airflow';
import type { CompiledHouse, HouseLink } from '@evendraft/house';
import type { Balance, Scenario } from '@evendraft/network';
import type { LawRangeWarning } from './state-balance.js';

/**
 * Parts of a house through which a balance drives air beyond the range in which their laws are trusted.
 *
 * @param compiled - the compiled house
 * @param balance - the balance
 * @param scenario - what it was solved with, for the air of every place, the gas of flues among it
 * @returns a warning for each part and limit; empty where every law is within its range
 */
export function lawRangeWarnings(
  compiled: CompiledHouse,
  balance: Balance,
  scenario: Scenario,
): readonly LawRangeWarning[] {
  return compiled.links.flatMap((link, index) => {
    const { law, from, to } = link.description;
    const massFlowKgPerS = balance.links.massFlowKgPerS[index] ?? 0;
    if (massFlowKgPerS === 0 || flowLawOf(law).limits === undefined) return [];
    const air = airOf(compiled, scenario, massFlowKgPerS > 0 ? from : to);
    return flowLawWarnings(law, massFlowKgPerS, air).map(
      ({ code, found, most, unit }): LawRangeWarning => ({
        ...placeOf(link),
        code,
        found,
        most,
        unit,
      }),
    );
  });
}

function placeOf({ role, description }: HouseLink): Pick<LawRangeWarning, 'item' | 'part'> {
  if (!('id' in role)) return { item: description.origin };
  // The last step of a link's id tells it from the others of its item: a speed, a jump duct, a damper's stand.
  const step = description.id.split('/').at(-1)!.replaceAll('~1', '/').replaceAll('~0', '~');
  return { item: role.id, part: 'part' in role ? role.part : step };
}

function airOf({ network }: CompiledHouse, scenario: Scenario, node: string): AirState {
  const { description, zoneIndex, boundaryIndex } = network;
  const zone = zoneIndex.get(node);
  const index = zone ?? boundaryIndex.get(node) ?? -1;
  const described = (zone === undefined ? description.boundaries : description.zones)[index]!.air;
  const air = zone === undefined ? scenario.boundaryAir : scenario.zoneAir;
  return {
    temperatureC: air?.temperatureC[index] ?? described.temperatureC,
    densityKgPerM3: air?.densityKgPerM3[index] ?? described.densityKgPerM3,
  };
}

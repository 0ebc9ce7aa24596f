import { flowLawOf, flowLawWarnings, type AirState } from '@evendraft/airflow';
import type { CompiledHouse, HouseLink, HouseWeather } from '@evendraft/house';
import type { Balance } from '@evendraft/network';
import type { LawRangeWarning } from './state-balance.js';

/**
 * Parts of a house through which a balance drives air beyond the range in which their laws are trusted.
 *
 * @param compiled - the compiled house
 * @param balance - the balance
 * @param weather - the weather it was solved in, for the air of every place
 * @returns a warning for each part and limit; empty where every law is within its range
 */
export function lawRangeWarnings(
  compiled: CompiledHouse,
  balance: Balance,
  weather: HouseWeather,
): readonly LawRangeWarning[] {
  return compiled.links.flatMap((link, index) => {
    const { law, from, to } = link.description;
    const massFlowKgPerS = balance.links.massFlowKgPerS[index] ?? 0;
    if (massFlowKgPerS === 0 || flowLawOf(law).limits === undefined) return [];
    const air = airOf(compiled, weather, massFlowKgPerS > 0 ? from : to);
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
  return 'part' in role ? { item: role.id, part: role.part } : { item: role.id };
}

function airOf({ network }: CompiledHouse, weather: HouseWeather, node: string): AirState {
  const zone = network.zoneIndex.get(node);
  const index = zone ?? network.boundaryIndex.get(node) ?? -1;
  const { temperatureC, densityKgPerM3 } =
    zone === undefined ? weather.boundaryAir : weather.zoneAir;
  return {
    temperatureC: temperatureC[index] ?? weather.outdoorAir.temperatureC,
    densityKgPerM3: densityKgPerM3[index] ?? weather.outdoorAir.densityKgPerM3,
  };
}

import type { CompiledHouse, HouseWeather } from '../compiled-house.js';
import type { OperatingState } from '../operating-state.js';
import { flueAir } from './flue-air.js';

/** Both airs that a two-state column may hold. */
export interface ColumnDensities {
  /** Place of its link among the links. */
  readonly index: number;
  /** Density while air rises in it [kg/m3]. */
  readonly upward: number;
  /** Density while air falls in it [kg/m3]. */
  readonly downward: number;
}

/**
 * Densities of the two-state columns of a house in a state and weather.
 *
 * @param compiled - the compiled house
 * @param situation - the state, and the weather as `houseWeather` gives it
 * @returns both densities of each, in the order of `twoStateLinks` [kg/m3]
 */
export function columnDensities(
  compiled: Pick<CompiledHouse, 'house' | 'network' | 'twoStateLinks'>,
  situation: { readonly state: OperatingState; readonly weather: HouseWeather },
): readonly ColumnDensities[] {
  const { network, twoStateLinks } = compiled;
  const { weather } = situation;
  const { zoneIndex, boundaryIndex } = network;
  const density = (node: string): number => {
    const zone = zoneIndex.get(node);
    const air = zone === undefined ? weather.boundaryAir : weather.zoneAir;
    return air.densityKgPerM3[zone ?? boundaryIndex.get(node) ?? -1]!;
  };
  const warm = flueAir(compiled, situation).upwardDensityKgPerM3;
  return twoStateLinks.map(({ index, id, upward, downward }) => ({
    index,
    upward: warm.get(id) ?? density(upward),
    downward: density(downward),
  }));
}

import type { Provenance } from '../provenance.js';

/** How a flue is built. */
export type FlueConstructionName =
  | 'masonry, tile-lined'
  | 'masonry, unlined'
  | 'masonry, metal liner, insulated'
  | 'masonry, metal liner'
  | 'single-wall metal'
  | 'double-wall gas vent'
  | 'insulated metal chimney';

/** What the wall of a flue does to the gas in it; everything by area of its inner surface. */
export interface FlueConstruction extends Provenance {
  readonly description: string;
  /** Heat transfer from the gas to still indoor air [W/(m2 K)]. */
  readonly heatTransferWPerM2K: number;
  /** Outer perimeter by inner perimeter [-]. */
  readonly outerToInner: number;
  /** Heat capacity of what warms within some minutes: liner, and what it touches [J/(m2 K)]. */
  readonly heatCapacityJPerM2K: number;
  /** Roughness [m]. */
  readonly roughnessM: number;
}

/** W/(m2 K) of 1 Btu/(h ft2 °F). */
const btu = 5.678263;

const handbook =
  'overall heat transfer coefficients of chimneys and vents, ASHRAE Handbook HVAC Systems and Equipment, chapter 35, design values; roughness of EN 13384-1, table of mean roughness';
const capacity = 'heat capacity from the thickness named, our choice';

/**
 * Walls of flues.
 *
 * Measured heat transfer of one construction scatters by a factor of two; the heat capacity is of a single lump, which
 * a thick wall is not: its inside warms sooner and its outside later than the lump.
 */
export const flueConstructions: Readonly<Record<FlueConstructionName, FlueConstruction>> =
  Object.freeze({
    'masonry, tile-lined': {
      description: 'brick chimney with a clay tile liner of 16 mm',
      heatTransferWPerM2K: 1.0 * btu,
      outerToInner: 1.9,
      heatCapacityJPerM2K: 0.016 * 1900 * 900,
      roughnessM: 0.0015,
      source: `${handbook}; ${capacity}`,
      status: 'memory',
    },
    'masonry, unlined': {
      description: 'brick chimney without a liner, half a brick of 50 mm warming',
      heatTransferWPerM2K: 1.3 * btu,
      outerToInner: 1.9,
      heatCapacityJPerM2K: 0.05 * 1800 * 840,
      roughnessM: 0.005,
      source: `no value known for heat transfer, taken a third above a lined one; roughness of EN 13384-1 from memory; ${capacity}`,
      status: 'assumed',
    },
    'masonry, metal liner': {
      description: 'metal liner of 0.5 mm in a brick chimney, air between',
      heatTransferWPerM2K: 0.6 * btu,
      outerToInner: 2.2,
      heatCapacityJPerM2K: 0.0005 * 7900 * 500,
      roughnessM: 0.001,
      source: `taken as a double-wall gas vent; ${capacity}`,
      status: 'assumed',
    },
    'masonry, metal liner, insulated': {
      description: 'metal liner of 0.5 mm wrapped in 13 mm of insulation in a brick chimney',
      heatTransferWPerM2K: 0.3 * btu,
      outerToInner: 2.2,
      heatCapacityJPerM2K: 0.0005 * 7900 * 500,
      roughnessM: 0.001,
      source: `taken as an insulated metal chimney; ${capacity}`,
      status: 'assumed',
    },
    'single-wall metal': {
      description: 'single-wall galvanized steel pipe of 0.5 mm',
      heatTransferWPerM2K: 1.0 * btu,
      outerToInner: 1,
      heatCapacityJPerM2K: 0.0005 * 7850 * 480,
      roughnessM: 0.001,
      source: `${handbook}; ${capacity}`,
      status: 'memory',
    },
    'double-wall gas vent': {
      description: 'gas vent with an aluminium inner wall of 0.3 mm and 6 mm of air',
      heatTransferWPerM2K: 0.6 * btu,
      outerToInner: 1.15,
      heatCapacityJPerM2K: 0.0003 * 2700 * 900,
      roughnessM: 0.001,
      source: `${handbook}; ${capacity}`,
      status: 'memory',
    },
    'insulated metal chimney': {
      description: 'factory-built chimney, steel inner wall of 0.5 mm, 25 mm of insulation',
      heatTransferWPerM2K: 0.3 * btu,
      outerToInner: 1.33,
      heatCapacityJPerM2K: 0.0005 * 7900 * 500,
      roughnessM: 0.001,
      source: `${handbook}; ${capacity}`,
      status: 'memory',
    },
  });

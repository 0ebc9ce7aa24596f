import type { CompiledHouse, HouseLink } from '@evendraft/house';
import { neutralLevelOf } from '@evendraft/network';
import type { BalanceQuestion } from './balance-study.js';
import { farEnds } from './internal/far-ends.js';
import { resolveColumns } from './resolve-columns.js';

/** Air that passes between two zones, or a zone and what is around the house. */
export interface SectionLinkFlow {
  /** What it is in the network: a leak, a door, a device at a speed. */
  readonly role: HouseLink['role'];
  /** Its id in the network. */
  readonly link: string;
  readonly zone: string;
  /** The zone on the other side; absent where it leads out of the house. */
  readonly otherZone?: string;
  /** Above the house's datum [m]. */
  readonly heightM: number;
  /** Positive out of `zone` [m³/s]. */
  readonly volumeFlowM3PerS: number;
}

/** One balance with the flows of its links and the height at which each zone is level with outdoors. */
export interface SectionStudy {
  readonly question: 'section';
  /** Zone minus outdoors at the zone's floor [Pa]. */
  readonly pressures: readonly { readonly zone: string; readonly pressurePa: number }[];
  /** Links that carry air, in the network's order; what only circulates in ducts is left out. */
  readonly flows: readonly SectionLinkFlow[];
  /** Above the datum; zones whose level lies outside them are left out [m]. */
  readonly neutralLevels: readonly { readonly zone: string; readonly heightM: number }[];
}

/** Flows below this are not drawn [m³/s]. */
const leastFlowM3PerS = 1e-6;

/**
 * The house cut open in one situation: pressures, the flow of every link by what it is, neutral levels.
 *
 * Of parts in series the one at the zone counts. Air that passes ducts with several ends is given at each end as
 * leading out of the house.
 *
 * @param compiled - the compiled house
 * @param question - the situation
 * @returns the study; undefined where the situation could not be solved
 */
export function sectionStudy(
  compiled: CompiledHouse,
  question: BalanceQuestion,
): SectionStudy | undefined {
  const { state, weather, airtightnessCase = 0 } = question;
  const { result, scenario } = resolveColumns(compiled, { state, weather, airtightnessCase });
  if (result.status !== 'solved') return undefined;
  const { house, network } = compiled;
  const ends = farEnds(compiled);
  return {
    question: 'section',
    pressures: house.zones.map(({ id }, index) => ({
      zone: id,
      pressurePa: result.pressuresPa[index]!,
    })),
    flows: compiled.links.flatMap(({ role, description }, index): readonly SectionLinkFlow[] => {
      const volumeFlowM3PerS = result.links.volumeFlowM3PerS[index]!;
      const end = ends[index];
      if (end === undefined || !(Math.abs(volumeFlowM3PerS) > leastFlowM3PerS)) return [];
      const { outward, ...place } = end;
      return [
        {
          ...{ role, link: description.id, ...place },
          volumeFlowM3PerS: outward ? volumeFlowM3PerS : -volumeFlowM3PerS,
        },
      ];
    }),
    neutralLevels: house.zones.flatMap(({ id, floorHeightM, heightM }) => {
      const level = neutralLevelOf(network, result, { zoneId: id, scenario });
      const inside =
        level !== undefined && level >= floorHeightM && level <= floorHeightM + heightM;
      return inside ? [{ zone: id, heightM: level }] : [];
    }),
  };
}

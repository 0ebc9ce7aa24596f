import { gravity } from '@evendraft/airflow';
import type { Balance } from './balance.js';
import type { BuiltNetwork } from './built-network.js';
import type { Scenario } from './scenario.js';
import { UnknownIdError } from './unknown-id-error.js';

/** Where a pressure is asked. */
export interface PressurePlace {
  readonly zoneId: string;
  /** The zone's own height when omitted [m]. */
  readonly heightM?: number;
  /** The scenario that was solved; as described when omitted. */
  readonly scenario?: Scenario;
}

/**
 * Pressure in a zone minus undisturbed outdoors at the same height [Pa].
 * p(z) = p + (rho_out − rho_zone) g (z − height of the zone).
 *
 * @param network - the network that was solved
 * @param balance - its balance
 * @param place - zone, height and scenario
 * @returns pressure, negative when depressurized [Pa]
 */
export function pressureAt(network: BuiltNetwork, balance: Balance, place: PressurePlace): number {
  const index = indexOf(network.zoneIndex, place.zoneId);
  const zone = network.description.zones[index]!;
  const heightM = place.heightM ?? zone.heightM;
  const outdoor = (place.scenario?.outdoorAir ?? network.description.outdoorAir).densityKgPerM3;
  const inside = place.scenario?.zoneAir?.densityKgPerM3[index] ?? zone.air.densityKgPerM3;
  return balance.pressuresPa[index]! + (outdoor - inside) * gravity * (heightM - zone.heightM);
}

/** One link's part of a balance. */
export interface LinkReading {
  /** Net, positive from → to [kg/s]. */
  readonly massFlowKgPerS: number;
  /** At the density of the air that enters [m3/s]. */
  readonly volumeFlowM3PerS: number;
  /** At the opening, `from` minus `to` [Pa]. */
  readonly pressureDifferencePa: number;
}

/**
 * Flow of a link by id.
 *
 * @param network - the network that was solved
 * @param balance - its balance
 * @param linkId - id of a link
 * @returns net mass and volume flow and pressure difference
 */
export function linkReading(network: BuiltNetwork, balance: Balance, linkId: string): LinkReading {
  const index = indexOf(network.linkIndex, linkId);
  return {
    massFlowKgPerS: balance.links.massFlowKgPerS[index]!,
    volumeFlowM3PerS: balance.links.volumeFlowM3PerS[index]!,
    pressureDifferencePa: balance.links.pressureDifferencePa[index]!,
  };
}

function indexOf(index: ReadonlyMap<string, number>, id: string): number {
  const found = index.get(id);
  if (found === undefined) throw new UnknownIdError(id);
  return found;
}

import { neutralLevel } from '@evendraft/airflow';
import type { Balance } from './balance.js';
import type { BuiltNetwork } from './built-network.js';
import type { Scenario } from './scenario.js';
import { pressureAt } from './readings.js';
import { UnknownIdError } from './unknown-id-error.js';

/** Whose neutral level is asked. */
export interface NeutralLevelPlace {
  readonly zoneId: string;
  /** The scenario that was solved; as described when omitted. */
  readonly scenario?: Scenario;
}

/**
 * Height at which a zone of a solved network and undisturbed outdoors have the same pressure [m].
 *
 * It follows from the balance, and so from where the leakage lies, the fans and the wind: in a heated house air
 * enters below it and leaves above it. It may lie below the floor or above the roof.
 *
 * @param network - the network that was solved
 * @param balance - its balance
 * @param place - zone and scenario
 * @returns height on the scale of the description [m], or `undefined` where both airs have one density
 */
export function neutralLevelOf(
  network: BuiltNetwork,
  balance: Balance,
  place: NeutralLevelPlace,
): number | undefined {
  const { zoneId, scenario } = place;
  const index = network.zoneIndex.get(zoneId);
  if (index === undefined) throw new UnknownIdError(zoneId);
  const { zones, outdoorAir } = network.description;
  const zone = zones[index]!;
  const aboveM = neutralLevel({
    pressurePa: pressureAt(network, balance, place),
    zoneDensityKgPerM3: scenario?.zoneAir?.densityKgPerM3[index] ?? zone.air.densityKgPerM3,
    outdoorDensityKgPerM3: (scenario?.outdoorAir ?? outdoorAir).densityKgPerM3,
  });
  return aboveM === undefined ? undefined : zone.heightM + aboveM;
}

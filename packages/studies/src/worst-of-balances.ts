import type { Appliance, House } from '@evendraft/house';
import { inTies } from './internal/ties.js';
import type { Situation, StateBalance, ZonePressure } from './state-balance.js';

/** The lowest pressure that one zone reaches, and where. */
export interface ZoneWorst {
  readonly zone: string;
  /** Situation with the lowest pressure against outdoors. */
  readonly lowest: WorstPressure;
  /** Situation with the largest fall below its own baseline. */
  readonly largestFall: WorstPressure;
}

/** One extreme with its situation. */
export interface WorstPressure extends Situation {
  readonly pressurePa: number;
  readonly changeFromBaselinePa: number;
  /** Pressure of the zone in the baseline that belongs to it [Pa]. */
  readonly baselinePa: number;
}

/** The worst situation for one appliance: that of the zone it stands in. */
export interface ApplianceWorst {
  readonly appliance: string;
  readonly zone: string;
  readonly lowest: WorstPressure;
  readonly largestFall: WorstPressure;
}

/** The extremes of some solved situations, and their weakest proof. */
export interface WorstOfBalances {
  readonly zones: readonly ZoneWorst[];
  readonly appliances: readonly ApplianceWorst[];
  /** The weakest proof among all balances of the list. */
  readonly proof: {
    readonly largestRelativeResidual: number;
    readonly largestEnclosureRadiusPa: number | null;
    readonly notEnclosed: number;
    readonly mostIterations: number;
  };
}

/**
 * The worst of solved situations, zone by zone and appliance by appliance. Of those that tie the first counts.
 *
 * @param house - the house
 * @param balances - its situations, those to prefer among ties first
 * @returns extremes in the house's order, and the weakest proof
 */
export function worstOfBalances(house: House, balances: readonly StateBalance[]): WorstOfBalances {
  const zones = house.zones.flatMap((_, index) => zoneWorst(index, balances));
  return {
    zones,
    appliances: house.appliances.flatMap((appliance) => applianceWorst(appliance, zones)),
    proof: weakestProof(balances),
  };
}

/** The worst readings of the zone at an index, the first of those that tie. */
function zoneWorst(index: number, balances: readonly StateBalance[]): readonly ZoneWorst[] {
  const worst = (of: (reading: ZonePressure) => number): WorstPressure | undefined => {
    let found: { balance: StateBalance; reading: ZonePressure } | undefined;
    for (const balance of balances) {
      const reading = balance.zones[index];
      if (reading === undefined) continue;
      if (found === undefined || inTies(of(reading)) < inTies(of(found.reading))) {
        found = { balance, reading };
      }
    }
    return found === undefined ? undefined : worstPressure(found.balance, found.reading);
  };
  const lowest = worst((reading) => reading.pressurePa);
  const largestFall = worst((reading) => reading.changeFromBaselinePa);
  const zone = balances[0]?.zones[index]?.zone;
  if (zone === undefined || lowest === undefined || largestFall === undefined) return [];
  return [{ zone, lowest, largestFall }];
}

function worstPressure(balance: StateBalance, reading: ZonePressure): WorstPressure {
  const { state, label, weather, airtightness } = balance;
  const { pressurePa, changeFromBaselinePa } = reading;
  return {
    state,
    label,
    weather,
    airtightness,
    pressurePa,
    changeFromBaselinePa,
    baselinePa: pressurePa - changeFromBaselinePa,
  };
}

function applianceWorst(
  appliance: Appliance,
  zones: readonly ZoneWorst[],
): readonly ApplianceWorst[] {
  const worst = zones.find((zone) => zone.zone === appliance.zone);
  return worst === undefined ? [] : [{ appliance: appliance.id, ...worst }];
}

function weakestProof(solved: readonly StateBalance[]): WorstOfBalances['proof'] {
  const radii = solved.flatMap(({ proof }) => proof.enclosureRadiusPa ?? []);
  const largest = (values: readonly number[]): number =>
    values.reduce((most, value) => Math.max(most, value), 0);
  return {
    largestRelativeResidual: largest(solved.map(({ proof }) => proof.largestRelativeResidual)),
    largestEnclosureRadiusPa: radii.length === 0 ? null : largest(radii),
    notEnclosed: solved.length - radii.length,
    mostIterations: largest(solved.map(({ proof }) => proof.iterations)),
  };
}

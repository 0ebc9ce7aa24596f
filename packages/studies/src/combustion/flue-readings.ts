import type { FluesOfSituation } from './flues-of-situation.js';
import { countedShare, spillShares } from './spill-shares.js';
import { tapDraft } from './tap-draft.js';
import type { VentsAtFlows } from './vents-at-flows.js';

/** What one flue does in one state of all. */
export interface FlueReading {
  readonly appliance: string;
  /** Upwards positive [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Static pressure in the vent at the test tap minus that of the room, negative where it draws [Pa]. */
  readonly tapDraftPa: number;
  /** Buoyancy of vent and chimney before any loss [Pa]. */
  readonly theoreticalDraftPa: number;
  /** Room at the collar's height minus outdoors [Pa]. */
  readonly roomPa: number;
  /** Share of its gas that does not leave at the top, or counts so where its vent leaks under pressure [-]. */
  readonly spilledShare: number;
  /** Where its gas leaves the vent or chimney, or where outdoor air comes out at the collar [°C]. */
  readonly outletTemperatureC: number;
}

/**
 * Readings of all flues in one state.
 *
 * @param set - flues in the situation
 * @param at - flows, the states of the systems at them, and what the house gives there
 * @returns by flue
 */
export function flueReadings(
  set: FluesOfSituation,
  at: {
    readonly flows: readonly number[];
    readonly systems: readonly VentsAtFlows[];
    readonly responsePa: readonly number[];
    readonly roomPa: readonly number[];
  },
): readonly FlueReading[] {
  const { flows, systems, responsePa, roomPa } = at;
  const readings: FlueReading[] = [];
  set.systems.forEach((system, s) => {
    const first = readings.length;
    const own = flows.slice(first, first + system.members.length);
    const shares = spillShares(system, own);
    const { members, chimney } = systems[s]!;
    members.forEach(({ gas, inletSuctionPa, neededPa }, k) => {
      const flue = set.flues[first + k]!;
      // The same as the inlets' own where room air may enter; else what the burner's fan makes of it.
      const suctionPa = responsePa[first + k]! - neededPa + inletSuctionPa;
      const risesOut = gas.massFlowKgPerS > 0 && (chimney?.massFlowKgPerS ?? 0) > 0;
      const tapDraftPa = tapDraft(flue, { ...gas, inletSuctionPa: suctionPa });
      readings.push({
        appliance: flue.appliance.id,
        massFlowKgPerS: gas.massFlowKgPerS,
        tapDraftPa,
        theoreticalDraftPa: gas.draftPa + (chimney?.draftPa ?? 0),
        roomPa: roomPa[first + k]!,
        spilledShare: countedShare(flue, { tapDraftPa, spilledShare: shares[k]! }),
        outletTemperatureC:
          risesOut && chimney !== undefined ? chimney.outletTemperatureC : gas.outletTemperatureC,
      });
    });
  });
  return readings;
}

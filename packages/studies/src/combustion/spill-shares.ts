import type { VentSystem } from './vent-system.js';

/**
 * Share of each appliance's gas that does not leave at the top of its chimney, by member [-].
 *
 * A vent that takes less than the gas leaves the rest at its collar; one that comes down leaves all. Of what reaches a
 * chimney's foot, the part that connectors take down again comes out at other appliances.
 *
 * @param system - the vents
 * @param flows - by member, upwards positive [kg/s]
 * @returns from 0 to 1; 0 where nothing burns [-]
 */
export function spillShares(
  { members, chimney }: VentSystem,
  flows: readonly number[],
): readonly number[] {
  const up = flows.reduce((sum, flow) => sum + Math.max(0, flow), 0);
  const down = flows.reduce((sum, flow) => sum + Math.max(0, -flow), 0);
  // Outdoor air that falls in the chimney joins what comes down.
  const arriving = up + Math.max(0, down - up);
  const backDown = chimney === undefined || arriving === 0 ? 0 : down / arriving;
  return members.map(({ gasFlowKgPerS, inlets }, k) => {
    if (gasFlowKgPerS === 0) return 0;
    const taken = inlets.length === 0 ? 1 : Math.min(1, Math.max(0, flows[k]!) / gasFlowKgPerS);
    return 1 - taken * (1 - backDown);
  });
}

/**
 * Share of a flue's gas that counts as spilled, with the pressure in its vent [-].
 *
 * All of it where the vent leaks under pressure and stands above its room: how much comes out is not calculated.
 *
 * @param flue - whether its vent leaks so
 * @param at - draft at its tap, vent minus room [Pa], and the share by the flows alone [-]
 * @returns from 0 to 1 [-]
 */
export function countedShare(
  { leaksUnderPressure }: { readonly leaksUnderPressure: boolean },
  { tapDraftPa, spilledShare }: { readonly tapDraftPa: number; readonly spilledShare: number },
): number {
  return leaksUnderPressure && tapDraftPa > 0 ? 1 : spilledShare;
}

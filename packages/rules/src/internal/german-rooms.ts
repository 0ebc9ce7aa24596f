import type { Appliance, House } from '@evendraft/house';
import type { RuleFinding } from '../rule-finding.js';
import { lacks, notMeantFor, type Rule } from './answer.js';
import { burnersInside, takesRoomAir } from './burners.js';

/** A room with hearths that depend on its air. */
export interface GermanRoom {
  readonly zone: string;
  readonly appliances: readonly Appliance[];
  /** Input, where a German rule has the nominal heat output [W]. */
  readonly inputW: number;
}

/** What every German rule here reads in its own way. */
export const outputNote =
  'The rule counts the nominal heat output; the input of the burner is taken in its place, which is stricter (our choice).';

/**
 * Runs a German rule over the rooms with appliances that depend on room air.
 *
 * @param rule - the rule
 * @param house - the house
 * @param judge - makes the finding of a room
 * @returns one finding for each room, or one that the rule is not meant for the house
 */
export function germanRooms(
  rule: Rule,
  house: House,
  judge: (room: GermanRoom) => RuleFinding,
): readonly RuleFinding[] {
  const burners = burnersInside(house).filter(
    (one) => takesRoomAir(one) && one.vent !== 'unvented',
  );
  const rooms = [...new Set(burners.map(({ zone }) => zone))];
  if (rooms.length === 0) {
    return [notMeantFor(rule, { why: 'No appliance in the house depends on room air.' })];
  }
  return rooms.map((zone) => {
    const appliances = burners.filter((one) => one.zone === zone);
    const unknown = appliances.filter(({ inputW }) => inputW === undefined);
    return unknown.length > 0
      ? lacks(
          rule,
          { subject: zone, why: 'An appliance that depends on room air stands in it.' },
          unknown.map(({ id }) => `the input of the ${id}`),
        )
      : judge({
          zone,
          appliances,
          inputW: appliances.reduce((sum, { inputW = 0 }) => sum + inputW, 0),
        });
  });
}

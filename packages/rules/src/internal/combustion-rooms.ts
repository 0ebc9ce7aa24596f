import type { Appliance, House } from '@evendraft/house';
import type { ArithmeticLine, RuleFinding } from '../rule-finding.js';
import { lacks, notMeantFor, type Rule } from './answer.js';
import { amount, line } from './arithmetic-line.js';
import { burnersInside, named, takesRoomAir } from './burners.js';
import { joinedZones } from './free-openings.js';
import { siOf } from './si-of.js';

/** A thousand Btu/h, in which these rules count [W]. */
export const perThousandBtuPerHour: number = siOf('1000 Btu/h', 'power');

/** A room with gas appliances that take their air from it. */
export interface CombustionRoom {
  readonly zone: string;
  readonly appliances: readonly Appliance[];
  readonly inputW: number;
  /** Input of appliances with a fan-assisted burner [W]. */
  readonly fanAssistedW: number;
  /** Volume of the room and of what permanent openings join to it [m³]. */
  readonly volumeM3: number;
  readonly why: string;
  /** Inputs and volumes as lines. */
  readonly arithmetic: readonly ArithmeticLine[];
}

/**
 * Runs a rule of combustion air over the rooms that it is for.
 *
 * Rooms without such appliances are passed over; a room whose inputs are not stated lacks data. Oil and
 * solid fuel have rules of their own.
 *
 * @param rule - the rule
 * @param house - the house
 * @param judge - makes the finding of a room
 * @returns one finding for each room, or one that the rule is not meant for the house
 */
export function combustionRooms(
  rule: Rule,
  house: House,
  judge: (room: CombustionRoom) => RuleFinding,
): readonly RuleFinding[] {
  const burners = burnersInside(house).filter(
    (one) =>
      takesRoomAir(one) &&
      one.vent !== 'unvented' &&
      (one.fuel === 'gas' || (one.fuel === 'not stated' && one.kind !== 'wood stove')) &&
      one.vent !== 'open hearth',
  );
  const rooms = [...new Set(burners.map(({ zone }) => zone))];
  if (rooms.length === 0) {
    return [
      notMeantFor(rule, { why: 'No vented gas appliance inside takes its air from the room.' }),
    ];
  }
  return rooms.map((zone) => {
    const here = burners.filter((one) => one.zone === zone);
    const why = `In it stand ${named(here)}, which take their air from the room.`;
    const unknown = here.filter(({ inputW }) => inputW === undefined);
    if (unknown.length > 0) {
      return lacks(rule, { subject: zone, why }, [`the input of ${named(unknown)}`]);
    }
    return judge(roomOf(house, zone, { here, why }));
  });
}

function roomOf(
  house: House,
  zone: string,
  { here, why }: { readonly here: readonly Appliance[]; readonly why: string },
): CombustionRoom {
  const inputOf = (some: readonly Appliance[]) =>
    some.reduce((sum, { inputW = 0 }) => sum + inputW, 0);
  const space = house.zones.filter(({ id }) => joinedZones(house, zone).includes(id));
  const volumeM3 = space.reduce((sum, one) => sum + one.volumeM3, 0);
  return {
    zone,
    appliances: here,
    inputW: inputOf(here),
    fanAssistedW: inputOf(here.filter(({ vent }) => vent !== 'natural draft')),
    volumeM3,
    why,
    arithmetic: [
      ...here.map((one) => line(one.id, 'input, given', amount.power(one.inputW ?? 0))),
      line('input', 'all in the room', amount.power(inputOf(here))),
      ...(space.length > 1
        ? space.map(({ id, volumeM3: volume }) =>
            line(id, 'volume, joined by permanent openings', amount.volume(volume)),
          )
        : []),
      line('volume', 'of the space; rooms behind doors do not count', amount.volume(volumeM3)),
    ],
  };
}

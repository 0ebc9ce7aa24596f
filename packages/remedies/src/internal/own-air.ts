import type { House } from '@evendraft/house';
import type { HouseChange } from './house-changes.js';

/** One square inch of free area for each 3,000 Btu/h: NFPA 54-2012 9.3.3.2, one opening to outdoors [m2/W]. */
const openingM2PerW = 0.0254 ** 2 / (3000 * 0.29307107);
/** What a weather-stripped door leaves open, our choice [m2]. */
const sealedDoorM2 = 0.001;
/** Sharp-edged opening [-]. */
const dischargeCoefficient = 0.6;

/**
 * Closets and basements that are sealed from the house and take their air from outdoors.
 *
 * The opening is the single one of the code on fuel gas, by the input of all that burns in the zone; doors are left with
 * 10 cm² of gaps. What exhausts air from the zone goes on doing so.
 *
 * @param house - the house
 * @param appliances - ids of those to be cured
 * @returns one change a zone; none for living rooms, and none where an input is not stated
 */
export function zonesWithOwnAir(
  house: House,
  appliances: readonly string[],
): readonly HouseChange[] {
  return house.zones.flatMap((zone): readonly HouseChange[] => {
    const burning = house.appliances.filter((each) => each.zone === zone.id);
    const wanted = burning.filter(({ id }) => appliances.includes(id)).map(({ id }) => id);
    const inputW = burning.reduce((sum, each) => sum + (each.inputW ?? Number.NaN), 0);
    const doors = house.doors.filter(({ between }) => between.includes(zone.id));
    const ownRoom = zone.kind === 'closet' || zone.kind === 'basement';
    if (!ownRoom || wanted.length === 0 || doors.length === 0 || !(inputW > 0)) return [];
    const opening: House['openings'][number] = {
      id: `combustion air of the ${zone.id}`,
      origin: zone.origin,
      zone: zone.id,
      to: { kind: 'outdoors' },
      heightM: Math.min(0.3, zone.heightM),
      combustionAir: 'low',
      law: { kind: 'orifice', areaM2: openingM2PerW * inputW, dischargeCoefficient },
      duringTest: 'sealed',
    };
    return [
      {
        cure: `Seal the ${zone.id} from the rest of the house and give it air from outdoors, 1 in² for each 3,000 Btu/h.`,
        onlyFor: wanted,
        houses: [
          {
            ...house,
            openings: [...house.openings, opening],
            doors: house.doors.map((door) => {
              if (!doors.includes(door)) return door;
              const { parts: _, ...bare } = door;
              return {
                ...bare,
                shut: { kind: 'orifice' as const, areaM2: sealedDoorM2, dischargeCoefficient },
                positions: ['shut' as const],
                baselinePosition: 'shut' as const,
              };
            }),
          },
        ],
      },
    ];
  });
}

import { insideZoneKinds, type Appliance, type House, type VentType } from '@evendraft/house';

/** Vents that take no air from the room. */
const directVents: readonly VentType[] = ['direct vent', 'sealed combustion'];

/** Vents that a fan of the appliance pushes or pulls; a fan-assisted burner on a drawing vent is not one. */
const mechanicalVents: readonly VentType[] = ['induced draft', 'power vented'];

/**
 * The appliances that burn something inside the heated house.
 *
 * @param house - the house
 * @returns them in the house's order; what is electric or stands in a garage or an attic is not in it
 */
export function burnersInside(house: House): readonly Appliance[] {
  const inside = house.zones.filter(({ kind }) => insideZoneKinds.includes(kind));
  return house.appliances.filter(
    ({ vent, zone }) => vent !== 'electric' && inside.some(({ id }) => id === zone),
  );
}

/**
 * Whether an appliance takes its combustion air from the room.
 *
 * @param appliance - the appliance
 * @returns false for direct vent, sealed combustion and what is electric
 */
export function takesRoomAir({ vent }: Appliance): boolean {
  return vent !== 'electric' && !directVents.includes(vent);
}

/**
 * Whether an appliance is neither direct-vent nor on a mechanical-draft vent.
 *
 * @param appliance - the appliance
 * @returns true where house suction can turn its gas around, unvented ones included
 */
export function isNeitherDirectNorMechanical(appliance: Appliance): boolean {
  return takesRoomAir(appliance) && !mechanicalVents.includes(appliance.vent);
}

/**
 * Whether an appliance burns wood or pellets, as far as the house says.
 *
 * @param appliance - the appliance
 * @returns true for solid fuel; a wood stove without a stated fuel counts
 */
export function burnsSolidFuel({ fuel, kind }: Appliance): boolean {
  return fuel === 'wood' || fuel === 'pellets' || (fuel === 'not stated' && kind === 'wood stove');
}

/**
 * Names in a row: `the furnace, the water heater`.
 *
 * @param appliances - the appliances
 * @returns their ids, each with its article
 */
export function named(appliances: readonly { readonly id: string }[]): string {
  return appliances.map(({ id }) => `the ${id}`).join(', ');
}

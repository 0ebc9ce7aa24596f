import { insideZoneKinds, type House, type Opening } from '@evendraft/house';

/**
 * Free area of the permanent openings between a zone and other rooms inside that the house describes [m²].
 *
 * Only openings described by an area count; one described by a flow has no area of its own.
 *
 * @param house - the house
 * @param zone - id of the zone
 * @returns the openings with their areas
 */
export function openingsToRooms(
  house: House,
  zone: string,
): readonly { readonly opening: Opening; readonly areaM2: number }[] {
  const inside = insideOf(house);
  return house.openings.flatMap((opening) => {
    const { law, to, positions } = opening;
    // What can be shut is not permanent.
    if (to.kind !== 'zone' || law.kind !== 'orifice' || positions !== undefined) return [];
    const other = opening.zone === zone ? to.zone : to.zone === zone ? opening.zone : undefined;
    return other !== undefined && inside.has(other) ? [{ opening, areaM2: law.areaM2 }] : [];
  });
}

/**
 * The rooms inside that permanent openings join to a zone, however many lie between; doors do not count, nor attics,
 * garages and other spaces outside the envelope.
 *
 * @param house - the house
 * @param zone - id of the zone
 * @returns ids, the zone itself first
 */
export function joinedZones(house: House, zone: string): readonly string[] {
  const inside = insideOf(house);
  const joined = [zone];
  for (const here of joined) {
    for (const { to, zone: from, positions } of house.openings) {
      if (to.kind !== 'zone' || positions !== undefined) continue;
      const other = from === here ? to.zone : to.zone === here ? from : undefined;
      if (other !== undefined && inside.has(other) && !joined.includes(other)) joined.push(other);
    }
  }
  return joined;
}

function insideOf({ zones }: House): ReadonlySet<string> {
  return new Set(zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id));
}

import type { House, Opening } from '@evendraft/house';
import type { CombustionOpening, ScreenFacts } from '../screen-facts.js';

/** Kinds of zones that count as outdoors where vents join them to it. Source: NFPA 54-2012, 9.3.3, from memory. */
const ventedKinds: readonly string[] = ['attic', 'crawl space'];

/**
 * Openings of a room to outdoors for combustion air: as facts state them, else as the house describes them.
 *
 * An attic or crawl space counts as outdoors, which its vents make it. An opening that is described by a flow has no
 * area of its own, so that none of the room's is judged then.
 *
 * @param of - the house and the facts beside it
 * @param zone - id of the room
 * @returns the openings; `undefined` where neither says anything of them, or a size is not known
 */
export function outdoorOpenings(
  { house, facts }: { readonly house: House; readonly facts: ScreenFacts },
  zone: string,
): readonly CombustionOpening[] | undefined {
  const stated = facts.zones?.[zone]?.combustionOpenings;
  if (stated !== undefined) return stated.filter(({ to }) => to === 'outdoors');
  const described = house.openings.filter(
    (opening) =>
      opening.zone === zone && opening.combustionAir !== undefined && endsOutdoors(house, opening),
  );
  const sized = described.map(asBuilt);
  const known = sized.filter((opening) => opening !== undefined);
  return known.length === 0 || known.length < sized.length ? undefined : known;
}

function endsOutdoors(house: House, { to }: Opening): boolean {
  if (to.kind === 'surrounding') return false;
  if (to.kind !== 'zone') return true;
  return ventedKinds.includes(house.zones.find(({ id }) => id === to.zone)?.kind ?? '');
}

/** An opening by its narrowest part. */
function asBuilt({ law, parts = [], riseM = 0 }: Opening): CombustionOpening | undefined {
  const laws = [law, ...parts.map((part) => part.law)];
  const areas = laws.flatMap((each) => {
    if (each.kind === 'orifice' || each.kind === 'gravityDamper') return [each.areaM2];
    return each.kind === 'duct' ? each.sections.map(({ areaM2 }) => areaM2) : [];
  });
  if (areas.length < laws.length) return undefined;
  const lengthM = laws
    .flatMap((each) => (each.kind === 'duct' ? each.sections : []))
    .reduce((sum, section) => sum + section.lengthM, 0);
  const gainedM = Math.abs(parts.reduce((sum, part) => sum + part.riseM, riseM));
  const path =
    lengthM === 0 ? 'direct' : gainedM >= lengthM / 2 ? 'vertical duct' : 'horizontal duct';
  return { to: 'outdoors', areaM2: Math.min(...areas), path };
}

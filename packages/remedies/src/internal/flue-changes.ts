import type { House } from '@evendraft/house';
import type { HouseChange } from './house-changes.js';

type Flue = NonNullable<House['appliances'][number]['flue']>;
type Section = Flue['chimney'][number];

/** Walls that lose much heat or take long to warm. */
const coldWalls: readonly Section['construction'][] = [
  'masonry, tile-lined',
  'masonry, unlined',
  'masonry, metal liner',
  'single-wall metal',
];
/** A liner narrows a chimney that is wider than the connectors on it by this factor [-]. */
const tooWide = 1.2;

/**
 * Chimneys that are lined, in the order of the appliances: an insulated metal liner with the area of the connectors on
 * it together, of the chimney's own where that is less or a hearth stands on it.
 *
 * The size is our choice; a listed liner and its size are the licensed trade's.
 *
 * @param house - the house
 * @param appliances - ids of those whose flue is to be cured
 * @returns one change a chimney that has a cold wall or is too wide
 */
export function linedChimneys(house: House, appliances: readonly string[]): readonly HouseChange[] {
  const owners = appliances.flatMap((id) => {
    const flue = house.appliances.find((each) => each.id === id)?.flue;
    return flue === undefined ? [] : [flue.joins ?? id];
  });
  return [...new Set(owners)].flatMap((owner): readonly HouseChange[] => {
    const members = house.appliances.filter(
      ({ id, flue }) => flue !== undefined && (flue.joins ?? id) === owner,
    );
    const owned = members.find(({ id }) => id === owner);
    if (owned?.flue === undefined) return [];
    const { chimney } = owned.flue;
    const collars = members.map(({ flue }) => flue?.connector.at(-1)?.areaM2);
    const wanted =
      owned.vent === 'open hearth'
        ? Infinity
        : collars.reduce<number>((sum, area) => sum + (area ?? Infinity), 0);
    const lined = chimney.map((section) => linedTo(section, wanted));
    if (lined.every((section, k) => section === chimney[k])) return [];
    return [
      {
        cure:
          members.length === 1
            ? `Line the chimney of the ${owner}: an insulated metal liner as wide as its connector.`
            : `Line the chimney of the ${members.map(({ id }) => id).join(' and the ')}: an insulated metal liner as wide as their connectors together.`,
        houses: [withFlue(house, owner, { ...owned.flue, chimney: lined })],
      },
    ];
  });
}

function linedTo(section: Section, wantedM2: number): Section {
  const { construction, areaM2 } = section;
  const narrower = areaM2 > tooWide * wantedM2;
  if (!narrower && !coldWalls.includes(construction)) return section;
  const masonry = construction.startsWith('masonry');
  return {
    ...section,
    construction: masonry ? 'masonry, metal liner, insulated' : 'insulated metal chimney',
    ...(narrower
      ? { areaM2: wantedM2, hydraulicDiameterM: Math.sqrt((4 * wantedM2) / Math.PI) }
      : {}),
  };
}

/**
 * An appliance with sealed combustion in place of one: its flue is no opening of the house any more.
 *
 * What shared its chimney stays on it by itself, as wide as it was: the orphan of the change.
 *
 * @param house - the house
 * @param appliance - id of the appliance
 * @returns the change, meant for it and for those that shared its vent
 */
export function sealedAppliance(house: House, appliance: string): HouseChange {
  const partners = house.appliances.filter(
    (other) =>
      other.id !== appliance &&
      (other.sharesVentWith.includes(appliance) ||
        house.appliances.some(
          ({ id, sharesVentWith }) => id === appliance && sharesVentWith.includes(other.id),
        )),
  );
  const chimney = house.appliances.find(({ id }) => id === appliance)?.flue?.chimney ?? [];
  const heir = house.appliances.find(({ flue }) => flue?.joins === appliance)?.id;
  const left = partners.map(({ id }) => id);
  return {
    cure:
      left.length === 0
        ? `Change the ${appliance} to sealed combustion.`
        : `Change the ${appliance} alone to sealed combustion, which leaves the ${left.join(' and the ')} on the chimney.`,
    onlyFor: [appliance, ...left],
    houses: [
      {
        ...house,
        appliances: house.appliances.map((each) => {
          const sharesVentWith = each.sharesVentWith.filter((id) => id !== appliance);
          if (each.id === appliance) {
            const { flue: _, chimney: __, ...rest } = each;
            return { ...rest, vent: 'sealed combustion' as const, sharesVentWith: [] };
          }
          if (each.flue?.joins !== appliance || heir === undefined)
            return { ...each, sharesVentWith };
          const { joins: _, ...flue } = each.flue;
          return {
            ...each,
            sharesVentWith,
            flue: each.id === heir ? { ...flue, chimney } : { ...flue, joins: heir },
          };
        }),
      },
    ],
  };
}

/**
 * All of several appliances on one vent changed to sealed combustion.
 *
 * @param house - the house
 * @param appliances - ids of those to be cured
 * @returns one change a vent that several share; none else
 */
export function sealedTogether(
  house: House,
  appliances: readonly string[],
): readonly HouseChange[] {
  const shared = house.appliances.filter(({ sharesVentWith, id }) => {
    return (
      sharesVentWith.length > 0 || house.appliances.some((one) => one.sharesVentWith.includes(id))
    );
  });
  if (shared.length < 2 || !shared.some(({ id }) => appliances.includes(id))) return [];
  const ids = shared.map(({ id }) => id);
  return [
    {
      cure: `Change the ${ids.join(' and the ')} to sealed combustion.`,
      onlyFor: ids,
      houses: [ids.reduce<House>((changed, id) => sealedAppliance(changed, id).houses[0]!, house)],
    },
  ];
}

function withFlue(house: House, appliance: string, flue: Flue): House {
  return {
    ...house,
    appliances: house.appliances.map((each) => (each.id === appliance ? { ...each, flue } : each)),
  };
}

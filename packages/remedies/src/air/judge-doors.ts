import type { House } from '@evendraft/house';
import { judgeDoorForce, type AirFacts, type DoorFacts, type RuleFinding } from '@evendraft/rules';
import { usualDoorLeaf } from '@evendraft/studies';
import type { AirStudy } from './air-study.js';

/** A door with the pressures across it. */
interface Across {
  readonly door: string;
  readonly interior: boolean;
  readonly sides: readonly [string, string];
  /** Least and most of the first side minus the second [Pa]. */
  readonly leastPa: number;
  readonly mostPa: number;
  readonly facts: DoorFacts;
}

/**
 * The force on every door at the largest difference across it either way, by the way it swings.
 *
 * A door is held shut by pressure on the side that it swings into, and pushed open by pressure on the other.
 *
 * @param house - the house
 * @param study - its numbers
 * @param facts - doors, and zones that have a door to outdoors where none is named
 * @returns findings door by door, sticking before flying open
 */
export function judgeDoors(
  house: House,
  study: AirStudy,
  facts: Pick<AirFacts, 'doors' | 'outsideDoors'> & { readonly lowestZones: readonly string[] },
): readonly RuleFinding[] {
  const inside = house.doors.flatMap(({ id, between, positions }): readonly Across[] => {
    const found = study.differences.pairs.find(
      (pair) => pair.between[0] === between[0] && pair.between[1] === between[1],
    );
    if (found === undefined || !positions.includes('shut')) return [];
    const { leastPa, mostPa } = found;
    const known = facts.doors?.[id] ?? {};
    return [{ door: id, interior: true, sides: between, leastPa, mostPa, facts: known }];
  });
  const outsideDoors: NonNullable<AirFacts['outsideDoors']> =
    facts.outsideDoors ??
    Object.fromEntries(
      facts.lowestZones.map((zone) => [`door from the ${zone} to outdoors`, { zone }]),
    );
  const outside = Object.entries(outsideDoors).flatMap(([door, known]): readonly Across[] => {
    const range = study.range.zones.find(({ zone }) => zone === known.zone);
    if (range === undefined) return [];
    const [leastPa, mostPa] = [range.lowest.pressurePa, range.highest.pressurePa];
    const sides = [known.zone, 'outdoors'] as const;
    return [{ door, interior: false, sides, leastPa, mostPa, facts: known }];
  });
  return [...inside, ...outside].flatMap(forcesOn);
}

function forcesOn({
  door,
  interior,
  sides,
  leastPa,
  mostPa,
  facts,
}: Across): readonly RuleFinding[] {
  const { leaf = usualDoorLeaf, opensInto } = facts;
  const intoFirst = [mostPa, leastPa];
  const intoSecond = [-leastPa, -mostPa];
  const widest = Math.max(Math.abs(leastPa), Math.abs(mostPa));
  const holding =
    opensInto === undefined ? [widest, -widest] : opensInto === sides[0] ? intoFirst : intoSecond;
  // One sign alone never sticks, or never flies open.
  const wanted = [
    holding[0]! > 0 ? holding[0]! : undefined,
    holding[1]! < 0 ? holding[1]! : undefined,
  ];
  return wanted.flatMap((holdingPressurePa) =>
    holdingPressurePa === undefined
      ? []
      : judgeDoorForce({ door, interior, holdingPressurePa, ...leaf }).map((finding) => ({
          ...finding,
          notes: [
            ...finding.notes,
            opensInto === undefined
              ? 'The way it swings is not given, so both ways are judged at the largest difference.'
              : `It swings into the ${opensInto}.`,
            ...(facts.leaf === undefined
              ? ['The door is taken as one of usual size, our choice.']
              : []),
          ],
        })),
  );
}

import type { FlowLawDescription } from '@evendraft/airflow';
import type { HouseLink, HousePaths, Junction, LinkRole } from './house-link.js';
import { linkId } from './link-id.js';

/** One law at a place of a path, with the states that it is part of. */
export interface SeriesLaw {
  /** What tells it from the others of the same item, in its id: `high`, `duct`, `damper closed`. */
  readonly name: string;
  /** Its flow is positive along the path. */
  readonly law: FlowLawDescription;
  /** Its flow is positive against the path: a flap that opens the other way. */
  readonly reversed?: boolean;
  readonly role: LinkRole;
}

/** One place of a path: a fan, a duct, a damper. Of its laws the role decides which is there. */
export interface SeriesStage {
  /** Height gained along the path, negative downwards [m]. */
  readonly riseM?: number;
  /** Its column fills with the air of whichever end of the path air enters. */
  readonly twoState?: boolean;
  readonly laws: readonly SeriesLaw[];
}

/** Places in series between two nodes. */
export interface SeriesPath {
  /** Name of the item, unique among the items of the house. */
  readonly item: string;
  readonly origin: string;
  /** Node where the path begins. */
  readonly from: string;
  /** Node where it ends. */
  readonly to: string;
  /** Height of its beginning above the house's datum [m]. */
  readonly heightM: number;
  /** Node whose air it holds: the one upstream in normal operation. */
  readonly airOf: string;
  /** From one end to the other, at least one. */
  readonly stages: readonly SeriesStage[];
}

/**
 * Links of places in series, with a junction between each and the next.
 *
 * A junction must keep a way to the rest of the network in every state; see that of two places beside it
 * one always has a law whose flow answers to pressure.
 *
 * @param path - ends, height, air and places
 * @returns links in the order of the places, and one junction fewer than places
 */
export function seriesPath(path: SeriesPath): HousePaths {
  const { item, origin, stages, airOf } = path;
  const heights = [path.heightM];
  for (const { riseM = 0 } of stages) heights.push(heights.at(-1)! + riseM);
  const junctions = stages.slice(1).map((_, index): Junction => ({
    id: `@junction ${item} ${index + 1}`,
    origin,
    item,
    heightM: heights[index + 1]!,
    airOf,
  }));
  const nodes = [path.from, ...junctions.map(({ id }) => id), path.to];
  const rising = { upward: path.from, downward: path.to };
  const falling = { upward: path.to, downward: path.from };
  const links = stages.flatMap(({ laws, twoState = false }, index) => {
    const ends = {
      from: nodes[index]!,
      to: nodes[index + 1]!,
      fromHeightM: heights[index]!,
      toHeightM: heights[index + 1]!,
    };
    const rise = ends.toHeightM - ends.fromHeightM;
    return laws.map(({ name, law, reversed = false, role }): HouseLink => {
      const id = linkId(role.kind, item, name);
      return {
        description: { id, origin, law, ...(reversed ? turned(ends) : ends) },
        role,
        ...(rise === 0 ? {} : { columnOf: airOf }),
        ...(rise === 0 || !twoState ? {} : { twoState: rise > 0 ? rising : falling }),
      };
    });
  });
  return { links, junctions };
}

type Ends = Pick<HouseLink['description'], 'from' | 'to' | 'fromHeightM' | 'toHeightM'>;

function turned({ from, to, fromHeightM, toHeightM }: Ends): Ends {
  return { from: to, to: from, fromHeightM: toHeightM, toHeightM: fromHeightM };
}

import type { FlowLawDescription } from '@evendraft/airflow';
import type { House, MakeUpOpening, Opening, PathPart } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HousePaths, LinkRole } from './house-link.js';
import { openingNode } from './house-nodes.js';
import { partStages } from './part-stages.js';
import { opensInward } from './opens-inward.js';
import { seriesPath, type SeriesLaw } from './series-path.js';

/**
 * Links of a hole that is always there, with what stands in series with it.
 *
 * @param house - the house
 * @param opening - the opening
 * @returns its links and junctions
 */
export function openingPath(house: House, opening: Opening): HousePaths {
  const role: LinkRole = { kind: 'opening', id: opening.id };
  return inwardPath(house, opening, [{ name: 'opening', law: opening.law, role }]);
}

/**
 * Links of a make-up opening, open and closed, with what stands in series with it.
 *
 * @param house - the house
 * @param opening - the make-up opening
 * @returns its links and junctions
 */
export function makeUpPath(house: House, opening: MakeUpOpening): HousePaths {
  const { id, openLaw, closedLaw } = opening;
  const law = (damper: 'open' | 'closed', of: FlowLawDescription | undefined): MainLaw[] =>
    of === undefined
      ? []
      : [{ name: damper, law: of, role: { kind: 'make-up', id, damper } satisfies LinkRole }];
  return inwardPath(house, opening, [...law('open', openLaw), ...law('closed', closedLaw)]);
}

type MainLaw = Omit<SeriesLaw, 'reversed'>;

/** From outdoors through its parts, then through the opening itself into the zone. */
function inwardPath(
  house: House,
  item: Pick<Opening, 'id' | 'origin' | 'zone' | 'to' | 'heightM'> & {
    readonly riseM?: number;
    readonly parts?: readonly PathPart[];
  },
  laws: readonly MainLaw[],
): HousePaths {
  const { id, origin, zone, to, heightM, riseM = 0, parts = [] } = item;
  const outlet = openingNode(to);
  const wholeRiseM = parts.reduce((sum, part) => sum + part.riseM, riseM);
  return seriesPath({
    item: id,
    origin,
    from: outlet,
    to: zone,
    heightM: floorOf(house, zone) + heightM - wholeRiseM,
    airOf: outlet,
    stages: [
      // No fan holds the direction, so that a vertical part fills with whichever air enters.
      ...partStages(id, parts).map((stage) => ({ ...stage, twoState: true })),
      {
        riseM,
        twoState: true,
        // A law counts its flow outwards, but a flap counts it in the direction in which it opens.
        laws: laws.map((law) => ({ ...law, reversed: !opensInward(law.law) })),
      },
    ],
  });
}

import type { FlowLawDescription } from '@evendraft/airflow';
import type { House, MakeUpOpening, Opening, PathPart } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HousePaths, LinkRole } from './house-link.js';
import { outletNode } from './house-nodes.js';
import { partStages } from './part-stages.js';
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
  item: Pick<Opening, 'id' | 'origin' | 'zone' | 'to' | 'heightM' | 'endHeightM'> & {
    readonly parts?: readonly PathPart[];
  },
  laws: readonly MainLaw[],
): HousePaths {
  const { id, origin, zone, to, heightM, parts = [] } = item;
  const outlet = outletNode(to);
  // Its own rise is that of the shaft or vertical duct which it is; its parts have theirs.
  const ownRiseM = heightM - (item.endHeightM ?? heightM);
  const riseM = parts.reduce((sum, part) => sum + part.riseM, ownRiseM);
  return seriesPath({
    item: id,
    origin,
    from: outlet,
    to: zone,
    heightM: floorOf(house, zone) + heightM - riseM,
    airOf: outlet,
    stages: [
      ...partStages(id, parts),
      {
        riseM: ownRiseM,
        twoState: true,
        // A law counts its flow outwards, but a flap counts it in the direction in which it opens.
        laws: laws.map((law) => ({ ...law, reversed: law.law.kind !== 'oneWayDamper' })),
      },
    ],
  });
}

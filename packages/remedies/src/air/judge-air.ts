import { insideZoneKinds, type CompiledHouse, type House } from '@evendraft/house';
import {
  judgeGarageWall,
  judgeSoilGasSuction,
  type AirFacts,
  type RuleFinding,
} from '@evendraft/rules';
import { garageWalls, type AirStudy } from './air-study.js';
import { judgeDoors } from './judge-doors.js';
import { judgeMovingAir } from './judge-moving-air.js';
import { judgeNet } from './judge-net.js';

/**
 * Judges what the air of a house does beside its appliances, on both signs of pressure.
 *
 * Suction on the ground and on a garage wall, net flow by climate where powered make-up air pushes or exhaust
 * pulls, the force on doors, velocities of make-up air, the flow of hoods. They are guidance; none clears a house.
 *
 * @param compiled - the compiled house
 * @param study - its numbers, by `airStudy`
 * @param facts - what the house file does not say
 * @returns findings, ground and garage first
 */
export function judgeAir(
  compiled: CompiledHouse,
  study: AirStudy,
  facts: AirFacts = {},
): readonly RuleFinding[] {
  const { house } = compiled;
  return [
    ...onTheGround(house).flatMap((zone) => {
      const range = study.range.zones.find((each) => each.zone === zone);
      return range === undefined
        ? []
        : [judgeSoilGasSuction({ zone, pressurePa: range.lowest.pressurePa })];
    }),
    ...garageWalls(house).flatMap((wall) => againstGarage(house, wall, study)),
    ...judgeNet(house, study, facts.climate),
    ...judgeDoors(house, study, { ...facts, lowestZones: lowestLiving(house) }),
    ...judgeMovingAir(house, study, facts),
  ];
}

function againstGarage(
  house: House,
  [zone, garage]: readonly [string, string],
  { differences }: AirStudy,
): readonly RuleFinding[] {
  const found = differences.pairs.find(
    ({ between }) => between[0] === zone && between[1] === garage,
  );
  if (found === undefined) return [];
  const finding = judgeGarageWall({ zone, againstGaragePa: found.leastPa });
  const floor = (id: string) => house.zones.find((each) => each.id === id)?.floorHeightM;
  return [
    {
      ...finding,
      notes: [
        ...finding.notes,
        ...(floor(zone) === floor(garage)
          ? []
          : ['Each pressure is that at its own floor; the floors stand at different heights.']),
        ...(differences.method === 'bounded'
          ? ['The difference is only bounded, and may be far smaller.']
          : []),
      ],
    },
  ];
}

/** Basements, and rooms of the lowest floor that have neither basement nor crawl space below them. */
function onTheGround(house: House): readonly string[] {
  const basements = house.zones.filter(({ kind }) => kind === 'basement').map(({ id }) => id);
  const below = house.zones.some(({ kind }) => kind === 'crawl space' || kind === 'basement');
  return below ? basements : lowestLiving(house);
}

function lowestLiving(house: House): readonly string[] {
  const rooms = house.zones.filter(
    ({ kind }) => insideZoneKinds.includes(kind) && kind !== 'basement' && kind !== 'closet',
  );
  const lowestM = Math.min(...rooms.map(({ floorHeightM }) => floorHeightM));
  return rooms.filter(({ floorHeightM }) => floorHeightM === lowestM).map(({ id }) => id);
}

import type { FlowLawDescription } from '@evendraft/airflow';
import type { ForcedAirSystem } from '../forced-air.js';
import type { House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HouseLink, HousePaths, Junction, LinkRole } from './house-link.js';
import { outletNode } from './house-nodes.js';
import { linkId } from './link-id.js';

/**
 * Links of a forced-air system: its return and supply ducts are a junction each, at the middle of the first room
 * with a return; between them stands the air handler, running or standing; registers and leaks are always open.
 *
 * @param house - the house
 * @param system - the forced-air system
 * @returns its links and junctions
 */
export function forcedAirPath(house: House, system: ForcedAirSystem): HousePaths {
  const { id, origin, supplies, returns, leaks } = system;
  const main = returns.reduce((most, each) => (each.share > most.share ? each : most)).zone;
  const zoneHeight = house.zones.find((zone) => zone.id === main)?.heightM ?? 0;
  const heightM = floorOf(house, main) + zoneHeight / 2;
  const junction = (n: number): Junction => ({
    id: `@junction ${id} ${n}`,
    origin,
    item: id,
    heightM,
    airOf: main,
  });
  const junctions = [junction(1), junction(2)] as const;
  const [back, supply] = junctions.map((each) => each.id) as [string, string];
  const link = (
    name: string,
    of: {
      readonly from: string;
      readonly to: string;
      readonly law: FlowLawDescription;
      readonly heightM?: number;
    },
    role: LinkRole = { kind: 'part', id, part: name, when: 'always' },
  ): HouseLink => {
    const { from, to, law } = of;
    const at = of.heightM ?? heightM;
    return {
      description: {
        id: linkId(role.kind, id, name),
        origin,
        from,
        to,
        fromHeightM: at,
        toHeightM: at,
        law,
      },
      role,
    };
  };
  return {
    links: [
      link(
        'running',
        {
          from: back,
          to: supply,
          law: system.runningLaw,
        },
        { kind: 'air handler', id, stand: 'running' },
      ),
      link(
        'standing',
        { from: back, to: supply, law: system.standingLaw },
        { kind: 'air handler', id, stand: 'standing' },
      ),
      ...supplies.map(({ zone, law }) =>
        link(`supply ${zone}`, { from: supply, to: zone, law, heightM: floorOf(house, zone) }),
      ),
      ...returns.map(({ zone, law }) =>
        link(`return ${zone}`, { from: zone, to: back, law, heightM: floorOf(house, zone) }),
      ),
      ...leaks.map(({ side, to, law }, i) =>
        link(`${side} leak ${i + 1}`, {
          from: side === 'supply' ? supply : back,
          to: outletNode(to),
          law,
        }),
      ),
    ],
    junctions,
  };
}

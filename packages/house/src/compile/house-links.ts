import type { FlowLawDescription } from '@evendraft/airflow';
import type { LinkDescription } from '@evendraft/network';
import type { Device, House, LeakShare, MakeUpOpening, Opening } from '../house.js';
import { faces, outletNode } from './house-nodes.js';

/** When a link of the network is part of a state. */
export type LinkRole =
  | { readonly kind: 'leak' }
  | { readonly kind: 'opening'; readonly id: string }
  | { readonly kind: 'door'; readonly id: string; readonly position: 'open' | 'shut' }
  | { readonly kind: 'device'; readonly id: string; readonly speed: string }
  | { readonly kind: 'device off'; readonly id: string }
  | { readonly kind: 'make-up'; readonly id: string; readonly damper: 'open' | 'closed' }
  | { readonly kind: 'ventilator'; readonly id: string };

/** A link of the compiled network with the part of the house it stands for. */
export interface HouseLink {
  readonly description: LinkDescription;
  readonly role: LinkRole;
}

/** Wall leakage is spread evenly over the height, as this many strips with the leak at mid-height. */
const wallStrips = 3;

/**
 * Every link that any state of the house may need. States switch them on and off; none is ever added.
 *
 * @param house - the house
 * @param leakCoefficientM3PerSPaN - coefficient of the whole remaining leakage in the first case [m3/(s Pa^n)]
 * @returns links in a fixed order
 */
export function houseLinks(house: House, leakCoefficientM3PerSPaN: number): readonly HouseLink[] {
  const floor = new Map(house.zones.map((zone) => [zone.id, zone.floorHeightM]));
  const height = new Map(house.zones.map((zone) => [zone.id, zone.heightM]));
  const floorOf = (zone: string): number => floor.get(zone) ?? 0;

  const link = (options: {
    readonly id: string;
    readonly origin: string;
    readonly from: string;
    readonly to: string;
    readonly heightM: number;
    readonly law: FlowLawDescription;
    readonly role: LinkRole;
  }): HouseLink => {
    const { role, heightM, ...description } = options;
    return { description: { ...description, fromHeightM: heightM, toHeightM: heightM }, role };
  };

  const leak = (share: LeakShare): readonly HouseLink[] => {
    const zoneHeight = height.get(share.zone) ?? 0;
    const base = floorOf(share.zone);
    const onWalls = share.surface === 'walls';
    const nodes =
      onWalls && share.to.kind === 'outdoors'
        ? faces.map((face) => `@${face}`)
        : [
            share.surface === 'ceiling' && share.to.kind === 'outdoors'
              ? '@roof'
              : outletNode(share.to),
          ];
    const heights = onWalls
      ? Array.from({ length: wallStrips }, (_, i) => base + ((i + 0.5) / wallStrips) * zoneHeight)
      : [share.surface === 'ceiling' ? base + zoneHeight : base];
    const coefficient = (leakCoefficientM3PerSPaN * share.share) / (nodes.length * heights.length);
    return nodes.flatMap((to) =>
      heights.map((heightM, strip) =>
        link({
          id: `leak ${share.zone} ${share.surface} ${to} ${strip + 1}`,
          origin: share.origin,
          from: share.zone,
          to,
          heightM,
          law: {
            kind: 'powerLaw',
            coefficientM3PerSPaN: coefficient,
            exponent: house.airtightness.exponent,
          },
          role: { kind: 'leak' },
        }),
      ),
    );
  };

  const through = (
    item: Pick<Opening, 'id' | 'origin' | 'zone' | 'to' | 'heightM'>,
    part: { readonly law: FlowLawDescription; readonly role: LinkRole; readonly suffix: string },
  ): HouseLink => {
    const { law, role, suffix } = part;
    const inward = law.kind === 'oneWayDamper';
    const outlet = outletNode(item.to);
    return link({
      id: `${item.id}${suffix}`,
      origin: item.origin,
      from: inward ? outlet : item.zone,
      to: inward ? item.zone : outlet,
      heightM: floorOf(item.zone) + item.heightM,
      law,
      role,
    });
  };

  const device = (d: Device): readonly HouseLink[] => {
    const outlet = outletNode(d.to);
    const speeds = d.speeds.map((speed) =>
      link({
        id: `${d.id} at ${speed.name}`,
        origin: d.origin,
        from: d.direction === 'exhaust' ? d.zone : outlet,
        to: d.direction === 'exhaust' ? outlet : d.zone,
        heightM: floorOf(d.zone) + d.heightM,
        law: speed.law,
        role: { kind: 'device', id: d.id, speed: speed.name },
      }),
    );
    const off = d.offLaw
      ? [through(d, { law: d.offLaw, role: { kind: 'device off', id: d.id }, suffix: ' off' })]
      : [];
    return [...speeds, ...off];
  };

  const makeUp = (m: MakeUpOpening): readonly HouseLink[] => {
    const role = (damper: 'open' | 'closed'): LinkRole => ({ kind: 'make-up', id: m.id, damper });
    const closed = m.closedLaw
      ? [through(m, { law: m.closedLaw, role: role('closed'), suffix: ' closed' })]
      : [];
    return [through(m, { law: m.openLaw, role: role('open'), suffix: ' open' }), ...closed];
  };

  return [
    ...house.leakShares.filter((share) => share.share > 0).flatMap(leak),
    ...house.openings.map((o) =>
      through(o, { law: o.law, role: { kind: 'opening', id: o.id }, suffix: '' }),
    ),
    ...house.doors.flatMap((door) =>
      (['open', 'shut'] as const).map((position) =>
        link({
          id: `${door.id} ${position}`,
          origin: door.origin,
          from: door.between[0],
          to: door.between[1],
          heightM: Math.max(floorOf(door.between[0]), floorOf(door.between[1])),
          law: door[position],
          role: { kind: 'door', id: door.id, position },
        }),
      ),
    ),
    ...house.devices.flatMap(device),
    ...house.makeUpOpenings.flatMap(makeUp),
    ...house.ventilators.flatMap((v) =>
      [
        {
          way: 'supply',
          from: '@outdoors',
          to: v.supplyZone,
          zone: v.supplyZone,
          flow: v.supplyFlowM3PerS,
        },
        {
          way: 'exhaust',
          from: v.exhaustZone,
          to: '@outdoors',
          zone: v.exhaustZone,
          flow: v.exhaustFlowM3PerS,
        },
      ].map(({ way, from, to, zone, flow }) =>
        link({
          id: `${v.id} ${way}`,
          origin: v.origin,
          from,
          to,
          heightM: floorOf(zone),
          law: { kind: 'fixedFlow', volumeFlowM3PerS: flow },
          role: { kind: 'ventilator', id: v.id },
        }),
      ),
    ),
  ];
}

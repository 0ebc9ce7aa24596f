import { afterTest, type Device, type Door, type House } from '@evendraft/house';
import type { DoorLeaf } from '../door-force.js';
import type { DuctRun } from '../sized/duct-run.js';
import { freeName } from '../sized/free-name.js';
import { motorizedMakeUp } from '../sized/make-up-remedies.js';

/** A house with its dryer in one arrangement. */
export interface DryerArrangement {
  readonly name:
    | 'as it is'
    | 'with its own make-up duct'
    | 'condensing or heat-pump dryer'
    | 'closet, door shut, no opening'
    | 'closet, door shut, 100 in² opening'
    | 'closet, louvred door shut';
  readonly house: House;
  /** Zone in which the dryer stands. */
  readonly zone: string;
}

/** 100 in². Source: IRC and fuel gas code on dryers in closets; California Mechanical Code 2013, 504.3.1, read. */
const codeOpeningM2 = 100 * 0.0254 ** 2;
/** Free share of a leaf with wooden louvres all over [-]. Source: NFPA 54-2012, 9.3.7, read. */
const louvreShare = 0.25;
/** Height of the gap below a door [m]; our choice. */
const undercutM = 0.01;
/** Discharge coefficient of a sharp-edged opening [-]. Source: ASHRAE Handbook Fundamentals, chapter 16, from memory. */
const sharpEdge = 0.6;
/** Floor of a closet for a dryer [m²]; our choice. */
const closetAreaM2 = 1.5;

/**
 * The house with its dryer in every arrangement, made after its airtightness test.
 *
 * @param asTested - the house
 * @param of - the dryer, the way and size of its make-up duct, the door of its closet
 * @returns the arrangements, the house as it is first
 */
export function dryerArrangements(
  asTested: House,
  of: {
    readonly dryer: Device;
    readonly run: DuctRun;
    readonly diameterM: number;
    readonly leaf: DoorLeaf;
  },
): readonly DryerArrangement[] {
  const { dryer, run, diameterM, leaf } = of;
  const { zone, id } = dryer;
  const house = afterTest(asTested);
  const makeUp = motorizedMakeUp(house, { zone, run, opensWith: { driver: id } });
  const closet = (name: DryerArrangement['name'], freeAreaM2: number): DryerArrangement =>
    inCloset(house, { name, dryer, freeAreaM2, leaf });
  return [
    { name: 'as it is', house, zone },
    { name: 'with its own make-up duct', house: makeUp.houseWith(diameterM), zone },
    { name: 'condensing or heat-pump dryer', house: withoutExhaust(house, dryer), zone },
    closet('closet, door shut, no opening', 0),
    closet('closet, door shut, 100 in² opening', codeOpeningM2),
    closet('closet, louvred door shut', louvreShare * leaf.widthM * leaf.heightM),
  ];
}

function withoutExhaust(house: House, { id }: Device): House {
  return {
    ...house,
    devices: house.devices.flatMap((device) => {
      if (device.id !== id) return [device];
      // Nothing is left of its duct: neither path nor leakage while it is off.
      const { path: _path, offLaw: _offLaw, ...rest } = device;
      return [{ ...rest, kind: 'condensing dryer' as const, speeds: [] }];
    }),
  };
}

function inCloset(
  house: House,
  of: {
    readonly name: DryerArrangement['name'];
    readonly dryer: Device;
    readonly freeAreaM2: number;
    readonly leaf: DoorLeaf;
  },
): DryerArrangement {
  const { name, dryer, freeAreaM2, leaf } = of;
  const room = house.zones.find(({ id }) => id === dryer.zone)!;
  const zone = freeName(house, 'dryer closet');
  const door: Door = {
    id: freeName(house, 'dryer closet door'),
    origin: `remedies.${zone}`,
    between: [room.id, zone],
    shut: hole(undercutM * leaf.widthM + freeAreaM2),
    open: hole(leaf.widthM * leaf.heightM),
    positions: ['shut'],
    baselinePosition: 'shut',
  };
  return {
    name,
    zone,
    house: {
      ...house,
      zones: [
        ...house.zones,
        {
          ...room,
          id: zone,
          origin: `remedies.${zone}`,
          kind: 'closet',
          volumeM3: closetAreaM2 * room.heightM,
        },
      ],
      doors: [...house.doors, door],
      devices: house.devices.map((device) =>
        device.id === dryer.id ? { ...device, zone } : device,
      ),
    },
  };
}

function hole(areaM2: number): Door['shut'] {
  return { kind: 'orifice', areaM2, dischargeCoefficient: sharpEdge };
}

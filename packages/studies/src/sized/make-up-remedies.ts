import {
  gravityDamperLaws,
  motorizedDamperLaws,
  standardRoundSizes,
  typicalDampers,
  type DamperLeakage,
  type DamperLeakageClass,
  type FlowLawDescription,
  type TypicalDamper,
} from '@evendraft/airflow';
import type { Assumption, House, Interlock, Outlet, PathPart } from '@evendraft/house';
import type { Remedy } from '../remedy.js';
import { StudyArgumentError } from '../study-argument-error.js';
import { ductRunAssumptions, ductRunLaw, sourceOf, type DuctRun } from './duct-run.js';
import { freeName } from './free-name.js';

/** Where make-up air comes in. */
export interface MakeUpPlace {
  readonly zone: string;
  /** Where it comes from; outdoors without wind when absent. */
  readonly from?: Outlet;
  /** Above the zone's floor; 0.3 when absent [m]. */
  readonly heightM?: number;
}

/** A duct at that place, of a size to be found. */
export interface MakeUpDuct extends MakeUpPlace {
  readonly run: DuctRun;
  /** Inner diameters offered; those commonly sold when absent [m]. */
  readonly diametersM?: readonly number[];
}

/** Discharge coefficient of a sharp-edged opening [-]. Source: ASHRAE Handbook Fundamentals, chapter 16, from memory. */
const sharpEdge = 0.6;
const flap = typicalDampers['barometric inlet'];
const motor = typicalDampers['motorized damper'];

/** Suction that opens a flap fully by that which begins to open it, as of the typical flap [-]; our choice. */
const fullyOpenRatio = 4;

const ours = { document: 'this project', status: 'our choice' } as const;

/**
 * A hole that is always open, of any area.
 *
 * @param house - the house
 * @param place - where it is
 * @returns the remedy; its size is the free area [m²]
 */
export function passiveOpening(house: House, place: MakeUpPlace): Remedy {
  const item = freeName(house, 'make-up opening');
  return {
    kind: 'passive opening',
    what: `passive opening to the ${place.zone}, always open`,
    dimension: 'area',
    offered: { kind: 'any', least: 1e-4, most: 1 },
    wanted: 'smallest',
    item,
    built: { from: fromOf(place) },
    assumptions: [
      {
        origin: item,
        what: 'discharge coefficient of the free area',
        value: { si: sharpEdge, dimension: 'ratio' },
        source: {
          document: 'ASHRAE Handbook Fundamentals, chapter 16, sharp-edged opening',
          status: 'memory',
        },
      },
    ],
    houseWith: (areaM2) => ({
      ...house,
      openings: [...house.openings, openingAt(place, item, hole(areaM2))],
    }),
  };
}

/**
 * A round duct that is always open, of a size that is sold.
 *
 * @param house - the house
 * @param duct - its place, run and sizes
 * @returns the remedy; its size is the inner diameter [m]
 */
export function makeUpDuct(house: House, duct: MakeUpDuct): Remedy {
  const item = freeName(house, 'make-up duct');
  return {
    ...ductRemedy(duct, item),
    kind: 'make-up duct',
    what: `make-up duct to the ${duct.zone}, always open`,
    houseWith: (diameterM) => ({
      ...house,
      openings: [...house.openings, openingAt(duct, item, ductRunLaw(duct.run, diameterM))],
    }),
  };
}

/** A weighted flap in a make-up duct. */
export interface MakeUpFlap {
  /** Suction at which it begins to open [Pa]. */
  readonly opensAtPa: number;
  /** Suction from which it is fully open; four times that at which it begins to open when absent [Pa]. */
  readonly fullyOpensAtPa?: number;
  /** Leakage when shut; that of a typical flap when absent. */
  readonly leakage?: DamperLeakageClass | DamperLeakage;
}

/**
 * A round duct behind a weighted flap that the suction of the house opens.
 *
 * @param house - the house
 * @param duct - its place, run and sizes, and the flap
 * @returns the remedy; its size is the inner diameter of duct and flap [m]
 * @throws StudyArgumentError where the flap does not open in order
 */
export function barometricMakeUp(house: House, duct: MakeUpDuct & MakeUpFlap): Remedy {
  const item = freeName(house, 'barometric make-up');
  const { opensAtPa, leakage = leakageOf(flap) } = duct;
  if (!(opensAtPa > 0)) throw new StudyArgumentError('opensAtPa', opensAtPa, 'above 0');
  const fullyOpensAtPa = duct.fullyOpensAtPa ?? fullyOpenRatio * opensAtPa;
  if (!(fullyOpensAtPa > opensAtPa)) {
    throw new StudyArgumentError('fullyOpensAtPa', fullyOpensAtPa, `above ${opensAtPa}`);
  }
  const remedy = ductRemedy(duct, item);
  return {
    ...remedy,
    kind: 'barometric make-up duct',
    opensAtPa,
    what: `make-up duct to the ${duct.zone} behind a barometric damper`,
    assumptions: [
      ...remedy.assumptions,
      ...damperAssumptions(item, flap, duct.leakage === undefined),
      ...(duct.fullyOpensAtPa === undefined
        ? [
            {
              origin: item,
              what: 'suction from which the flap is fully open',
              value: { si: fullyOpensAtPa, dimension: 'pressure' as const },
              source: sourceOf(flap),
            },
          ]
        : []),
    ],
    houseWith(diameterM) {
      const { working } = gravityDamperLaws({
        areaM2: circle(diameterM),
        openLossCoefficient: flap.openLossCoefficient,
        crackingPressurePa: opensAtPa,
        fullyOpenPressurePa: fullyOpensAtPa,
        leakage,
      });
      return {
        ...house,
        openings: [
          ...house.openings,
          { ...openingAt(duct, item, working), parts: [ductPart(duct.run, diameterM)] },
        ],
      };
    },
  };
}

/**
 * A round duct behind a gasketed damper that a motor opens with a device.
 *
 * @param house - the house
 * @param duct - its place, run and sizes, what opens it, and its leakage when shut
 * @returns the remedy; its size is the inner diameter [m]
 */
export function motorizedMakeUp(
  house: House,
  duct: MakeUpDuct & {
    readonly opensWith: Interlock;
    readonly leakage?: DamperLeakageClass | DamperLeakage;
  },
): Remedy {
  const item = freeName(house, 'motorized make-up');
  const { leakage = leakageOf(motor) } = duct;
  const remedy = ductRemedy(duct, item);
  return {
    ...remedy,
    kind: 'motorized make-up duct',
    what: `make-up duct to the ${duct.zone} behind a motorized damper that opens with the ${duct.opensWith.driver}`,
    assumptions: [
      ...remedy.assumptions,
      ...damperAssumptions(item, motor, duct.leakage === undefined),
    ],
    houseWith(diameterM) {
      const { open, closed } = motorizedDamperLaws({
        areaM2: circle(diameterM),
        openLossCoefficient: motor.openLossCoefficient,
        leakage,
      });
      return {
        ...house,
        makeUpOpenings: [
          ...house.makeUpOpenings,
          {
            ...placed(duct, item),
            openLaw: open,
            closedLaw: closed,
            parts: [ductPart(duct.run, diameterM)],
            duringTest: 'sealed',
            interlock: duct.opensWith,
          },
        ],
      };
    },
  };
}

/**
 * A fan that blows outdoor air in with a device, in proportion to the device's rated flow at each speed.
 *
 * @param house - the house
 * Its control holds the flow within a band: suction is worst at the lower end, pressure above outdoors at the upper.
 *
 * @param supply - its place, the device it follows, and how far its control may fall short of the flow that is set
 * and go beyond it, as shares of that flow; 0.1 each when absent [-]
 * @returns the remedy; its size is the flow set at the device's highest speed [m³/s]
 * @throws StudyArgumentError where it follows nothing that moves air, or its band is upside down
 */
export function poweredMakeUp(
  house: House,
  supply: MakeUpPlace & {
    readonly follows: string;
    readonly shortfall?: number;
    readonly overshoot?: number;
  },
): Remedy {
  const item = freeName(house, 'powered make-up');
  const { shortfall = 0.1, overshoot = 0.1 } = supply;
  if (!(shortfall >= 0 && shortfall < 1)) {
    throw new StudyArgumentError('shortfall', shortfall, '0 to less than 1');
  }
  if (!(overshoot >= 0)) throw new StudyArgumentError('overshoot', overshoot, '0 or more');
  const speeds = house.devices.find(({ id }) => id === supply.follows)?.speeds ?? [];
  if (speeds.length === 0) {
    throw new StudyArgumentError('follows', supply.follows, 'the id of a device with a flow');
  }
  const highest = Math.max(...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
  const houseAt = (flowM3PerS: number, shareOfSet: number): House => ({
    ...house,
    devices: [
      ...house.devices,
      {
        ...placed(supply, item),
        kind: 'supply fan',
        direction: 'supply',
        speeds: speeds.map(({ name, ratedFlowM3PerS }) => {
          const set = (flowM3PerS * ratedFlowM3PerS) / highest;
          return {
            name,
            ratedFlowM3PerS: set,
            law: { kind: 'fixedFlow', volumeFlowM3PerS: set * shareOfSet },
          };
        }),
        duringTest: 'sealed',
        interlock: { driver: supply.follows },
        continuous: false,
      },
    ],
  });
  return {
    kind: 'powered make-up air',
    what: `powered make-up air to the ${supply.zone} that follows the ${supply.follows}`,
    dimension: 'volume flow',
    offered: { kind: 'any', least: 0.01 * highest, most: 2 * highest },
    wanted: 'smallest',
    item,
    built: { from: fromOf(supply) },
    assumptions: [
      {
        origin: item,
        what: 'shortfall of its control, as a share of the flow that is set',
        value: { si: shortfall, dimension: 'ratio' },
        source: ours,
      },
      {
        origin: item,
        what: 'overshoot of its control, as a share of the flow that is set',
        value: { si: overshoot, dimension: 'ratio' },
        source: ours,
      },
    ],
    houseWith: (flowM3PerS) => houseAt(flowM3PerS, 1 - shortfall),
    houseAtMost: (flowM3PerS) => houseAt(flowM3PerS, 1 + overshoot),
  };
}

function ductRemedy(
  duct: MakeUpDuct,
  item: string,
): Pick<Remedy, 'dimension' | 'offered' | 'wanted' | 'item' | 'built' | 'assumptions'> {
  return {
    built: { from: fromOf(duct), run: duct.run },
    dimension: 'diameter',
    offered: { kind: 'listed', sizes: duct.diametersM ?? standardRoundSizes },
    wanted: 'smallest',
    item,
    assumptions: ductRunAssumptions(duct.run, item),
  };
}

function fromOf({ from = { kind: 'outdoors' } }: MakeUpPlace): Outlet {
  return from;
}

function placed(
  place: MakeUpPlace,
  id: string,
): { id: string; origin: string; zone: string; to: Outlet; heightM: number } {
  const { zone, heightM = 0.3 } = place;
  return { id, origin: `remedies.${id}`, zone, to: fromOf(place), heightM };
}

function openingAt(
  place: MakeUpPlace,
  id: string,
  law: FlowLawDescription,
): House['openings'][number] {
  return { ...placed(place, id), law, duringTest: 'sealed' };
}

function hole(areaM2: number): FlowLawDescription {
  return { kind: 'orifice', areaM2, dischargeCoefficient: sharpEdge };
}

function circle(diameterM: number): number {
  return (Math.PI / 4) * diameterM ** 2;
}

function ductPart(run: DuctRun, diameterM: number): PathPart {
  return { name: 'duct', law: ductRunLaw(run, diameterM), riseM: 0 };
}

function leakageOf({ leakageM3PerSM2, leakagePressurePa }: TypicalDamper): DamperLeakage {
  return { leakageM3PerSM2, pressurePa: leakagePressurePa };
}

function damperAssumptions(
  origin: string,
  damper: TypicalDamper,
  withLeakage: boolean,
): readonly Assumption[] {
  const source = sourceOf(damper);
  const { openLossCoefficient, leakageM3PerSM2, leakagePressurePa } = damper;
  return [
    {
      origin,
      what: 'loss coefficient of the open damper',
      value: { si: openLossCoefficient, dimension: 'ratio' },
      source,
    },
    ...(withLeakage
      ? [
          {
            origin,
            what: 'leakage of the shut damper',
            value: `${leakageM3PerSM2} m³/s for each m² at ${leakagePressurePa} Pa`,
            source,
          },
        ]
      : []),
  ];
}

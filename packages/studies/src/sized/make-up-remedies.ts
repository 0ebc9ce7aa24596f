import type { FlowLawDescription } from '@evendraft/airflow';
import type { Assumption, House, Interlock, Outlet } from '@evendraft/house';
import type { Remedy } from '../remedy.js';
import { commonDuctDiametersM, ductRunAssumptions, ductRunLaw, type DuctRun } from './duct-run.js';
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
/** Density of reference air [kg/m3]. */
const referenceDensity = 1.2041;
/** Loss of an open damper blade in velocity pressures [-]; our choice. */
const openDamperLoss = 0.5;
/** Leakage of a closed damper with a gasket, class 2 of EN 1751: 0.04 m3/s per m2 at 100 Pa (restated in public). */
const closedLeakage = { flowM3PerSM2: 0.04, pressurePa: 100 };

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

/**
 * A round duct behind a weighted flap that the suction of the house opens.
 *
 * @param house - the house
 * @param duct - its place, run and sizes, and the suction at which the flap begins to open [Pa]
 * @returns the remedy; its size is the inner diameter of duct and flap [m]
 */
export function barometricMakeUp(
  house: House,
  duct: MakeUpDuct & { readonly opensAtPa: number },
): Remedy {
  const item = freeName(house, 'barometric make-up');
  return {
    ...ductRemedy(duct, item),
    kind: 'barometric make-up duct',
    what: `make-up duct to the ${duct.zone} behind a barometric damper`,
    opensAtPa: duct.opensAtPa,
    houseWith(diameterM) {
      const areaM2 = circle(diameterM);
      const flap: FlowLawDescription = {
        kind: 'oneWayDamper',
        coefficientM3PerSPaN: sharpEdge * areaM2 * Math.sqrt(2 / referenceDensity),
        exponent: 0.5,
        crackingPressurePa: duct.opensAtPa,
        closedLeakage: closedDamper(areaM2),
      };
      const part = { name: 'duct', law: ductRunLaw(duct.run, diameterM), riseM: 0 };
      return {
        ...house,
        openings: [...house.openings, { ...openingAt(duct, item, flap), parts: [part] }],
      };
    },
  };
}

/**
 * A round duct behind a gasketed damper that a motor opens with a device.
 *
 * @param house - the house
 * @param duct - its place, run and sizes, and what opens it
 * @returns the remedy; its size is the inner diameter [m]
 */
export function motorizedMakeUp(
  house: House,
  duct: MakeUpDuct & { readonly opensWith: Interlock },
): Remedy {
  const item = freeName(house, 'motorized make-up');
  return {
    ...ductRemedy(duct, item),
    kind: 'motorized make-up duct',
    what: `make-up duct to the ${duct.zone} behind a motorized damper that opens with the ${duct.opensWith.driver}`,
    houseWith: (diameterM) => ({
      ...house,
      makeUpOpenings: [
        ...house.makeUpOpenings,
        {
          ...placed(duct, item),
          openLaw: ductRunLaw(duct.run, diameterM, openDamperLoss),
          closedLaw: { kind: 'powerLaw', ...closedDamper(circle(diameterM)) },
          duringTest: 'sealed',
          interlock: duct.opensWith,
        },
      ],
    }),
  };
}

/**
 * A fan that blows outdoor air in with a device, in proportion to the device's rated flow at each speed.
 *
 * @param house - the house
 * @param supply - its place, the device it follows, and how far its control may fall short, as a share of the
 * flow that is set; 0.1 when absent [-]
 * @returns the remedy; its size is the flow set at the device's highest speed [m³/s]
 */
export function poweredMakeUp(
  house: House,
  supply: MakeUpPlace & { readonly follows: string; readonly shortfall?: number },
): Remedy {
  const item = freeName(house, 'powered make-up');
  const { shortfall = 0.1 } = supply;
  const speeds = house.devices.find(({ id }) => id === supply.follows)?.speeds ?? [];
  const highest = Math.max(...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
  return {
    kind: 'powered make-up air',
    what: `powered make-up air to the ${supply.zone} that follows the ${supply.follows}`,
    dimension: 'volume flow',
    offered: { kind: 'any', least: 0.01 * highest, most: 2 * highest },
    wanted: 'smallest',
    item,
    assumptions: [
      {
        origin: item,
        what: 'shortfall of its control, as a share of the flow that is set',
        value: { si: shortfall, dimension: 'ratio' },
        source: ours,
      },
    ],
    houseWith: (flowM3PerS) => ({
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
              law: { kind: 'fixedFlow', volumeFlowM3PerS: set * (1 - shortfall) },
            };
          }),
          duringTest: 'sealed',
          interlock: { driver: supply.follows },
          continuous: false,
        },
      ],
    }),
  };
}

function ductRemedy(
  duct: MakeUpDuct,
  item: string,
): Pick<Remedy, 'dimension' | 'offered' | 'wanted' | 'item'> & {
  readonly assumptions: readonly Assumption[];
} {
  return {
    dimension: 'diameter',
    offered: { kind: 'listed', sizes: duct.diametersM ?? commonDuctDiametersM },
    wanted: 'smallest',
    item,
    assumptions: ductRunAssumptions(duct.run, item),
  };
}

function placed(
  { zone, from = { kind: 'outdoors' }, heightM = 0.3 }: MakeUpPlace,
  id: string,
): { id: string; origin: string; zone: string; to: Outlet; heightM: number } {
  return { id, origin: `remedies.${id}`, zone, to: from, heightM };
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

function closedDamper(areaM2: number): { coefficientM3PerSPaN: number; exponent: number } {
  const { flowM3PerSM2, pressurePa } = closedLeakage;
  return { coefficientM3PerSPaN: (flowM3PerSM2 * areaM2) / Math.sqrt(pressurePa), exponent: 0.5 };
}

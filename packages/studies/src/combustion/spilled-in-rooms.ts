import { spilledProducts } from '@evendraft/airflow';
import type { CompiledHouse, HouseWeather } from '@evendraft/house';
import type { Balance } from '@evendraft/network';
import type { OpenFlue } from './flues-of-situation.js';
import { roomProducts, type ProductSource, type RoomProducts } from './room-products.js';

/** What spilled gas makes of the air of one zone, beyond what outdoor air holds. */
export interface RoomAir {
  readonly zone: string;
  /** Carbon monoxide by volume, when it has come to rest; null where no air passes [ppm]. */
  readonly carbonMonoxidePpm: number | null;
  /** Carbon dioxide by volume [ppm]. */
  readonly carbonDioxidePpm: number | null;
  /** Water vapour by mass of air [kg/kg]. */
  readonly waterVapourKgPerKg: number | null;
  /** Carbon monoxide at the times of the study, from clean air [ppm]. */
  readonly carbonMonoxideCoursePpm: readonly number[];
}

/** Spilled gas in all zones of a house. */
export interface SpilledInRooms {
  /** Carbon monoxide in the dry gas without excess air that was taken [ppm]. Results are in proportion to it. */
  readonly carbonMonoxideAirFreePpm: number;
  /** Times of the courses [s]. */
  readonly timesS: readonly number[];
  readonly zones: readonly RoomAir[];
}

/** Volume of a kilogram of air at 20 °C, 101,325 Pa [m3/kg], and molar masses of dry air and carbon dioxide [g/mol]. */
const airM3PerKg = 1 / 1.2041;
const molarMass = { air: 28.965, carbonDioxide: 44.0095 };
const course = { durationS: 8 * 3600, steps: 96 };

/**
 * Carbon monoxide, carbon dioxide and vapour in every zone while appliances burn on and flues stay as they are.
 *
 * All gas enters at the collar; what part of it goes up, into the room or down another flue follows from the flows of
 * the balance. Each zone is well mixed, and the burner goes on as if nothing happened: a burner that takes in its own
 * spilled gas soon makes far more carbon monoxide than was measured on it, so that this is no upper bound.
 *
 * @param compiled - the compiled house
 * @param at - balance of the whole house, its weather, its flues, and what burns how
 * @returns contents by zone of the house
 */
export function spilledInRooms(
  compiled: CompiledHouse,
  at: {
    readonly balance: Balance;
    readonly weather: HouseWeather;
    readonly flues: readonly OpenFlue[];
    readonly carbonMonoxideAirFreePpm: number;
  },
): SpilledInRooms {
  const { house, network } = compiled;
  const { balance, weather, flues, carbonMonoxideAirFreePpm } = at;
  const airKg = network.description.zones.map(
    (_, i) => (house.zones[i]?.volumeM3 ?? 0) * weather.zoneAir.densityKgPerM3[i]!,
  );
  const burning = flues.flatMap(({ flame, collarZone }) =>
    flame === undefined
      ? []
      : [
          {
            zone: collarZone,
            products: spilledProducts({
              products: flame.products,
              inputW: flame.inputW,
              spilledShare: 1,
              carbonMonoxideAirFree: carbonMonoxideAirFreePpm * 1e-6,
            }),
          },
        ],
  );
  const of = (
    read: (products: ReturnType<typeof spilledProducts>) => number,
    withCourse: boolean,
  ): RoomProducts => {
    const sources = burning.map(({ zone, products }): ProductSource => {
      return { zone, perS: read(products) };
    });
    return roomProducts({ network, balance, airKg, sources, ...(withCourse ? { course } : {}) });
  };
  const monoxide = of(({ carbonMonoxideM3PerS }) => carbonMonoxideM3PerS, true);
  const dioxide = of(({ carbonDioxideKgPerS }) => carbonDioxideKgPerS, false);
  const vapour = of(({ waterVapourKgPerS }) => waterVapourKgPerS, false);
  const ppm = 1e6 / airM3PerKg;
  const dioxidePpm = (1e6 * molarMass.air) / molarMass.carbonDioxide;
  const scaled = (value: number, factor: number): number | null =>
    Number.isFinite(value) ? value * factor : null;
  return {
    carbonMonoxideAirFreePpm,
    timesS: monoxide.course.map(({ timeS }) => timeS),
    zones: house.zones.map(({ id }, i) => ({
      zone: id,
      carbonMonoxidePpm: scaled(monoxide.steady[i]!, ppm),
      carbonDioxidePpm: scaled(dioxide.steady[i]!, dioxidePpm),
      waterVapourKgPerKg: scaled(vapour.steady[i]!, 1),
      carbonMonoxideCoursePpm: monoxide.course.map(({ content }) => content[i]! * ppm),
    })),
  };
}

/** What a flue must know of the gas in it. */
export interface FlueGas {
  /** Gas constant [J/(kg K)]. */
  readonly gasConstantJPerKgK: number;
  /** Specific heat [J/(kg K)]. */
  readonly specificHeatJPerKgK: number;
}

/**
 * Air, and flue gas of which nothing is known: it weighs within 4 % of air of its temperature.
 *
 * Source: gas constant and specific heat of dry air at room temperature, from memory.
 */
export const airAsFlueGas: FlueGas = Object.freeze({
  gasConstantJPerKgK: 287.055,
  specificHeatJPerKgK: 1006,
});

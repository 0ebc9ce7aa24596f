import { requirePositive } from '../internal/require.js';
import type { Fuel } from '../combustion/fuels.js';
import {
  productsOfCombustion,
  type CombustionProducts,
} from '../combustion/products-of-combustion.js';
import { airAsFlueGas } from './flue-gas.js';
import type { HearthStage } from './hearth-stages.js';

/** A hearth in one of its stages. */
export interface BurningHearth {
  readonly stage: HearthStage;
  readonly fuel: Fuel;
  /** Input at full fire, at the higher heating value [W]. */
  readonly fullInputW: number;
}

/** What a stage takes from the room and sends to its flue. */
export interface HearthFlow {
  /** Input in this stage [W]. */
  readonly inputW: number;
  /** Air taken from the room [kg/s]. */
  readonly airKgPerS: number;
  /** Gas to the flue [kg/s]. */
  readonly flueGasKgPerS: number;
  /** Gas above its room at that flow [K]. */
  readonly temperatureRiseK: number;
  /** Heat that it carries above its room [W]. */
  readonly heatToGasW: number;
  readonly products: CombustionProducts;
}

/**
 * Air demand and gas of a hearth in one of its stages [kg/s].
 *
 * The air is what the stage is assumed to draw when its flue draws as it should: how much it does draw follows from
 * the balance of the house, and the temperature of the gas from the same heat in that flow.
 *
 * temperature rise = share of heat to gas × input / (gas flow × specific heat)
 *
 * @param hearth - stage, fuel and input at full fire
 * @returns input, air, gas, its heat and temperature
 *
 * Source: stoichiometry and heat balance (derived); the stage's numbers name their own.
 */
export function hearthFlow(hearth: BurningHearth): HearthFlow {
  const { stage, fuel, fullInputW } = hearth;
  requirePositive('fullInputW', fullInputW);
  const inputW = fullInputW * stage.burnRateShare;
  const products = productsOfCombustion({ fuel, excessAir: stage.excessAir });
  const flueGasKgPerS = products.flueGasKgPerJ * inputW;
  const heatToGasW = stage.heatToGasShare * inputW;
  return {
    inputW,
    airKgPerS: products.airKgPerJ * inputW,
    flueGasKgPerS,
    temperatureRiseK: heatToGasW / (flueGasKgPerS * airAsFlueGas.specificHeatJPerKgK),
    heatToGasW,
    products,
  };
}

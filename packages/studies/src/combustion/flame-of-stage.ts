import {
  fuels,
  hearthStages,
  productsOfCombustion,
  type CombustionProducts,
  type HearthStageName,
} from '@evendraft/airflow';
import { fuelName, type Appliance, type FlueStage } from '@evendraft/house';

/** What burns in one stage of an appliance, and what its gas brings to the flue. */
export interface Flame {
  /** At the higher heating value [W]. */
  readonly inputW: number;
  readonly products: CombustionProducts;
  /** Gas that cannot be less while it burns so: of the burner, or of the wood without excess air [kg/s]. */
  readonly gasFlowKgPerS: number;
  /** Temperature of that gas before room air dilutes it [°C]. */
  readonly gasTemperatureC: number;
}

/** Carbon dioxide before the draft hood, of the typical flue gases of `airflow` [-]. */
const burnerCarbonDioxide = { gas: 0.08, oil: 0.09 } as const;

/**
 * The flame of an appliance in a stage; `undefined` while nothing burns.
 *
 * A burner's gas is what the house says. A fire takes what its flue draws, so that its heat counts: the share of it that
 * the stage sends to its gas is carried by the gas that the wood gives without excess air, and whatever the flue draws
 * beyond that through the opening dilutes it. The mass of the wood, some hundredths of the flow, is left out.
 *
 * @param appliance - vent and fuel
 * @param stage - one of the stages of its flue
 * @param roomC - temperature of its room [°C]
 * @returns input, products, and the gas
 *
 * Source: heat balance (derived); the stages name their own.
 */
export function flameOfStage(
  appliance: Pick<Appliance, 'vent' | 'fuel'>,
  stage: FlueStage,
  roomC: number,
): Flame | undefined {
  const { gas, ventFlowKgPerS, gasFlowKgPerS } = stage;
  if (gas === undefined || ventFlowKgPerS === 0) return undefined;
  const isFire = appliance.vent === 'open hearth' || appliance.vent === 'closed stove';
  const fuel = fuels[fuelName(appliance.fuel, isFire)];
  if (gasFlowKgPerS > 0) {
    const carbonDioxideFraction =
      appliance.fuel === 'oil' ? burnerCarbonDioxide.oil : burnerCarbonDioxide.gas;
    const products = productsOfCombustion({ fuel, carbonDioxideFraction });
    return {
      inputW: gasFlowKgPerS / products.flueGasKgPerJ,
      products,
      gasFlowKgPerS,
      gasTemperatureC: roomC + gas.aboveRoomK,
    };
  }
  const products = productsOfCombustion({ fuel, excessAir: excessAirOf(appliance, stage) });
  const inputW = ventFlowKgPerS / products.flueGasKgPerJ;
  const undiluted = productsOfCombustion({ fuel, excessAir: 0 }).flueGasKgPerJ * inputW;
  return {
    inputW,
    products,
    gasFlowKgPerS: undiluted,
    gasTemperatureC: roomC + (gas.aboveRoomK * ventFlowKgPerS) / undiluted,
  };
}

/** Excess air of a stage by its name, which may tell how the doors stand. */
function excessAirOf({ vent }: Pick<Appliance, 'vent'>, { name }: FlueStage): number {
  const kind =
    vent === 'open hearth'
      ? 'open hearth'
      : name.endsWith('door open')
        ? 'wood stove, door open'
        : 'wood stove, door shut';
  const stages = hearthStages[kind];
  const plain = name.split(',')[0] as HearthStageName;
  return (Object.hasOwn(stages, plain) ? stages[plain] : stages['full fire']).excessAir;
}

import type { Provenance } from '../provenance.js';
import type { FuelName } from './fuels.js';

/** Kinds of appliance for which a typical flue gas is stated. */
export type FlueGasKind = 'gas, before the draft hood' | 'gas, behind the draft hood' | 'oil';

/** The gas of an appliance at steady firing, where nothing was measured. */
export interface TypicalFlueGas extends Provenance {
  readonly fuel: FuelName;
  /** Carbon dioxide in the dry gas, by volume [-]. */
  readonly carbonDioxideFraction: number;
  /** Temperature above that of the room [K]. */
  readonly temperatureRiseK: number;
}

const source =
  'ASHRAE Handbook HVAC Systems and Equipment, chapter 35, typical flue gas of appliances';

/**
 * Typical flue gases of appliances at steady firing.
 *
 * Of a gas appliance, what its flame gives is the gas before the draft hood, to be mixed by `draftHoodMixing`; behind the
 * hood it holds the dilution air of a vent that draws as it should, and must not be diluted again.
 */
export const typicalFlueGases: Readonly<Record<FlueGasKind, TypicalFlueGas>> = Object.freeze({
  'gas, before the draft hood': {
    fuel: 'natural gas',
    carbonDioxideFraction: 0.08,
    temperatureRiseK: 400 / 1.8,
    source: `${source}: that of an appliance without a draft hood, 8 % CO2 and 400 °F of rise`,
    status: 'memory',
  },
  'gas, behind the draft hood': {
    fuel: 'natural gas',
    carbonDioxideFraction: 0.053,
    temperatureRiseK: 300 / 1.8,
    source: `${source}: 5.3 % CO2 and 300 °F of rise`,
    status: 'memory',
  },
  oil: {
    fuel: 'fuel oil',
    carbonDioxideFraction: 0.09,
    temperatureRiseK: 500 / 1.8,
    source: `${source}: 9 % CO2 and 500 °F of rise`,
    status: 'memory',
  },
});

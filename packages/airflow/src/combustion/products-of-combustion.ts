import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireBetween, requireNotNegative } from '../internal/require.js';
import { atomicMasses } from './atomic-masses.js';
import { fuelElements } from './fuel-elements.js';
import type { Fuel } from './fuels.js';

/** A fuel burnt completely, with the air that its flue gas tells of. */
export type Combustion = {
  readonly fuel: Fuel;
  /** Water vapour in the air by mass of dry air; dry when absent [kg/kg]. */
  readonly humidityRatioKgPerKg?: number;
} & (
  | {
      /** Air beyond what the fuel needs, as a share of that [-]. */
      readonly excessAir: number;
    }
  | {
      /** Carbon dioxide in the dry flue gas, by volume [-]. */
      readonly carbonDioxideFraction: number;
    }
  | {
      /** Oxygen in the dry flue gas, by volume [-]. */
      readonly oxygenFraction: number;
    }
);

/** What leaves a flame, by joule of input at the higher heating value. */
export interface CombustionProducts {
  /** Air beyond what the fuel needs, as a share of that [-]. */
  readonly excessAir: number;
  /** Air taken in, dilution included where the fraction was measured behind a draft hood [kg/J]. */
  readonly airKgPerJ: number;
  /** Flue gas with its vapour: kg/s per watt [kg/J]. */
  readonly flueGasKgPerJ: number;
  /** Water vapour [kg/J]. */
  readonly waterVapourKgPerJ: number;
  /** Carbon dioxide [kg/J]. */
  readonly carbonDioxideKgPerJ: number;
  /** Dry flue gas without excess air, at 20 °C and 101,325 Pa [m3/J]. */
  readonly dryStoichiometricM3PerJ: number;
  /** Carbon dioxide in the dry gas, by volume [-]. */
  readonly carbonDioxideFraction: number;
  /** Oxygen in the dry gas, by volume [-]. */
  readonly oxygenFraction: number;
  /** Water vapour in the wet gas, by volume [-]. */
  readonly waterVapourFraction: number;
  /** Gas constant of the wet gas [J/(kg K)]. */
  readonly gasConstantJPerKgK: number;
  /** Mean specific heat of the wet gas between about 20 and 200 °C [J/(kg K)]. */
  readonly specificHeatJPerKgK: number;
}

/** Oxygen in dry air, by volume [-], and the molar mass of dry air [kg/mol]. */
const oxygenInAir = 0.2095;
const airKgPerMol = 0.028965;
const oxygenKgPerMol = (2 * atomicMasses.oxygen) / 1000;
/** What of air is not oxygen, argon included. */
const restKgPerMol = (airKgPerMol - oxygenInAir * oxygenKgPerMol) / (1 - oxygenInAir);
const waterKgPerMol = (2 * atomicMasses.hydrogen + atomicMasses.oxygen) / 1000;
const carbonDioxideKgPerMol = (atomicMasses.carbon + 2 * atomicMasses.oxygen) / 1000;
const nitrogenKgPerMol = (2 * atomicMasses.nitrogen) / 1000;
const sulphurDioxideKgPerMol = (atomicMasses.sulphur + 2 * atomicMasses.oxygen) / 1000;
const molarGasConstant = 8.314462618;
/** Volume of a mole of ideal gas at 20 °C and 101,325 Pa [m3/mol]. */
const molarVolumeM3 = (molarGasConstant * 293.15) / 101325;

/** Mean specific heats between about 20 and 200 °C [J/(kg K)], from tables of gas properties, from memory. */
const specificHeats = { carbonDioxide: 920, water: 1900, oxygen: 940, rest: 1040 } as const;

/**
 * Products of complete combustion of a fuel, by joule of input [kg/J].
 *
 * C + O2 = CO2, 2 H + O/2 = H2O, S + O2 = SO2, with air of 20.95 % oxygen. Multiplied by the input in watts they are
 * flows in kg/s. What is measured behind a draft hood holds the dilution air, which counts as excess air.
 *
 * @param combustion - fuel, and either excess air or the CO2 or O2 of the dry flue gas
 * @returns masses and volumes by joule at the higher heating value, and the gas's composition and properties
 *
 * Source: stoichiometry (derived from the composition of the fuel).
 *
 * @example
 * const fuel = fuels['natural gas'];
 * productsOfCombustion({ fuel, carbonDioxideFraction: 0.053 }).flueGasKgPerJ; // => 6.76e-7
 */
export function productsOfCombustion(combustion: Combustion): CombustionProducts {
  const { fuel, humidityRatioKgPerKg = 0 } = combustion;
  requireNotNegative('humidityRatioKgPerKg', humidityRatioKgPerKg);
  const elements = fuelElements(fuel);
  const carbon = elements.carbonMolPerJ;
  const sulphur = elements.sulphurMolPerJ;
  const oxygenNeeded = carbon + elements.hydrogenMolPerJ / 4 + sulphur - elements.oxygenMolPerJ / 2;
  const airNeeded = oxygenNeeded / oxygenInAir;
  const fuelNitrogen = elements.nitrogenMolPerJ / 2;
  const dryStoichiometric = carbon + sulphur + fuelNitrogen + airNeeded * (1 - oxygenInAir);
  const extraAir = extraAirOf(combustion, { carbon, dryStoichiometric, airNeeded });

  const dry = dryStoichiometric + extraAir;
  const oxygen = oxygenInAir * extraAir;
  const rest = (1 - oxygenInAir) * (airNeeded + extraAir);
  const airKgPerJ = (airNeeded + extraAir) * airKgPerMol;
  const water =
    elements.hydrogenMolPerJ / 2 +
    elements.waterMolPerJ +
    (humidityRatioKgPerKg * airKgPerJ) / waterKgPerMol;

  const waterKg = water * waterKgPerMol;
  const carbonDioxideKg = carbon * carbonDioxideKgPerMol;
  const oxygenKg = oxygen * oxygenKgPerMol;
  const restKg =
    rest * restKgPerMol + fuelNitrogen * nitrogenKgPerMol + sulphur * sulphurDioxideKgPerMol;
  const flueGasKgPerJ = waterKg + carbonDioxideKg + oxygenKg + restKg;
  return {
    excessAir: extraAir / airNeeded,
    airKgPerJ: airKgPerJ * (1 + humidityRatioKgPerKg),
    flueGasKgPerJ,
    waterVapourKgPerJ: waterKg,
    carbonDioxideKgPerJ: carbonDioxideKg,
    dryStoichiometricM3PerJ: dryStoichiometric * molarVolumeM3,
    carbonDioxideFraction: carbon / dry,
    oxygenFraction: oxygen / dry,
    waterVapourFraction: water / (dry + water),
    gasConstantJPerKgK: ((dry + water) * molarGasConstant) / flueGasKgPerJ,
    specificHeatJPerKgK:
      (waterKg * specificHeats.water +
        carbonDioxideKg * specificHeats.carbonDioxide +
        oxygenKg * specificHeats.oxygen +
        restKg * specificHeats.rest) /
      flueGasKgPerJ,
  };
}

/** Air beyond need, by what is known of the flue gas [mol/J]. */
function extraAirOf(
  combustion: Combustion,
  flame: {
    readonly carbon: number;
    readonly dryStoichiometric: number;
    readonly airNeeded: number;
  },
): number {
  if ('excessAir' in combustion) {
    requireNotNegative('excessAir', combustion.excessAir);
    return combustion.excessAir * flame.airNeeded;
  }
  if ('carbonDioxideFraction' in combustion) {
    const { carbonDioxideFraction } = combustion;
    const most = flame.carbon / flame.dryStoichiometric;
    // Rounding of a fraction that is just the greatest must not make it impossible.
    if (!(carbonDioxideFraction > 0 && carbonDioxideFraction <= most * (1 + 1e-12))) {
      throw new AirflowArgumentError(
        'carbonDioxideFraction',
        carbonDioxideFraction,
        `above 0, at most ${most.toFixed(4)} for this fuel`,
      );
    }
    return Math.max(0, flame.carbon / carbonDioxideFraction - flame.dryStoichiometric);
  }
  const { oxygenFraction } = combustion;
  requireBetween('oxygenFraction', oxygenFraction, [0, 0.209]);
  return (oxygenFraction * flame.dryStoichiometric) / (oxygenInAir - oxygenFraction);
}

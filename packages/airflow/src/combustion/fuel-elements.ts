import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireBetween, requirePositive } from '../internal/require.js';
import { atomicMasses } from './atomic-masses.js';
import type { Fuel, FuelGas } from './fuels.js';

/** What a joule of a fuel brings to its flame, by its higher heating value. */
export interface FuelElements {
  /** Carbon [mol/J]. */
  readonly carbonMolPerJ: number;
  /** Atoms of hydrogen bound in the fuel [mol/J]. */
  readonly hydrogenMolPerJ: number;
  /** Atoms of oxygen bound in the fuel [mol/J]. */
  readonly oxygenMolPerJ: number;
  /** Atoms of nitrogen [mol/J]. */
  readonly nitrogenMolPerJ: number;
  /** Sulphur [mol/J]. */
  readonly sulphurMolPerJ: number;
  /** Free water [mol/J]. */
  readonly waterMolPerJ: number;
  /** Fuel without its ash [kg/J]. */
  readonly burntKgPerJ: number;
}

/** Atoms of carbon, hydrogen, oxygen and nitrogen, and heat of combustion with water condensed at 25 °C [J/mol]. */
const gases: Readonly<Record<FuelGas, readonly [number, number, number, number, number]>> = {
  methane: [1, 4, 0, 0, 890_600],
  ethane: [2, 6, 0, 0, 1_560_700],
  propane: [3, 8, 0, 0, 2_219_200],
  butane: [4, 10, 0, 0, 2_877_500],
  carbonDioxide: [1, 0, 2, 0, 0],
  nitrogen: [0, 0, 0, 2, 0],
};

/**
 * The elements that a joule of a fuel brings to its flame [mol/J].
 *
 * Joules are of the higher heating value, by which gas and appliances are rated in North America.
 *
 * @param fuel - composition, and heating value where it does not follow from it
 * @returns moles of each element and the mass burnt, by joule
 *
 * Source: heats of combustion from tables of thermochemistry (from memory).
 */
export function fuelElements(fuel: Fuel): FuelElements {
  return 'volumeShares' in fuel ? ofGas(fuel.volumeShares) : ofAnalysis(fuel);
}

function ofGas(volumeShares: Readonly<Partial<Record<FuelGas, number>>>): FuelElements {
  const sums = [0, 0, 0, 0, 0];
  let whole = 0;
  for (const [gas, share = 0] of Object.entries(volumeShares)) {
    requireBetween(`volumeShares.${gas}`, share, [0, 1]);
    const row = Object.hasOwn(gases, gas) ? gases[gas as FuelGas] : undefined;
    if (row === undefined) {
      throw new AirflowArgumentError('volumeShares', gas, Object.keys(gases).join(', '));
    }
    whole += share;
    row.forEach((value, k) => (sums[k]! += share * value));
  }
  requireWhole('volumeShares', whole);
  const [carbon = 0, hydrogen = 0, oxygen = 0, nitrogen = 0, heat = 0] = sums;
  requirePositive('volumeShares, heat of combustion', heat);
  const gramsPerMol =
    carbon * atomicMasses.carbon +
    hydrogen * atomicMasses.hydrogen +
    oxygen * atomicMasses.oxygen +
    nitrogen * atomicMasses.nitrogen;
  return {
    carbonMolPerJ: carbon / heat,
    hydrogenMolPerJ: hydrogen / heat,
    oxygenMolPerJ: oxygen / heat,
    nitrogenMolPerJ: nitrogen / heat,
    sulphurMolPerJ: 0,
    waterMolPerJ: 0,
    burntKgPerJ: gramsPerMol / 1000 / heat,
  };
}

function ofAnalysis(fuel: Extract<Fuel, { massShares: object }>): FuelElements {
  const { massShares, higherHeatingValueJPerKg: heat } = fuel;
  requirePositive('higherHeatingValueJPerKg', heat);
  let whole = 0;
  for (const [element, share] of Object.entries(massShares)) {
    requireBetween(`massShares.${element}`, share, [0, 1]);
    whole += share;
  }
  requireWhole('massShares', whole);
  const molPerJ = (share: number, gramsPerMol: number): number =>
    (1000 * share) / gramsPerMol / heat;
  return {
    carbonMolPerJ: molPerJ(massShares.carbon, atomicMasses.carbon),
    hydrogenMolPerJ: molPerJ(massShares.hydrogen, atomicMasses.hydrogen),
    oxygenMolPerJ: molPerJ(massShares.oxygen, atomicMasses.oxygen),
    nitrogenMolPerJ: molPerJ(massShares.nitrogen, atomicMasses.nitrogen),
    sulphurMolPerJ: molPerJ(massShares.sulphur, atomicMasses.sulphur),
    waterMolPerJ: molPerJ(massShares.water, 2 * atomicMasses.hydrogen + atomicMasses.oxygen),
    burntKgPerJ: (1 - massShares.ash) / heat,
  };
}

function requireWhole(argument: string, whole: number): void {
  if (!(Math.abs(whole - 1) <= 1e-6)) {
    throw new AirflowArgumentError(`sum of ${argument}`, whole, '1');
  }
}

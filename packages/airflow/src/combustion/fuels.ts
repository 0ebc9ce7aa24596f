import type { Provenance } from '../provenance.js';

/** Fuels of vented appliances and hearths. */
export type FuelName = 'natural gas' | 'propane' | 'fuel oil' | 'wood';

/** Gases of which a gaseous fuel is mixed. */
export type FuelGas = 'methane' | 'ethane' | 'propane' | 'butane' | 'carbonDioxide' | 'nitrogen';

/** A fuel known as a mixture of gases. */
export interface GaseousFuel extends Provenance {
  readonly description: string;
  /** Shares of the volume, together 1 [-]. */
  readonly volumeShares: Readonly<Partial<Record<FuelGas, number>>>;
}

/** A liquid or solid fuel known by its elements. */
export interface AnalysedFuel extends Provenance {
  readonly description: string;
  /** Shares of the mass as fired, together 1 [-]. */
  readonly massShares: Readonly<{
    carbon: number;
    hydrogen: number;
    oxygen: number;
    nitrogen: number;
    sulphur: number;
    /** Free water. */
    water: number;
    ash: number;
  }>;
  /** Heat of combustion as fired, water condensed [J/kg]. */
  readonly higherHeatingValueJPerKg: number;
}

/** What burns. */
export type Fuel = GaseousFuel | AnalysedFuel;

/** Share of a wood's mass as fired that is free water [-]. */
const woodMoisture = 0.2;

/** Typical fuels; every composition is our choice within what is usual, and another may be given instead. */
export const fuels: Readonly<Record<FuelName, Fuel>> = Object.freeze({
  'natural gas': {
    description: 'natural gas of the grid, mostly methane',
    volumeShares: {
      methane: 0.94,
      ethane: 0.03,
      propane: 0.005,
      butane: 0.002,
      carbonDioxide: 0.008,
      nitrogen: 0.015,
    },
    source: 'a usual composition of distributed gas; no source',
    status: 'assumed',
  },
  propane: {
    description: 'commercial propane',
    volumeShares: { propane: 0.96, ethane: 0.02, butane: 0.02 },
    source: 'a usual composition of commercial propane; no source',
    status: 'assumed',
  },
  'fuel oil': {
    description: 'distillate heating oil, No. 2',
    massShares: {
      carbon: 0.868,
      hydrogen: 0.128,
      oxygen: 0.001,
      nitrogen: 0.001,
      sulphur: 0.002,
      water: 0,
      ash: 0,
    },
    higherHeatingValueJPerKg: 45.4e6,
    source:
      'usual analysis and heating value (19,500 Btu/lb) of No. 2 oil; handbooks of combustion',
    status: 'memory',
  },
  wood: {
    description: 'seasoned wood, a fifth of its mass water',
    massShares: {
      carbon: 0.5 * (1 - woodMoisture),
      hydrogen: 0.06 * (1 - woodMoisture),
      oxygen: 0.433 * (1 - woodMoisture),
      nitrogen: 0.002 * (1 - woodMoisture),
      sulphur: 0,
      water: woodMoisture,
      ash: 0.005 * (1 - woodMoisture),
    },
    higherHeatingValueJPerKg: 20e6 * (1 - woodMoisture),
    source:
      'usual analysis and heating value (20 MJ/kg dry) of wood, handbooks of combustion; the moisture is our choice',
    status: 'memory',
  },
});

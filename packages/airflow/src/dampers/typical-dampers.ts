import type { Provenance } from '../provenance.js';

/** Dampers for which typical numbers are stated. */
export type TypicalDamperKind = 'backdraft damper' | 'barometric inlet' | 'motorized damper';

/** What is assumed of a damper of which only the size is known. */
export interface TypicalDamper extends Provenance {
  /** Loss of the open damper in velocity pressures [-]. */
  readonly openLossCoefficient: number;
  /** Pressure difference at which it starts to open; absent where a motor opens it [Pa]. */
  readonly crackingPressurePa?: number;
  /** Pressure difference from which it is fully open [Pa]. */
  readonly fullyOpenPressurePa?: number;
  /** Leakage when shut, by area of the damper [m3/(s m2)]. */
  readonly leakageM3PerSM2: number;
  /** Pressure difference of that leakage [Pa]. */
  readonly leakagePressurePa: number;
}

/**
 * Typical dampers, for a damper of which only the size is known.
 *
 * Every use of one is an assumption and is to be listed as such; a maker's pressure drop and leakage
 * replace it.
 */
export const typicalDampers: Readonly<Record<TypicalDamperKind, TypicalDamper>> = Object.freeze({
  'backdraft damper': {
    openLossCoefficient: 1.8,
    crackingPressurePa: 2.5,
    fullyOpenPressurePa: 15,
    leakageM3PerSM2: 0.2,
    leakagePressurePa: 100,
    source:
      'our choice: loss of the open damper in an example of a hood (Çengel and Cimbala, Fluid Mechanics, example 14-1, as restated in public), cracking at 0.01 in. w.c., leakage of class 1 of EN 1751; the pressure of full opening has no source',
    status: 'assumed',
  },
  'barometric inlet': {
    openLossCoefficient: 2.5,
    crackingPressurePa: 5,
    fullyOpenPressurePa: 20,
    leakageM3PerSM2: 0.2,
    leakagePressurePa: 100,
    source: 'our choice, no source: it opens at the suction to which its weight is set',
    status: 'assumed',
  },
  'motorized damper': {
    openLossCoefficient: 0.5,
    leakageM3PerSM2: 0.04,
    leakagePressurePa: 100,
    source:
      'our choice: damper of a lecture example (paperzz.com 7485866) with the leakage of class 2 of EN 1751',
    status: 'assumed',
  },
});

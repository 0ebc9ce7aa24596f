import type { PressureTarget } from './pressure-target.js';
import type { Stopped } from './study-options.js';
import type { UncertainInput } from './uncertain-input.js';

/** How a number is spread over the samples. */
export interface Spread {
  readonly mean: number;
  readonly standardDeviation: number;
  /** Values below which 5, 25, 50, 75 and 95 of 100 samples lie. */
  readonly percentiles: readonly [number, number, number, number, number];
}

/** How much one input matters to a zone. */
export interface InputImportance {
  readonly input: string;
  /** Correlation of the input's rank with the pressure's; negative where more of it means more suction [-]. */
  readonly rankCorrelation: number;
  /** Its square over the sum of squares of all inputs [-]. */
  readonly share: number;
}

/** One zone over all samples. */
export interface ZoneSpread {
  readonly zone: string;
  /** Lowest pressure over the situations [Pa]. */
  readonly pressurePa: Spread;
  /** Largest fall below its baseline over the situations [Pa]. */
  readonly changePa: Spread;
  /** The most important first. */
  readonly inputs: readonly InputImportance[];
}

/** Probability that a target is not kept. */
export interface TargetProbability {
  readonly target: PressureTarget;
  /** Share of samples beyond it [-]. */
  readonly probability: number;
  /** Interval that would hold the true probability in 95 of 100 studies [-]. */
  readonly between: readonly [number, number];
}

/** What is known of pressures where inputs are only known as ranges; plain JSON. */
export interface UncertaintyStudy {
  readonly question: 'uncertainty';
  readonly zones: readonly ZoneSpread[];
  readonly targets: readonly TargetProbability[];
  readonly ranges: readonly UncertainInput[];
  readonly samples: number;
  /** Samples with a situation that could not be solved; they are left out. */
  readonly failed: number;
  readonly seed: number;
  /** Values that the flow exponent takes, each in as many samples. */
  readonly exponents: readonly number[];
  readonly solves: number;
  /** Present where the study was stopped: samples that were drawn, of those asked for. */
  readonly stopped?: Stopped;
}

import type { Situation, StateBalance, UnsolvedState } from './state-balance.js';

/** The lowest pressure that one zone reaches, and where. */
export interface ZoneWorst {
  readonly zone: string;
  /** Situation with the lowest pressure against outdoors. */
  readonly lowest: WorstPressure;
  /** Situation with the largest fall below its own baseline. */
  readonly largestFall: WorstPressure;
}

/** One extreme with its situation. */
export interface WorstPressure extends Situation {
  readonly pressurePa: number;
  readonly changeFromBaselinePa: number;
  /** Pressure of the zone in the baseline that belongs to it [Pa]. */
  readonly baselinePa: number;
}

/** The worst situation for one appliance: that of the zone it stands in. */
export interface ApplianceWorst {
  readonly appliance: string;
  readonly zone: string;
  readonly lowest: WorstPressure;
  readonly largestFall: WorstPressure;
}

/** All states in all weathers at all airtightness cases; plain JSON. */
export interface WorstCaseStudy {
  readonly question: 'worst case';
  /** Deepest first, by the lowest pressure of any living zone, basement or closet. */
  readonly situations: readonly StateBalance[];
  readonly unsolved: readonly UnsolvedState[];
  readonly zones: readonly ZoneWorst[];
  readonly appliances: readonly ApplianceWorst[];
  readonly counts: {
    readonly states: number;
    readonly weathers: number;
    readonly airtightnessCases: number;
    readonly solves: number;
  };
  /** The weakest proof among all solves. */
  readonly proof: {
    readonly largestRelativeResidual: number;
    readonly largestEnclosureRadiusPa: number | null;
    readonly notEnclosed: number;
    readonly mostIterations: number;
  };
}

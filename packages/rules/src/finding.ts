import type { Source } from '@evendraft/house';

/** The four things that may be said. None of them is a clearance. */
export type Verdict = 'within the limit' | 'near the limit' | 'beyond the limit' | 'not judged';

/** Order of urgency; what was not judged comes before what is within a limit. */
export const verdictsByUrgency: readonly Verdict[] = [
  'beyond the limit',
  'near the limit',
  'not judged',
  'within the limit',
];

/** What a limit limits. */
export type LimitedQuantity = 'change from baseline' | 'zone minus outdoors';

/** The situation a finding speaks of. */
export interface FindingSituation {
  readonly label: string;
  readonly weather: string;
  readonly airtightness: string;
}

/** One appliance held against one limit. Pressures in the project's sign: negative is depressurized. */
export interface Finding {
  readonly appliance: string;
  readonly zone: string;
  readonly verdict: Verdict;
  readonly limitSet: string;
  /** Why it was not judged; present only then. */
  readonly reason?: string;
  /** Present unless not judged. */
  readonly judged?: {
    readonly limitId: string;
    /** What the limit is for, in the programme's terms. */
    readonly condition: string;
    readonly quantity: LimitedQuantity;
    /** The worst value of that quantity [Pa]. */
    readonly valuePa: number;
    /** The limit in the same sign, so a negative number [Pa]. */
    readonly limitPa: number;
    /** Value minus limit; negative is beyond [Pa]. */
    readonly marginPa: number;
    /** Half-width of the band called near [Pa]. */
    readonly nearBandPa: number;
    /** Pressure of the zone in the baseline [Pa]. */
    readonly baselinePa: number;
    readonly situation: FindingSituation;
    readonly source: Source;
    /** The programme's own test set-up in one sentence. */
    readonly testSetUp: string;
  };
  /** What would cure it, the usual order; empty where there is nothing to cure. */
  readonly cures: readonly string[];
  /** Remarks a reader must see, e.g. that newer editions dropped such limits. */
  readonly notes: readonly string[];
}

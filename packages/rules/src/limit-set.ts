import type { Source } from '@evendraft/house';
import type { AppliesTo } from './applies-to.js';
import type { LimitedQuantity } from './finding.js';
import type {
  AmbientCoLevel,
  DraftLimit,
  ExtractLimit,
  FlueCoLimit,
  HouseLimit,
  SpillageTimeLimit,
} from './further-limits.js';
import type { RuleRegion } from './rule-finding.js';
import type { TestConfiguration } from './test-configuration.js';

/** One row of a programme's table. */
export interface Limit {
  /** Unique within its set, kebab-case. */
  readonly id: string;
  /** What the row is for, the programme's words paraphrased. */
  readonly condition: string;
  /** Zone minus outdoors, so a negative number [Pa]. */
  readonly limitPa: number;
  readonly quantity: LimitedQuantity;
  /** The row is for an appliance that fits any one of these. */
  readonly applies: readonly AppliesTo[];
  readonly source: Source;
  /** How this project read the row, or where programmes differ; shown with every finding of the row. */
  readonly note?: string;
}

/** Appliances that a programme leaves without a pressure limit, with the reason. */
export interface Exclusion {
  /** Unique within its set, kebab-case. */
  readonly id: string;
  readonly applies: readonly AppliesTo[];
  /** Why there is no limit, as a sentence that may stand alone. */
  readonly reason: string;
  readonly source: Source;
}

/** The limits of one programme, as plain data; a user's own set is a file of this shape. */
export interface LimitSet {
  /** Version of this shape. */
  readonly evendraftLimits: 1;
  /** Neutral and descriptive, kebab-case. */
  readonly id: string;
  readonly name: string;
  /** Edition of this data, year and month; a changed value is a new edition. */
  readonly edition: string;
  /** The document the values come from, by its own title. */
  readonly document: string;
  readonly editionOfDocument: string;
  /** Where the programme is at home; everywhere when absent. */
  readonly region?: RuleRegion;
  /** What the set says, in a sentence or two. */
  readonly summary: string;
  /** What a reader must know before relying on it, e.g. that a later edition dropped such limits. */
  readonly note: string;
  /** The programme's own test: devices and speeds, doors, what fires, what is subtracted. */
  readonly testSetUp: string;
  /** The same test as states of the house that can be run. */
  readonly testConfigurations?: readonly TestConfiguration[];
  /** Limits of depressurization by appliance; empty where the programme has none. */
  readonly limits: readonly Limit[];
  readonly exclusions: readonly Exclusion[];
  readonly houseLimits?: readonly HouseLimit[];
  readonly extractLimits?: readonly ExtractLimit[];
  readonly draftLimits?: readonly DraftLimit[];
  readonly spillageTimes?: readonly SpillageTimeLimit[];
  /** By rising concentration. */
  readonly ambientCo?: readonly AmbientCoLevel[];
  readonly flueCo?: readonly FlueCoLimit[];
}

import type {
  Appliance,
  Assumption,
  Device,
  House,
  TestPreparation,
  Weather,
  Zone,
} from '@evendraft/house';
import type { RuleFinding } from '@evendraft/rules';
import type { AttributionStudy, UncertaintyStudy, WorstCaseStudy } from '@evendraft/studies';
import type { AirResults } from './air-results.js';
import type { CureResults } from './cure-results.js';
import type { DraftResults } from './draft-results.js';
import type { Incomplete } from './incomplete.js';
import type { JudgedSet } from './judged-set.js';

/**
 * Everything that one run says about one house; plain JSON, versioned.
 *
 * What it says by the limit set that was chosen stands at the top; the sets that were asked for beside it follow.
 */
export interface Assessment extends JudgedSet {
  readonly schema: 'evendraft-assessment';
  /**
   * Rises when a property goes or changes, and when something is added without which the rest would be misread, as
   * `incomplete` was; what only adds a property does not raise it.
   */
  readonly schemaVersion: 3;
  readonly libraryVersion: string;
  readonly house: HouseSummary;
  /** Present where the work was stopped before its end. */
  readonly incomplete?: Incomplete;
  readonly worstCase: WorstCaseStudy;
  /** Further limit sets, each judged as the first one is. */
  readonly beside: readonly JudgedSet[];
  /** Which device costs how many pascals; absent where nothing runs in the worst situation. */
  readonly attribution?: Attribution;
  readonly cures: CureResults;
  /** Whether flues draw, spill or run backwards; absent where the house file describes no flue of an appliance. */
  readonly draft?: DraftResults;
  /** The air of the house beside its appliances, and how far it may go; absent where it was not asked for. */
  readonly air?: AirResults;
  /** Code screens, those included that are not meant for this house. */
  readonly screens: readonly RuleFinding[];
  /** Present where it was asked for. */
  readonly uncertainty?: UncertaintyStudy;
  readonly assumptions: readonly Assumption[];
  /** What this version does not look at, in sentences. */
  readonly notModelled: readonly string[];
  readonly cautions: readonly string[];
}

/** The attribution of one situation, with the situation in words. */
export interface Attribution extends AttributionStudy {
  readonly label: string;
  readonly airtightness: string;
}

/** What a report repeats of the house itself. */
export interface HouseSummary extends Pick<
  House,
  'name' | 'floorAreaM2' | 'volumeM3' | 'digest' | 'altitudeM'
> {
  readonly airtightness: Omit<House['airtightness'], 'remainingM3PerSPaN'>;
  /** How each opening, device and damper stood during the airtightness test; absent where not told. */
  readonly testPreparation?: readonly {
    readonly item: string;
    readonly duringTest: TestPreparation;
  }[];
  readonly zones: readonly Pick<Zone, 'id' | 'kind'>[];
  readonly devices: readonly Pick<Device, 'id' | 'kind' | 'direction' | 'zone'>[];
  readonly appliances: readonly Pick<Appliance, 'id' | 'kind' | 'vent' | 'zone'>[];
  readonly weathers: readonly Weather[];
}

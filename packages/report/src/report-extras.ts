import type { Source } from '@evendraft/house';
import type { Verdict } from '@evendraft/rules';
import type { DeviceSharesDrawingData } from './drawings/device-shares.js';
import type { ExceedanceDrawingData } from './drawings/exceedance.js';
import type { ExhaustCurveDrawingData } from './drawings/exhaust-curve.js';
import type { FanAndSystemDrawingData } from './drawings/fan-and-system.js';
import type { FlueDraftDrawingData } from './drawings/flue-draft.js';
import type { HouseSectionDrawingData } from './drawings/house-section-data.js';
import type { MakeUpOptionsDrawingData } from './drawings/make-up-options.js';

/** One leak of the envelope, or one opening that is modelled apart. */
export interface LeakRow {
  readonly item: string;
  /** Empty where it is in several zones. */
  readonly zone: string;
  /** Where it leads, in words. */
  readonly to: string;
  /** Above the house's datum; absent where it has several [m]. */
  readonly heightM?: number;
  /** How the house file gives it, in words. */
  readonly given: string;
  /** Flow at 50 Pa, as in an airtightness test [m³/s]. */
  readonly at50PaM3PerS: number;
  /** Flow at 4 Pa [m³/s]. */
  readonly at4PaM3PerS: number;
  /** Out of the house in the baseline of the worst situation; absent where that was not solved [m³/s]. */
  readonly baselineFlowM3PerS?: number;
  /** Out of the house in the worst situation; absent where that was not solved [m³/s]. */
  readonly worstFlowM3PerS?: number;
}

/** One check against a code, with its arithmetic. */
export interface CodeScreenRow {
  readonly rule: string;
  /** What it is about: an appliance, a device, the house. */
  readonly subject: string;
  readonly verdict: Verdict;
  /** The arithmetic in words that can be repeated by hand. */
  readonly arithmetic: string;
  readonly source: Source;
}

/** A further text of the report: results that have no drawing of their own. */
export interface ReportNote {
  readonly title: string;
  readonly sentences: readonly string[];
}

/**
 * What a report shows beside the assessment, each part as soon as a study yields it; plain JSON.
 *
 * A part that is absent leaves no gap on the page.
 */
export interface ReportExtras {
  readonly section?: HouseSectionDrawingData;
  readonly exhaustCurve?: ExhaustCurveDrawingData;
  readonly fans?: readonly FanAndSystemDrawingData[];
  readonly shares?: DeviceSharesDrawingData;
  readonly flues?: readonly FlueDraftDrawingData[];
  readonly exceedance?: ExceedanceDrawingData;
  readonly makeUpOptions?: MakeUpOptionsDrawingData;
  readonly leaks?: readonly LeakRow[];
  readonly codeScreens?: readonly CodeScreenRow[];
  readonly notes?: readonly ReportNote[];
}

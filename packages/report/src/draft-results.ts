import type { CombustionFinding, LimitSet } from '@evendraft/rules';
import type {
  ApplianceCombustion,
  CombustionStudy,
  DraftThresholds,
  DraftVerdict,
  RoomAir,
  StartCourse,
} from '@evendraft/studies';

/** Whether flues draw, spill or run backwards, or why that was not solved. */
export type DraftResults =
  /** Left out, with the reason as a sentence. */
  { readonly status: 'not solved'; readonly why: string } | SolvedDraft;

/** Flues solved as parts of the house. It screens for risk: no number in it clears an appliance. */
export interface SolvedDraft extends Pick<CombustionStudy, 'notStudied' | 'situations'> {
  readonly status: 'solved';
  /** Sets whose draft limits, spillage times and levels of carbon monoxide were applied. */
  readonly limitSets: readonly Pick<LimitSet, 'id' | 'name' | 'edition'>[];
  readonly appliances: readonly ApplianceDraft[];
}

/** A situation of the house, and which appliances fire in it. */
export interface DraftSituation {
  readonly label: string;
  readonly weather: string;
  readonly airtightness: string;
  /** Id of every appliance that fires to its stage. */
  readonly firing: Readonly<Record<string, string>>;
}

/** One appliance with a flue, over the situations that were looked at. */
export interface ApplianceDraft extends Pick<
  ApplianceCombustion,
  'appliance' | 'zone' | 'byTemperature'
> {
  /** The least favourable situation; absent where none could be judged. */
  readonly worst?: WorstDraft;
  /** In how many of the situations each verdict was found. */
  readonly verdicts: readonly { readonly verdict: DraftVerdict; readonly situations: number }[];
  /** Its flue leaves gas in the room, though it be only from cold, in a situation in which nothing runs. */
  readonly spillsWithNothingRunning: boolean;
  /** Why some situations could not be judged, and how many. */
  readonly unjudged: readonly { readonly reason: string; readonly situations: number }[];
  /** How it starts in the least favourable situation. */
  readonly starts: readonly (Pick<StartCourse, 'start' | 'spillageS' | 'settled'> & {
    /** For how long the start was followed [s]. */
    readonly followedS: number;
  })[];
  /** Gas in rooms, in the situation that holds most carbon monoxide; absent where nothing spills. */
  readonly spilled?: SpilledAir;
  /** Draft, spillage time and carbon monoxide held against the limits of the sets. */
  readonly findings: readonly CombustionFinding[];
}

/** The least favourable situation of an appliance. */
export interface WorstDraft extends DraftSituation {
  readonly verdict: DraftVerdict;
  /** A fan of the burner holds its flow. */
  readonly heldByFan: boolean;
  /** Vent minus room at the test tap once a warm flue has come to rest; negative draws [Pa]. */
  readonly tapDraftPa: number;
  /** Shares of its gas that enter the room once a cold and a warm flue have come to rest [-]. */
  readonly spilledShare: { readonly fromCold: number; readonly fromWarm: number };
  /** Absent where a fan holds the flow. */
  readonly thresholds?: DraftThresholds;
}

/** What spilled gas makes of the air of rooms. */
export interface SpilledAir extends DraftSituation {
  /** Carbon monoxide in the dry gas without excess air that was taken [ppm]. */
  readonly carbonMonoxideAirFreePpm: number;
  /** Times of the courses [s]. */
  readonly timesS: readonly number[];
  readonly zones: readonly RoomAir[];
}

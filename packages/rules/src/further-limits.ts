import type { Source } from '@evendraft/house';
import type { AppliesTo } from './applies-to.js';
import type { LimitedQuantity } from './finding.js';

/** A limit on the suction of the house as a whole, whatever appliance stands where. */
export interface HouseLimit {
  /** Unique within its list, kebab-case. */
  readonly id: string;
  readonly condition: string;
  /** Zone minus outdoors, so a negative number [Pa]. */
  readonly limitPa: number;
  readonly quantity: LimitedQuantity;
  /** Only for a house with at least one appliance that fits one of these. */
  readonly ifAnyOf?: readonly AppliesTo[];
  /** Only for a house with no appliance that fits one of these. */
  readonly ifNoneOf?: readonly AppliesTo[];
  /** Id of the test configuration it belongs to; absent where it belongs to each. */
  readonly configuration?: string;
  readonly source: Source;
  readonly note?: string;
}

/** A limit on the rate of extract beside appliances that take their air from the house. */
export interface ExtractLimit {
  readonly id: string;
  readonly condition: string;
  readonly applies: readonly AppliesTo[];
  /** True where only extract from the appliance's own zone counts. */
  readonly sameRoom: boolean;
  /** Largest rate of extract; 0 where there may be none [m³/s]. */
  readonly largestFlowM3PerS: number;
  readonly source: Source;
  readonly note?: string;
}

/** One corner of a limit on draft by outdoor temperature. */
export interface DraftCorner {
  readonly outdoorTemperatureC: number;
  /** Vent minus zone, so a negative number [Pa]. */
  readonly draftPa: number;
}

/** The draft that a vent must have in steady firing: the tap's static pressure minus that of the zone. */
export interface DraftLimit {
  readonly id: string;
  readonly condition: string;
  readonly applies: readonly AppliesTo[];
  /** Where the tap is. */
  readonly place: string;
  /** Weakest draft: straight lines between corners by rising temperature, level beyond the outer ones. */
  readonly corners: readonly DraftCorner[];
  /** Strongest draft, where there is one [Pa]. */
  readonly strongestPa?: number;
  readonly source: Source;
  readonly note?: string;
}

/** How long an appliance may spill after it starts. */
export interface SpillageTimeLimit {
  readonly id: string;
  readonly condition: string;
  /** The vent at the start of the burner. */
  readonly vent: 'cold' | 'warm' | 'either';
  readonly limitS: number;
  readonly source: Source;
  readonly note?: string;
}

/** A level of carbon monoxide in the air of a room, and what it calls for. */
export interface AmbientCoLevel {
  readonly id: string;
  /** Lowest concentration that belongs to the level [ppm]. */
  readonly fromPpm: number;
  /** What the programme calls for, as a sentence. */
  readonly action: string;
  /** True where people have to leave. */
  readonly leave: boolean;
  readonly source: Source;
  readonly note?: string;
}

/** The largest carbon monoxide in the gas of an appliance. */
export interface FlueCoLimit {
  readonly id: string;
  readonly condition: string;
  /** Absent where it is a thing that house files do not have, such as an oven. */
  readonly applies?: readonly AppliesTo[];
  readonly limitPpm: number;
  readonly basis: 'air-free' | 'as measured';
  readonly source: Source;
  readonly note?: string;
}

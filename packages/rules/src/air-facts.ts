import type { DoorLeaf } from '@evendraft/studies';
import type { HoodFlowGuidance, HoodPlace } from './guidance/hood-flow.js';
import type { VelocityPlace } from './guidance/make-up-velocity.js';
import type { WallClimate } from './guidance/net-flow-by-climate.js';

/** What is known of a door. */
export interface DoorFacts {
  /** Its size, handle and closer; a usual leaf when absent. */
  readonly leaf?: DoorLeaf;
  /** Zone into which it swings, or `outdoors`; both ways are judged when absent. */
  readonly opensInto?: string;
}

/** What is known of a hood beside its flow. */
export interface HoodFacts {
  readonly widthM?: number;
  readonly place?: HoodPlace;
  readonly burnerInputW?: number;
  readonly kitchenVolumeM3?: number;
}

/** What guidance on air asks and a house file does not hold; every part may be left out. */
export interface AirFacts {
  /** Climate of the walls; without it net flow is not judged. */
  readonly climate?: WallClimate;
  /** By id of a door of the house. */
  readonly doors?: Readonly<Record<string, DoorFacts>>;
  /** Doors to outdoors by name; one in each lowest living zone when absent. */
  readonly outsideDoors?: Readonly<Record<string, DoorFacts & { readonly zone: string }>>;
  /** By id of a hood or downdraft. */
  readonly hoods?: Readonly<Record<string, HoodFacts>>;
  /** Hood flow by width, burners and kitchen, instead of that of the guidance. */
  readonly hoodFlowGuidance?: HoodFlowGuidance;
  /** Largest velocities by place, instead of those of the guidance [m/s]. */
  readonly largestVelocitiesMPerS?: Readonly<Partial<Record<VelocityPlace, number>>>;
}

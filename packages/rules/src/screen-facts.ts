import type { AirFacts } from './air-facts.js';

/** What covers an opening; louvres of unknown free area take a share of the opening. */
export type OpeningCover = 'none' | 'wood louvre' | 'metal louvre';

/** An opening for combustion air of a room, as built. */
export interface CombustionOpening {
  readonly to: 'room on the same storey' | 'room on another storey' | 'outdoors';
  /** Size of the hole [m²]. */
  readonly areaM2: number;
  readonly cover?: OpeningCover;
  /** Free area of its cover, where the maker states one [m²]. */
  readonly freeAreaM2?: number;
  /** How it reaches outdoors; direct when absent. */
  readonly path?: 'direct' | 'vertical duct' | 'horizontal duct';
}

/** What rules ask of an appliance and a house file does not hold. */
export interface ApplianceFacts {
  readonly draftHoodOutletAreaM2?: number;
  readonly ventConnectorAreaM2?: number;
  /** Inside area of the flue that it vents into [m²]. */
  readonly flueAreaM2?: number;
  readonly flueCollarAreaM2?: number;
  /** From its draft hood or burner to the nearest return inlet of its room or a room open to it [m]. */
  readonly nearestReturnM?: number;
  /** Gas at the top of its flue in steady firing [°C]. */
  readonly flueExitTemperatureC?: number;
  /** Dew point of that gas [°C]. */
  readonly flueDewPointC?: number;
  /** Combustion-air opening made for it alone [m²]. */
  readonly airOpeningAreaM2?: number;
}

/** Fittings of a dryer duct that a table gives a length for. */
export type DryerFitting = (typeof dryerFittings)[number];

/** Every fitting of the table. */
export const dryerFittings = [
  '4 in. mitered 45',
  '4 in. mitered 90',
  '6 in. smooth 45',
  '6 in. smooth 90',
  '8 in. smooth 45',
  '8 in. smooth 90',
  '10 in. smooth 45',
  '10 in. smooth 90',
] as const;

/** What rules ask of a device and a house file does not hold. */
export interface DeviceFacts {
  /** Straight lengths of its duct together [m]. */
  readonly ductLengthM?: number;
  /** Fittings of its duct, each as often as it occurs. */
  readonly ductFittings?: readonly DryerFitting[];
  /** Opening in the door or wall of the closet that it stands in [m²]. */
  readonly closetOpeningAreaM2?: number;
}

/** What rules ask of a make-up opening and a house file does not hold. */
export interface MakeUpFacts {
  readonly damper?: 'electric' | 'gravity' | 'barometric' | 'none';
  /** Pressure at which its damper passes the design flow [Pa]. */
  readonly designPressurePa?: number;
  /** Inside diameter of its round duct [m]. */
  readonly ductDiameterM?: number;
}

/** What rules ask of a room and a house file does not hold. */
export interface ZoneFacts {
  readonly combustionOpenings?: readonly CombustionOpening[];
  /** Supply for combustion air alone, with the burners interlocked [m³/s]. */
  readonly combustionSupplyM3PerS?: number;
  /** Whether the room has an outside door or a window that opens. */
  readonly opensToOutdoors?: boolean;
  readonly coAlarm?: boolean;
}

/** One source of bad air near an intake. */
export interface NearbySource {
  readonly name: string;
  readonly distanceM: number;
  /** Height of the source above the intake; negative where it is below [m]. */
  readonly aboveIntakeM: number;
}

/** What rules and guidance ask that a house file does not hold. Everything is optional: what is missing is not judged. */
export interface ScreenFacts extends AirFacts {
  /** Year in which the building was built. */
  readonly builtInYear?: number;
  readonly bedrooms?: number;
  /** Natural air changes of the house, where they are known [1/s]. */
  readonly naturalAirChangePerS?: number;
  /** Whether its walls are of stucco all around. */
  readonly stuccoed?: boolean;
  readonly appliances?: Readonly<Record<string, ApplianceFacts>>;
  readonly devices?: Readonly<Record<string, DeviceFacts>>;
  readonly makeUp?: Readonly<Record<string, MakeUpFacts>>;
  readonly zones?: Readonly<Record<string, ZoneFacts>>;
  /** Sources of bad air near an intake: a make-up opening, a supply fan or a ventilator by its name. */
  readonly intakes?: Readonly<Record<string, readonly NearbySource[]>>;
}

import type { ZoneKind } from '@evendraft/house';

/** A zone as the section shows it. */
export interface SectionZone {
  readonly zone: string;
  readonly kind: ZoneKind;
  /** Its floor above the house's datum [m]. */
  readonly floorHeightM: number;
  /** Floor to ceiling [m]. */
  readonly heightM: number;
}

/** A flow between two zones, or a zone and outdoors. */
export interface SectionFlow {
  /** The device, flue, door, opening or leak. */
  readonly name: string;
  readonly kind: 'device' | 'flue' | 'make-up' | 'opening' | 'door' | 'leakage';
  /** A zone's name; absent for outdoors. */
  readonly from?: string;
  readonly to?: string;
  /** Above the house's datum [m]. */
  readonly heightM: number;
  /** Positive from `from` to `to`; a backward flow is negative [m³/s]. */
  readonly volumeFlowM3PerS: number;
}

/** One state of the house in section. */
export interface SectionState {
  /** E.g. `Baseline: everything off`. */
  readonly title: string;
  /** Zone minus outdoors at the zone's floor [Pa]. */
  readonly pressures: readonly { readonly zone: string; readonly pressurePa: number }[];
  readonly flows: readonly SectionFlow[];
  /** Where each zone is level with outdoors, above the datum [m]; left out where that is outside the zone. */
  readonly neutralLevels: readonly { readonly zone: string; readonly heightM: number }[];
}

/**
 * The house cut open. Wanted of a study of one balance: floors and heights of the zones, the flow
 * of every link by its role, and each zone's neutral level, in the baseline and in the worst state.
 */
export interface HouseSectionDrawingData {
  readonly zones: readonly SectionZone[];
  readonly baseline: SectionState;
  readonly worst: SectionState;
}

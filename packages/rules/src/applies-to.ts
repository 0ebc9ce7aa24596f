import type { Appliance, ApplianceKind, VentType } from '@evendraft/house';

/** Vents that suction can upset; what burns nothing or vents into the room is never held against a limit. */
export type LimitedVent = Exclude<VentType, 'unvented' | 'electric'>;

/** Fuels a limit may ask for; an appliance whose fuel is not stated may be any of them. */
export type LimitedFuel = Exclude<Appliance['fuel'], 'not stated'>;

/** What must hold of at least one other appliance on the same vent. Every fact given must hold. */
export interface VentPartner {
  readonly kinds?: readonly ApplianceKind[];
  readonly vents?: readonly LimitedVent[];
  readonly ventDamper?: boolean;
}

/** What must hold of the chimney. Every fact given must hold; a fact the house lacks is unknown, not false. */
export interface ChimneyFacts {
  /** Lowest height that belongs to the row [m]. */
  readonly fromHeightM?: number;
  /** First height that no longer belongs to the row [m]. */
  readonly belowHeightM?: number;
  /** True where it stands outside the heated house. */
  readonly exterior?: boolean;
}

/** One description of the appliances that a limit is for. Every fact given must hold. */
export interface AppliesTo {
  readonly kinds?: readonly ApplianceKind[];
  readonly vents?: readonly LimitedVent[];
  readonly fuels?: readonly LimitedFuel[];
  /** Present where the appliance must have its vent to itself. */
  readonly alone?: true;
  /** Present where another appliance must be on the same vent. */
  readonly sharesVentWith?: VentPartner;
  readonly ventDamper?: boolean;
  readonly chimney?: ChimneyFacts;
}

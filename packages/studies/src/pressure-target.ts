/** What is limited: the fall below the zone's own baseline, or the pressure against outdoors. */
export type TargetQuantity = 'change from baseline' | 'zone minus outdoors';

/** A pressure that a zone is to keep to, in every state and weather. Zone minus outdoors: negative is depressurized. */
export interface PressureTarget {
  /** Names it in results, e.g. the appliance and its limit. */
  readonly id: string;
  readonly zone: string;
  readonly quantity: TargetQuantity;
  /** [Pa] */
  readonly limitPa: number;
  /** `not below` is a limit on suction, `not above` one on pushing the house above outdoors. */
  readonly side: 'not below' | 'not above';
}

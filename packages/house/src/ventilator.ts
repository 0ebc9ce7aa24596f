/** One way in which a ventilator runs: its usual one, while it defrosts, with a dirty filter. */
export interface VentilatorMode {
  readonly name: 'on' | 'defrost' | 'dirty filter';
  /** Zero where it is stopped [m³/s]. */
  readonly supplyFlowM3PerS: number;
  /** Zero where it is stopped [m³/s]. */
  readonly exhaustFlowM3PerS: number;
}

/** A balanced ventilator: supply and exhaust held constant by its own control. */
export interface Ventilator {
  readonly id: string;
  readonly origin: string;
  readonly supplyZone: string;
  readonly exhaustZone: string;
  readonly supplyFlowM3PerS: number;
  readonly exhaustFlowM3PerS: number;
  readonly continuous: boolean;
  /** Ways in which it runs besides its usual one. */
  readonly otherModes?: readonly VentilatorMode[];
}

import type { AirState, DuctDescription, FlowLawDescription, FluePiece } from '@evendraft/airflow';

/** A stretch of flue that has one flow: from an appliance to the top or to a chimney, or the chimney. */
export interface Vent {
  /** Id of its link in the network. */
  readonly link: string;
  /** From the lower to the upper end. */
  readonly pieces: readonly FluePiece[];
  /** Its law: that of its link. */
  readonly duct: DuctDescription;
}

/** A way for room air into a flue at the collar of its appliance. */
export interface CollarInlet {
  /** Id of its link in the network. */
  readonly link: string;
  /** Flow is positive from the room into the flue. */
  readonly law: FlowLawDescription;
}

/** An appliance with its own part of a flue. */
export interface VentMember {
  /** Id of the appliance. */
  readonly appliance: string;
  readonly roomAir: AirState;
  /** Ways for room air that are open. */
  readonly inlets: readonly CollarInlet[];
  /** Gas that a burner sends to the collar whatever the flue draws; zero where the flue itself draws it [kg/s]. */
  readonly injectedKgPerS: number;
  /** Gas of the flame, which room air dilutes where the flue takes more; zero while nothing burns [kg/s]. */
  readonly gasFlowKgPerS: number;
  /** Temperature of that gas before it is diluted [°C]. */
  readonly gasTemperatureC: number;
  readonly vent: Vent;
}

/** All that stands on one chimney, or one appliance with a flue of its own. */
export interface VentSystem {
  readonly members: readonly VentMember[];
  /** Present where several appliances stand on it. */
  readonly chimney?: Vent;
  /** Air of the column outdoors, to which pressures refer. */
  readonly outdoorAir: AirState;
  /** Air that enters at the top when the flow is downward. */
  readonly topAir: AirState;
  /** Absolute pressure [Pa]. */
  readonly pressurePa: number;
}

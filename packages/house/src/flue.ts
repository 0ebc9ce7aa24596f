import type { FlowLawDescription, FlueConstructionName } from '@evendraft/airflow';
import type { Outlet, TestPreparation } from './outlet.js';

/** The flue of an appliance or hearth: where its gas goes, and how room air gets into it. */
export interface Flue {
  /** Where its gas enters the vent: draft hood or flue collar above the zone's floor [m]. */
  readonly collarHeightM: number;
  /** From the collar to the chimney; empty where the chimney stands on the appliance. */
  readonly connector: readonly FlueSection[];
  /** From the connector to the top; empty where the flue joins the chimney of another appliance. */
  readonly chimney: readonly FlueSection[];
  /** Appliance whose chimney it joins. */
  readonly joins?: string;
  readonly to: Outlet;
  /** Ways for room air into the flue. */
  readonly inlets: readonly FlueInlet[];
  /** What a damper leaves open while no stage has it open; absent where there is none. */
  readonly damper?: FlueDamper;
  /** What the appliance can be doing besides being off. */
  readonly stages: readonly FlueStage[];
  readonly duringTest: TestPreparation;
}

/** A stretch of flue of one size and wall, indoors or outdoors. */
export interface FlueSection {
  readonly lengthM: number;
  /** Height gained along it [m]. */
  readonly riseM: number;
  readonly hydraulicDiameterM: number;
  readonly areaM2: number;
  readonly construction: FlueConstructionName;
  readonly stands: 'indoors' | 'outdoors';
  /** Losses beside friction, in velocity pressures of its area [-]. */
  readonly lossCoefficient: number;
}

/** A way for room air into a flue. */
export interface FlueInlet {
  /** `draft hood`, `regulator`, `appliance`, `opening`, `shut opening`: unique within its flue. */
  readonly name: string;
  /** Flow is positive from the room into the flue. */
  readonly law: FlowLawDescription;
  /** Stages in which it is open, `off` among them; all when absent. */
  readonly stages?: readonly string[];
}

/** A damper in a flue. */
export interface FlueDamper {
  /** Area that stays open when it is shut; zero where nothing does [m²]. */
  readonly shutAreaM2: number;
  /** Stages in which it is shut, `off` among them. */
  readonly shutIn: readonly string[];
}

/** What an appliance does with its flue: firing, a stage of a fire, or standing warm. */
export interface FlueStage {
  readonly name: string;
  /** Gas that a burner sends to the flue, as much as the air that it takes from the room; zero where the flue itself draws it [kg/s]. */
  readonly gasFlowKgPerS: number;
  /** Gas at the collar, before air of the room dilutes it; absent for a cold flue. */
  readonly gas?: { readonly aboveRoomK: number };
  /** Flow in the flue for which the cooling of its gas is worked out; zero where the column has one temperature throughout [kg/s]. */
  readonly ventFlowKgPerS: number;
  /** Part of that flow which comes from the fire; the rest is air of the room [-]. */
  readonly gasShare: number;
}

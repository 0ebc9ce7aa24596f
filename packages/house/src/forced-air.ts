import type { FlowLawDescription } from '@evendraft/airflow';
import type { Outlet, TestPreparation } from './outlet.js';

/** A forced-air system: an air handler between return and supply ducts, registers in rooms, and duct leaks. */
export interface ForcedAirSystem {
  readonly id: string;
  readonly origin: string;
  /** The air handler that runs, from the return to the supply ducts. */
  readonly runningLaw: FlowLawDescription;
  /** The air handler that stands still, from the return to the supply ducts. */
  readonly standingLaw: FlowLawDescription;
  /** Registers that blow into rooms; flow is positive into the room. */
  readonly supplies: readonly Register[];
  /** Registers that draw from rooms; flow is positive out of the room. */
  readonly returns: readonly Register[];
  readonly leaks: readonly DuctLeak[];
  /** How its registers stood during the airtightness test. */
  readonly duringTest: TestPreparation;
  /** Runs in every state but the baseline. */
  readonly continuous: boolean;
}

/** The registers of one room. */
export interface Register {
  readonly zone: string;
  /** Of the flow that reaches the registers [-]. */
  readonly share: number;
  readonly law: FlowLawDescription;
}

/** Leakage of the ducts before or behind the air handler, to one place. */
export interface DuctLeak {
  readonly side: 'supply' | 'return';
  readonly to: Outlet;
  /** Flow is positive out of the duct. */
  readonly law: FlowLawDescription;
}

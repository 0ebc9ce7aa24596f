import type { OrificeDescription, PowerLawDescription } from '../laws/flow-law-description.js';
import { closedDamperLaw, type ClosedDamper } from './closed-damper-law.js';
import { openDamperLaw, type OpenDamper } from './open-damper-law.js';

/** A damper that a motor opens and shuts. */
export interface MotorizedDamper extends OpenDamper, ClosedDamper {}

/** The two states of a motorized damper, each a link of its own. */
export interface MotorizedDamperLaws {
  readonly open: OrificeDescription;
  readonly closed: PowerLawDescription;
}

/**
 * Laws of a motorized damper, open and closed.
 *
 * Stuck open it is its open law in every state, stuck shut its closed law.
 *
 * @param damper - area, loss when open, leakage when closed
 * @returns both laws
 */
export function motorizedDamperLaws(damper: MotorizedDamper): MotorizedDamperLaws {
  return { open: openDamperLaw(damper), closed: closedDamperLaw(damper) };
}

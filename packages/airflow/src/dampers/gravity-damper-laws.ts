import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireNotNegative } from '../internal/require.js';
import type {
  GravityDamperDescription,
  OrificeDescription,
  PowerLawDescription,
} from '../laws/flow-law-description.js';
import { closedDamperLaw, type ClosedDamper } from './closed-damper-law.js';
import { openDamperLaw, type OpenDamper } from './open-damper-law.js';

/** A damper that the flow opens and a weight or spring shuts. */
export interface GravityDamper extends OpenDamper, ClosedDamper {
  /** Pressure difference at which it starts to open [Pa]. */
  readonly crackingPressurePa: number;
  /** Pressure difference from which it is fully open, above cracking [Pa]. */
  readonly fullyOpenPressurePa: number;
}

/** A gravity damper as it works and as it fails. */
export interface GravityDamperLaws {
  /** Opens with the pressure from → to, leaks either way when shut. */
  readonly working: GravityDamperDescription;
  /** Open both ways: a blade that hangs or was taken out. */
  readonly stuckOpen: OrificeDescription;
  /** Shut both ways, with its leakage. */
  readonly stuckShut: PowerLawDescription;
}

/**
 * Laws of a gravity damper: backdraft damper of an exhaust duct, barometric inlet of a make-up duct.
 *
 * As a barometric inlet it is put so that from → to leads indoors, and its cracking pressure is the
 * suction of its set point. As a draft regulator from → to leads from the room into the connector.
 *
 * @param damper - area, loss when open, leakage when shut, and the pressures at which it opens
 * @returns the working damper and its two failures
 */
export function gravityDamperLaws(damper: GravityDamper): GravityDamperLaws {
  const { areaM2, openLossCoefficient, crackingPressurePa, fullyOpenPressurePa } = damper;
  requireNotNegative('crackingPressurePa', crackingPressurePa);
  if (!(fullyOpenPressurePa > crackingPressurePa)) {
    throw new AirflowArgumentError(
      'fullyOpenPressurePa',
      fullyOpenPressurePa,
      'a number above the cracking pressure',
    );
  }
  const stuckShut = closedDamperLaw(damper);
  const { coefficientM3PerSPaN, exponent } = stuckShut;
  return {
    working: {
      kind: 'gravityDamper',
      areaM2,
      openLossCoefficient,
      crackingPressurePa,
      fullyOpenPressurePa,
      closedLeakage: { coefficientM3PerSPaN, exponent },
    },
    stuckOpen: openDamperLaw(damper),
    stuckShut,
  };
}

import { referenceAir } from '../air/reference-air.js';
import { requireBetween, requireNotNegative, requirePositive } from '../internal/require.js';
import type { OneWayDamperDescription } from '../laws/flow-law-description.js';

/** A gate that lets room air into the flue when the draft exceeds its setting. */
export interface BarometricRegulator {
  /** Diameter of the gate [m]. */
  readonly diameterM: number;
  /** Draft at which it begins to open; 5 to 15 Pa is usual (from memory) [Pa]. */
  readonly settingPa: number;
  /** Share of its area that leaks when shut; 0.02 when absent, our choice [-]. */
  readonly leakShare?: number;
}

/** Discharge coefficient of the open gate and of its gap, as of any sharp edge [-]. */
const dischargeCoefficient = 0.6;

/**
 * The law of a barometric regulator: a link from the room to the flue's junction.
 *
 * A one-way damper that cracks at the setting; its flow grows with the root of what is beyond it, as if the gate were
 * open at once, and its gap leaks both ways. The weight that holds a real gate makes it open by and by, so it holds the
 * draft a little less well than this law.
 *
 * @param regulator - gate, setting and leak
 * @returns description of the link's law, `from` the room `to` the flue
 *
 * Source: an orifice behind a cracking pressure (derived); area and leak of the gate as given.
 */
export function barometricRegulator(regulator: BarometricRegulator): OneWayDamperDescription {
  const { diameterM, settingPa, leakShare = 0.02 } = regulator;
  requirePositive('diameterM', diameterM);
  requireNotNegative('settingPa', settingPa);
  requireBetween('leakShare', leakShare, [1e-6, 1]);
  const areaM2 = (Math.PI / 4) * diameterM ** 2;
  const coefficientM3PerSPaN =
    dischargeCoefficient * areaM2 * Math.sqrt(2 / referenceAir.densityKgPerM3);
  return {
    kind: 'oneWayDamper',
    coefficientM3PerSPaN,
    exponent: 0.5,
    crackingPressurePa: settingPa,
    closedLeakage: { coefficientM3PerSPaN: leakShare * coefficientM3PerSPaN, exponent: 0.5 },
  };
}

import { referenceAir } from '../air/reference-air.js';
import { requireBetween, requireNotNegative, requirePositive } from '../internal/require.js';
import type { GravityDamperDescription } from '../laws/flow-law-description.js';

/** A gate that lets room air into the flue when the draft exceeds its setting. */
export interface BarometricRegulator {
  /** Diameter of the gate [m]. */
  readonly diameterM: number;
  /** Draft at which it begins to open; 5 to 15 Pa is usual (from memory) [Pa]. */
  readonly settingPa: number;
  /** Share of its area that leaks when shut; 0.02 when absent, our choice [-]. */
  readonly leakShare?: number;
}

/** Least span from the setting to fully open; our choice [Pa]. */
const leastSpanPa = 5;
/** Discharge coefficient of the open gate and of its gap, as of any sharp edge [-]. */
const dischargeCoefficient = 0.6;

/**
 * The law of a barometric regulator: a link from the room to the flue's junction.
 *
 * A gravity damper that cracks at the setting and stands fully open at twice the setting, at least 5 Pa beyond it (our
 * choice); its gap leaks both ways.
 *
 * @param regulator - gate, setting and leak
 * @returns description of the link's law, `from` the room `to` the flue
 *
 * Source: the law of a gravity damper; area and leak of the gate as given.
 */
export function barometricRegulator(regulator: BarometricRegulator): GravityDamperDescription {
  const { diameterM, settingPa, leakShare = 0.02 } = regulator;
  requirePositive('diameterM', diameterM);
  requireNotNegative('settingPa', settingPa);
  requireBetween('leakShare', leakShare, [1e-6, 1]);
  const areaM2 = (Math.PI / 4) * diameterM ** 2;
  const coefficientM3PerSPaN =
    dischargeCoefficient * areaM2 * Math.sqrt(2 / referenceAir.densityKgPerM3);
  return {
    kind: 'gravityDamper',
    areaM2,
    openLossCoefficient: 1 / dischargeCoefficient ** 2,
    crackingPressurePa: settingPa,
    fullyOpenPressurePa: settingPa + Math.max(settingPa, leastSpanPa),
    closedLeakage: { coefficientM3PerSPaN: leakShare * coefficientM3PerSPaN, exponent: 0.5 },
  };
}

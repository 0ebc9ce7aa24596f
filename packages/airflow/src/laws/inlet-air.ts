import { airViscosity } from '../air/air-viscosity.js';
import { referenceAir } from '../air/reference-air.js';

/** Air on one side of an opening. */
export interface AirState {
  /** Temperature [°C]. */
  readonly temperatureC: number;
  /** Density [kg/m3]. */
  readonly densityKgPerM3: number;
}

/** Air that enters an opening, as the laws use it: its density and the logarithms of its ratios to reference air. */
export interface InletAir {
  densityKgPerM3: number;
  /** ln(density / reference density) [-]. */
  logDensityRatio: number;
  /** ln(viscosity / reference viscosity) [-]. */
  logViscosityRatio: number;
}

/**
 * Air as the laws use it.
 *
 * @param air - temperature and density of the air
 * @param into - written and returned; a new object when omitted
 * @returns density and logarithms of its ratios to reference air
 */
export function inletAir(
  air: AirState,
  into: InletAir = { densityKgPerM3: 0, logDensityRatio: 0, logViscosityRatio: 0 },
): InletAir {
  into.densityKgPerM3 = air.densityKgPerM3;
  into.logDensityRatio = Math.log(air.densityKgPerM3 / referenceAir.densityKgPerM3);
  // Sutherland's value at 20 °C, not the rounded one, so that the ratio is exactly 1 there.
  into.logViscosityRatio = Math.log(airViscosity(air.temperatureC) / referenceViscosityPaS);
  return into;
}

const referenceViscosityPaS = airViscosity(referenceAir.temperatureC);

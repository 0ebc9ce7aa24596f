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

const referenceDensityKgPerM3 = 1.2041;
const referenceTemperatureC = 20;

/** Density of reference air, 20 °C and 101,325 Pa, to which coefficients are quoted [kg/m3]. */
export const lawReferenceDensityKgPerM3: number = referenceDensityKgPerM3;

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
  into.logDensityRatio = Math.log(air.densityKgPerM3 / referenceDensityKgPerM3);
  into.logViscosityRatio =
    logRelativeViscosity(air.temperatureC) - logRelativeViscosity(referenceTemperatureC);
  return into;
}

/** ln of viscosity up to a constant, by Sutherland's law with 110.4 K. Source: ASTM E779, appendix, from memory. */
function logRelativeViscosity(temperatureC: number): number {
  const kelvin = temperatureC + 273.15;
  return Math.log((kelvin * Math.sqrt(kelvin)) / (kelvin + 110.4));
}

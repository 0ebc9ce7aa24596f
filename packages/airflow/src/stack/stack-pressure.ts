import { gravity } from '../air/gravity.js';
import { requireFinite, requirePositive } from '../internal/require.js';

/** A climb through a zone, with outdoor air beside it. */
export interface StackClimb {
  /** Density of the zone's air [kg/m3]. */
  readonly zoneDensityKgPerM3: number;
  /** Density of outdoor air [kg/m3]. */
  readonly outdoorDensityKgPerM3: number;
  /** Height climbed; negative is downwards [m]. */
  readonly heightM: number;
}

/**
 * What a climb adds to the pressure of a zone minus outdoors at the same height [Pa].
 *
 * dp = (rho_out − rho_zone) g h. Positive above in winter: warm air pushes out at the top.
 *
 * @param climb - the two densities and the height climbed
 * @returns change of zone minus outdoors [Pa]
 *
 * Source: hydrostatics; ASHRAE Handbook Fundamentals, chapter 16, stack pressure (from memory).
 *
 * @example
 * stackPressure({ zoneDensityKgPerM3: 1.2, outdoorDensityKgPerM3: 1.34, heightM: 2.7 }); // => 3.707
 */
export function stackPressure(climb: StackClimb): number {
  const { zoneDensityKgPerM3, outdoorDensityKgPerM3, heightM } = climb;
  requirePositive('zoneDensityKgPerM3', zoneDensityKgPerM3);
  requirePositive('outdoorDensityKgPerM3', outdoorDensityKgPerM3);
  requireFinite('heightM', heightM);
  return (outdoorDensityKgPerM3 - zoneDensityKgPerM3) * gravity * heightM;
}

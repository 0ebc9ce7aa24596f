import {
  colebrookRoot,
  laminarEndReynolds,
  laminarFactor,
  turbulentStartReynolds,
  writeFrictionJoin,
} from '../internal/friction.js';
import { requireBetween, requirePositive } from '../internal/require.js';

/**
 * Friction factor of a duct by Darcy and Weisbach [-].
 *
 * f = 64/Re up to Re = 2000; 1/sqrt f = -2 log10(e/3.7 + 2.51/(Re sqrt f)) from 4000 on; in between f Re^2 is
 * a cubic of equal value and slope at both ends. The chart of friction factors leaves this range open as
 * critical (Moody, Trans. ASME 66, 1944, from memory); ours is chosen so that the loss rises everywhere
 * with the flow and its slope nowhere jumps.
 *
 * @param reynolds - Reynolds number on the hydraulic diameter [-]
 * @param relativeRoughness - roughness by hydraulic diameter, 0 to 0.3; trustworthy up to 0.05 [-]
 * @returns friction factor, four times that of Fanning [-]
 *
 * Source: Colebrook, J. Instn Civ. Engrs 11 (1939) 133-156, from memory.
 *
 * @example
 * frictionFactor(100000, 0.001); // => 0.022175
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  requirePositive('reynolds', reynolds);
  requireBetween('relativeRoughness', relativeRoughness, [0, 0.3]);
  if (reynolds <= laminarEndReynolds) return laminarFactor / reynolds;
  if (reynolds >= turbulentStartReynolds) return colebrookRoot(reynolds, relativeRoughness) ** -2;
  const join = new Float64Array(2);
  writeFrictionJoin(relativeRoughness, join, 0);
  const t = reynolds - laminarEndReynolds;
  const turbulent = t * t * (join[0]! + t * join[1]!);
  return (laminarFactor + turbulent / reynolds) / reynolds;
}

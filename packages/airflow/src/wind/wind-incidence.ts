import { requireFinite } from '../internal/require.js';

/** A wind and a face of a building, as compass directions. */
export interface WindAndFace {
  /** Direction the wind comes from, clockwise from north [°]. */
  readonly windFromDeg: number;
  /** Direction the face looks to, that is, its outward normal, clockwise from north [°]. */
  readonly faceAzimuthDeg: number;
}

/**
 * Angle between the direction the wind comes from and the outward normal of a face [°].
 *
 * 0 is wind square onto the face, 180 is the lee side; left and right are not told apart.
 *
 * @param directions - wind and face as compass directions
 * @returns incidence, 0 to 180 [°]
 *
 * @example
 * windIncidence({ windFromDeg: 350, faceAzimuthDeg: 20 }); // => 30
 */
export function windIncidence(directions: WindAndFace): number {
  const { windFromDeg, faceAzimuthDeg } = directions;
  requireFinite('windFromDeg', windFromDeg);
  requireFinite('faceAzimuthDeg', faceAzimuthDeg);
  const turn = Math.abs(windFromDeg - faceAzimuthDeg) % 360;
  return turn > 180 ? 360 - turn : turn;
}

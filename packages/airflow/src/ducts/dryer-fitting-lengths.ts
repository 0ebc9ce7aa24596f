import type { Provenance } from '../provenance.js';

/** Elbows of a dryer's exhaust duct: radius on the axis and make. */
export type DryerFitting =
  | 'mitred 4 in 45°'
  | 'mitred 4 in 90°'
  | 'smooth 6 in 45°'
  | 'smooth 6 in 90°'
  | 'smooth 8 in 45°'
  | 'smooth 8 in 90°'
  | 'smooth 10 in 45°'
  | 'smooth 10 in 90°';

/** Length that a code counts for a fitting. */
export interface FittingLength extends Provenance {
  /** Equivalent length of 4 in. duct [m]. */
  readonly lengthM: number;
}

const table = 'IRC Table M1502.4.5.1, dryer exhaust duct fitting equivalent length';
const restated = `${table}, as restated by a maker of fittings`;

/**
 * Equivalent lengths of the elbows of a 4 in. dryer duct, by the radius of the elbow [m].
 *
 * They are a code's rule for counting length; they are not measured losses.
 */
export const dryerFittingLengths: Readonly<Record<DryerFitting, FittingLength>> = Object.freeze({
  'mitred 4 in 45°': inches(30, table),
  'mitred 4 in 90°': inches(60, table),
  'smooth 6 in 45°': inches(12, table),
  'smooth 6 in 90°': inches(21, table),
  'smooth 8 in 45°': inches(12, table),
  'smooth 8 in 90°': inches(19, restated),
  'smooth 10 in 45°': inches(9, restated),
  'smooth 10 in 90°': inches(18, restated),
});

function inches(lengthIn: number, source: string): FittingLength {
  return Object.freeze({ lengthM: lengthIn * 0.0254, source, status: 'found' } as const);
}

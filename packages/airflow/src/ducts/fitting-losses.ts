import type { Provenance } from '../provenance.js';

/** Fittings for which a loss coefficient is stated; r/D is the bend's radius on its axis by the diameter. */
export type DuctFitting =
  | 'smooth elbow 90°, r/D 0.75'
  | 'smooth elbow 90°, r/D 1'
  | 'smooth elbow 90°, r/D 1.5'
  | 'stamped elbow 90°, r/D 1.5, 4 in'
  | 'stamped elbow 90°, r/D 1.5, 6 in'
  | 'stamped elbow 90°, r/D 1.5, 8 in and more'
  | 'segmented elbow 90°, r/D 1.5, 3 in'
  | 'segmented elbow 90°, r/D 1.5, 6 in'
  | 'segmented elbow 90°, r/D 1.5, 9 in'
  | 'segmented elbow 90°, r/D 1.5, 12 in'
  | 'mitred elbow 30°'
  | 'mitred elbow 45°'
  | 'mitred elbow 60°'
  | 'mitred elbow 90°'
  | 'bellmouth entry'
  | 'flush entry'
  | 'projecting entry'
  | 'tapered hood 45°'
  | 'hood entry'
  | 'damper blade, open'
  | 'damper, open'
  | 'exit';

/** Loss of a fitting by the velocity pressure of the duct that it belongs to. */
export interface FittingLoss extends Provenance {
  /** Loss coefficient [-]. */
  readonly lossCoefficient: number;
}

const memoryOf = (lossCoefficient: number, source: string): FittingLoss =>
  Object.freeze({ lossCoefficient, source, status: 'memory' } as const);
const foundIn = (lossCoefficient: number, source: string): FittingLoss =>
  Object.freeze({ lossCoefficient, source, status: 'found' } as const);

const ductDesign = 'SMACNA HVAC Systems Duct Design, loss coefficients of elbows';
const bladeDamper = 'SMACNA HVAC Systems Duct Design, butterfly damper with its blade at 0°';
const stamped = 'ASHRAE Duct Fitting Database, fitting CD3-1';
const segmented = 'ASHRAE Duct Fitting Database, fitting CD3-9';
const hoodExample =
  'example of a hood and its duct (Çengel and Cimbala, Fluid Mechanics, example 14-1, as restated in public)';
const textbooks = 'textbooks of fluid mechanics';

/**
 * Loss coefficients of the fittings of household exhaust and make-up ducts [-].
 *
 * Only the entries that such ducts need. For wall caps, roof jacks and louvres of small ducts no
 * trustworthy open table was found: see `terminalOpenings`.
 */
export const fittingLosses: Readonly<Record<DuctFitting, FittingLoss>> = Object.freeze({
  'smooth elbow 90°, r/D 0.75': memoryOf(0.33, ductDesign),
  'smooth elbow 90°, r/D 1': memoryOf(0.22, ductDesign),
  'smooth elbow 90°, r/D 1.5': memoryOf(0.15, ductDesign),
  'stamped elbow 90°, r/D 1.5, 4 in': memoryOf(0.21, stamped),
  'stamped elbow 90°, r/D 1.5, 6 in': memoryOf(0.14, stamped),
  'stamped elbow 90°, r/D 1.5, 8 in and more': memoryOf(0.11, stamped),
  'segmented elbow 90°, r/D 1.5, 3 in': memoryOf(0.51, segmented),
  'segmented elbow 90°, r/D 1.5, 6 in': memoryOf(0.28, segmented),
  'segmented elbow 90°, r/D 1.5, 9 in': foundIn(0.21, hoodExample),
  'segmented elbow 90°, r/D 1.5, 12 in': memoryOf(0.18, segmented),
  'mitred elbow 30°': memoryOf(0.16, ductDesign),
  'mitred elbow 45°': memoryOf(0.34, ductDesign),
  'mitred elbow 60°': memoryOf(0.55, ductDesign),
  'mitred elbow 90°': memoryOf(1.2, ductDesign),
  'bellmouth entry': foundIn(
    0.03,
    'bellmouth from a plenum, radius by diameter 0.21 (engdatabase.com, fitting losses)',
  ),
  'flush entry': memoryOf(0.5, textbooks),
  'projecting entry': memoryOf(1, textbooks),
  'tapered hood 45°': foundIn(0.15, 'lecture on duct design (paperzz.com 7485866)'),
  'hood entry': foundIn(1.3, hoodExample),
  'damper blade, open': memoryOf(0.2, bladeDamper),
  'damper, open': foundIn(1.8, hoodExample),
  exit: memoryOf(1, textbooks),
});

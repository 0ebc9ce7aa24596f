import { dryerFittingLengths, fittingLosses } from '@evendraft/airflow';
import type { Source } from '../house.js';
import { ourChoice, sourceOf } from './sources.js';

/** What one fitting takes: a loss coefficient, or the length of duct that loses as much. */
export type FittingResistance =
  | { readonly loss: number; readonly source: Source }
  | { readonly equivalentLengthM: number; readonly source: Source };

/** Elbows by their short names, for which the make is assumed by the size of the duct. */
const elbowShare: Readonly<Record<string, number>> = {
  elbow: 1,
  'elbow 90': 1,
  '90 elbow': 1,
  'elbow 45': 0.5,
  '45 elbow': 0.5,
};

const tabled: readonly (readonly [string, FittingResistance])[] = [
  ...Object.entries(fittingLosses).map(
    ([name, entry]) => [name, { loss: entry.lossCoefficient, source: sourceOf(entry) }] as const,
  ),
  ...Object.entries(dryerFittingLengths).map(
    ([name, entry]) =>
      [name, { equivalentLengthM: entry.lengthM, source: sourceOf(entry) }] as const,
  ),
];

const byPlainName = new Map(tabled.map(([name, entry]) => [plainFitting(name), entry]));

/** Every name of a fitting that needs no loss of its own, the short ones first. */
export const fittingNames: readonly string[] = [
  'elbow 90',
  'elbow 45',
  ...tabled.map(([name]) => name),
];

/**
 * The resistance of a fitting by its name. Case, commas, hyphens and the degree sign do not matter.
 *
 * An elbow by its short name is taken as a stamped one of the size next to the duct's; one of 45° as half of
 * it.
 *
 * @param name - as typed
 * @param diameterM - diameter of a round duct of the same area [m]
 * @returns what one takes, with its source; `undefined` for an unknown name
 */
export function fittingByName(name: string, diameterM: number): FittingResistance | undefined {
  const plain = plainFitting(name);
  const share = Object.hasOwn(elbowShare, plain) ? elbowShare[plain] : undefined;
  if (share === undefined) return byPlainName.get(plain);
  const make =
    diameterM < 0.127
      ? 'stamped elbow 90°, r/D 1.5, 4 in'
      : diameterM < 0.178
        ? 'stamped elbow 90°, r/D 1.5, 6 in'
        : 'stamped elbow 90°, r/D 1.5, 8 in and more';
  const { lossCoefficient, source } = fittingLosses[make];
  const reason = share === 1 ? `taken as: ${make}` : `half of: ${make}`;
  return { loss: share * lossCoefficient, source: ourChoice(`${reason} (${source})`) };
}

function plainFitting(name: string): string {
  return name
    .toLowerCase()
    .replace(/[°,_-]|\bdeg(rees?)?\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

import type { OfferedSizes } from '../remedy.js';
import { StudyArgumentError } from '../study-argument-error.js';

/** A size that was tried. */
export interface TriedSize {
  readonly size: number;
  readonly holds: boolean;
  /** The least margin that was met; of a size that fails, in the situation that shows it; null if unsolved [Pa]. */
  readonly leastMarginPa: number | null;
}

/** Sizes in the first row where any size may be had. */
const firstRow = 13;

/**
 * The sizes to try at first, in rising order; in equal ratios where any size may be had.
 *
 * @param offered - what is offered
 * @returns sizes [SI]
 * @throws StudyArgumentError where the range is upside down or no size is positive
 */
export function offeredSizes(offered: OfferedSizes): readonly number[] {
  if (offered.kind === 'listed') {
    if (offered.sizes.length === 0 || !offered.sizes.every((size) => size > 0)) {
      throw new StudyArgumentError('sizes', offered.sizes.join(', '), 'positive sizes');
    }
    return [...offered.sizes].sort((a, b) => a - b);
  }
  const { least, most } = offered;
  if (!(least > 0 && most > least)) {
    throw new StudyArgumentError('sizes', `${least} to ${most}`, 'a range from above zero upwards');
  }
  return Array.from({ length: firstRow }, (_, i) => least * (most / least) ** (i / (firstRow - 1)));
}

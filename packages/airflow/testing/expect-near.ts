import { expect } from 'vitest';

/** How far from the expected value is still right, and why. */
export interface Nearness {
  /** Allowed difference as a share of the expected value [-]. */
  readonly relative?: number;
  /** Allowed difference in the unit of the value. */
  readonly absolute?: number;
  /** Why the tolerance is looser than 1e-9; must be given then. */
  readonly because?: string;
}

/**
 * Expects a number within a stated tolerance of another, 1e-9 of it when none is stated.
 *
 * @param actual - what the code gave
 * @param expected - what it should give
 * @param nearness - tolerance, and its reason when it is looser than 1e-9
 */
export function expectNear(actual: number, expected: number, nearness: Nearness = {}): void {
  const { relative = 0, absolute = 0, because } = nearness;
  const stated = relative > 0 || absolute > 0;
  if ((relative > 1e-9 || absolute > 1e-9) && because === undefined) {
    throw new Error('a tolerance looser than 1e-9 needs a reason');
  }
  const allowed = stated ? absolute + relative * Math.abs(expected) : 1e-9 * Math.abs(expected);
  const difference = Math.abs(actual - expected);
  expect(
    difference <= allowed,
    `${actual} is ${difference} away from ${expected}; allowed is ${allowed}`,
  ).toBe(true);
}

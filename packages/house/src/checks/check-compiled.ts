import { compileHouse } from '../compile-house.js';
import type { House } from '../house.js';
import { countOperatingStates } from '../operating-states.js';
import { report, type Reading } from '../reading/reading.js';

/** Most situations that a study may list one by one; our choice, some minutes of work. */
const mostSituations = 200_000;

/**
 * Reports what only the compiled house shows: leakage that is used up by modelled openings, and more
 * operating states than can be gone through.
 *
 * @param reading - where issues are collected
 * @param house - a house without errors so far
 */
export function checkCompiled(reading: Reading, house: House): void {
  const compiled = compileHouse(house);
  if (!compiled.ok) reading.issues.push(...compiled.issues);
  const situations =
    countOperatingStates(house) * house.weathers.length * house.airtightness.cases.length;
  if (situations > mostSituations) {
    const parameters = { found: situations, allowed: mostSituations };
    report(reading, ['exhaust'], { code: 'states.too-many', parameters });
  }
}

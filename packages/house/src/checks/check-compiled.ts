import { compileHouse } from '../compile-house.js';
import type { House } from '../house.js';
import { countOperatingStates } from '../operating-states.js';
import { report, type Reading } from '../reading/reading.js';

/** Most situations that a study may solve one by one; our choice, some minutes of work. */
const mostSituations = 200_000;

/**
 * Reports what only the compiled house shows: leakage that is used up by modelled openings, and more
 * situations than a study can go through one by one.
 *
 * Exhaust and supply that nothing follows is left out of the count: of these a study solves only the settings
 * that carry most and least, because more air out of a room raises no pressure.
 *
 * @param reading - where issues are collected
 * @param house - a house without errors so far
 */
export function checkCompiled(reading: Reading, house: House): void {
  const compiled = compileHouse(house);
  if (!compiled.ok) reading.issues.push(...compiled.issues);
  const situations =
    countOperatingStates({ ...house, devices: unorderedDevices(house) }) *
    house.weathers.length *
    house.airtightness.cases.length;
  if (situations > mostSituations) {
    const parameters = { found: situations, allowed: mostSituations };
    report(reading, [largestPart(house)], { code: 'states.too-many', parameters });
  }
}

/** Devices whose settings cannot be ordered by what they carry: another thing starts or opens with them. */
function unorderedDevices(house: House): House['devices'] {
  const followed = new Set(
    [
      ...house.devices.flatMap(({ interlock, damperOpensWith }) => [interlock, damperOpensWith]),
      ...house.makeUpOpenings.map(({ interlock }) => interlock),
    ].map((interlock) => interlock?.driver),
  );
  return house.devices.filter(({ id }) => followed.has(id));
}

/** Section of the file that makes most of the situations. */
function largestPart(house: House): string {
  const nothing: House = { ...house, devices: [], ventilators: [], doors: [], openings: [] };
  const parts = [
    ['exhaust', countOperatingStates({ ...nothing, devices: unorderedDevices(house) })],
    ['doors', countOperatingStates({ ...nothing, doors: house.doors })],
    ['openings', countOperatingStates({ ...nothing, openings: house.openings })],
    ['weather', house.weathers.length],
  ] as const;
  const [first] = [...parts].sort(([, one], [, other]) => other - one);
  return first?.[0] ?? 'exhaust';
}

import type { IssuePath } from '@evendraft/text';
import type { TestPreparation } from '../house.js';
import { originOf, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/**
 * How a thing stood during the airtightness test: as its own key says, or the test's preparation, or as assumed.
 *
 * @param reading - where issues and assumptions are collected
 * @param preparation - what the test says about its preparation
 * @param thing - the thing, what its own key says, and what is assumed otherwise
 * @returns its stand
 */
export function readStand(
  reading: Reading,
  preparation: ReadonlyMap<string, TestPreparation>,
  thing: {
    readonly name: string;
    readonly path: IssuePath;
    readonly given: TestPreparation | undefined;
    readonly assumed: TestPreparation;
    /** Whether the stand changes anything, so that an assumption about it must be listed. */
    readonly matters: boolean;
  },
): TestPreparation {
  const { name, path, given, assumed, matters } = thing;
  const prepared = preparation.get(name);
  if (given !== undefined && prepared !== undefined && given !== prepared) {
    const parameters = { name, own: given, prepared };
    report(reading, [...path, 'duringTest'], {
      code: 'airtightness.preparation-disagrees',
      parameters,
    });
  }
  const stand = given ?? prepared;
  if (stand !== undefined) return stand;
  if (matters) {
    reading.assumptions.push({
      origin: originOf(path),
      what: 'stand during the airtightness test',
      value: assumed,
      source: ourChoice('as such a thing stands while nobody prepares a test'),
    });
  }
  return assumed;
}

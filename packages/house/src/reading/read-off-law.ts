import type { FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import { leakLaw } from '../file/opening-law.js';
import type { MeasuredLeak } from '../file/schema/measured-leak.js';
import type { TestPreparation } from '../house.js';
import { checkLaw } from './read-law.js';
import { originOf, type Reading } from './reading.js';
import { damperExponentSource, ourChoice } from './sources.js';

/** Exponent of the leakage of a closed damper [-]. */
export const damperExponent = 0.5;

/**
 * The law of a closed damper, where its leakage is given; else it is listed where that leakage is taken to be.
 *
 * @param reading - where issues and assumptions are collected
 * @param item - what the file says, where it stands, and how it stood during the test
 * @returns the law, if the leakage is given
 */
export function readOffLaw(
  reading: Reading,
  item: {
    readonly inFile: { readonly closedLeakage?: MeasuredLeak | undefined };
    readonly path: IssuePath;
    readonly duringTest: TestPreparation;
    /** Whether it has a damper at all. */
    readonly hasFlow: boolean;
  },
): FlowLawDescription | undefined {
  const { inFile, path, duringTest, hasFlow } = item;
  const origin = originOf(path);
  if (inFile.closedLeakage !== undefined) {
    reading.assumptions.push({
      origin,
      what: 'flow exponent of its closed damper',
      value: { si: damperExponent, dimension: 'ratio' },
      source: damperExponentSource,
    });
    return checkLaw(
      reading,
      [...path, 'closedLeakage'],
      leakLaw(inFile.closedLeakage, damperExponent),
    );
  }
  if (!hasFlow) return undefined;
  const sealed = duringTest === 'sealed';
  reading.assumptions.push({
    origin,
    what: 'leakage of its closed damper',
    value: sealed ? 'none: it was sealed during the test' : 'inside the tested leakage',
    source: ourChoice('no leakage of the closed damper is given'),
  });
  return undefined;
}

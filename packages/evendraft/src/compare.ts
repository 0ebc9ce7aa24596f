import type { House } from '@evendraft/house';
import {
  compareRemedies,
  offeredRemedies,
  type CompareOptions,
  type OfferOptions,
} from '@evendraft/remedies';
import type { Comparison } from '@evendraft/report';
import { defaultLimitSet, type LimitSet } from '@evendraft/rules';
import { libraryVersion } from './version.js';

/** What is laid side by side. */
export interface CompareRequest extends Omit<CompareOptions, 'remedies'> {
  /** The remedies; the usual ones when absent. */
  readonly remedies?: readonly OfferOptions[];
  /** The limits to keep; those by vent type when absent. */
  readonly limitSet?: LimitSet;
}

/** What is compared where nothing else was asked for: four kinds of make-up air, and less exhaust. */
const usualRemedies: readonly OfferOptions[] = [
  { kind: 'make-up duct' },
  { kind: 'barometric make-up duct' },
  { kind: 'motorized make-up duct' },
  { kind: 'powered make-up air' },
  { kind: 'speed cap' },
];

/**
 * Sizes remedies to the same limits and lays them side by side.
 *
 * It clears nothing: after any change the house is to be assessed and tested again.
 *
 * @param house - the house without a remedy
 * @param request - remedies, limit set, rank, year, signal, what a stop gives, and progress
 * @returns the comparison, plain JSON
 */
export async function compare(house: House, request: CompareRequest = {}): Promise<Comparison> {
  const { remedies = usualRemedies, limitSet = defaultLimitSet, ...options } = request;
  const offered = offeredRemedies(house, remedies);
  const comparison = await compareRemedies(house, limitSet, {
    ...options,
    remedies: offered.flatMap((each) => (each.status === 'offered' ? [each.remedy] : [])),
  });
  const { stopped } = comparison;
  return {
    schema: 'evendraft-comparison',
    schemaVersion: 2,
    libraryVersion,
    house: { name: house.name, digest: house.digest },
    leftOut: offered.flatMap((each, index) =>
      each.status === 'offered' ? [] : [`${remedies[index]!.kind}: ${each.why}`],
    ),
    ...(stopped === undefined
      ? {}
      : {
          incomplete: {
            parts: [
              {
                work: 'remedies',
                ...stopped,
                notProved: 'The others were not sized, so that a better one may be among them.',
              },
            ],
          },
        }),
    comparison,
  };
}

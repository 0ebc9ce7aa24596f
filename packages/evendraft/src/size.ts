import type { House } from '@evendraft/house';
import {
  offeredRemedies,
  targetsAgainstPushing,
  targetsOfLimitSet,
  type OfferOptions,
} from '@evendraft/remedies';
import type { Sizing, UnfinishedPart } from '@evendraft/report';
import { defaultLimitSet, type LimitSet } from '@evendraft/rules';
import {
  sizeRemedy,
  sizeUntilStopped,
  type PressureTarget,
  type Remedy,
  type SizingOptions,
  type WhenStopped,
} from '@evendraft/studies';
import { libraryVersion } from './version.js';

/** What size is asked of what. */
export interface SizeRequest {
  readonly remedy: OfferOptions;
  /** Pressures to keep; those of the limit set when absent. */
  readonly targets?: readonly PressureTarget[];
  /** A pressure above outdoors that no room inside may exceed, beside the targets; none when absent [Pa]. */
  readonly highestPa?: number;
  /** The limits to keep; those by vent type when absent. */
  readonly limitSet?: LimitSet;
  readonly signal?: AbortSignal;
  /** Makes workers for a house where the work is long; all is solved in this thread when absent. */
  readonly createPool?: SizingOptions['createPool'];
  /**
   * What a stop gives: nothing, so that the promise rejects with the signal's reason, or the sizes that were judged by
   * then, marked as incomplete; it rejects when absent.
   */
  readonly whenStopped?: WhenStopped;
  /** Told how many sizes are done of the most that may be tried, a size under way as the part of it that is done. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** The size, or why the question has no answer, as a sentence without a full stop. */
export type SizeResult =
  | { readonly status: 'answered'; readonly sizing: Sizing }
  | { readonly status: 'not possible'; readonly why: string };

/**
 * Finds the size of one remedy that keeps the limits in every state and weather.
 *
 * It clears nothing: after any change the house is to be assessed and tested again.
 *
 * @param house - the house without the remedy
 * @param request - remedy, targets or limit set, signal, what a stop gives, and progress
 * @returns the sizing, plain JSON, or why there is none
 */
export async function size(house: House, request: SizeRequest): Promise<SizeResult> {
  const { limitSet = defaultLimitSet, highestPa, signal, onProgress, createPool } = request;
  const [offered] = offeredRemedies(house, [request.remedy]);
  if (offered === undefined || offered.status === 'not possible') {
    return { status: 'not possible', why: offered?.why ?? 'no remedy was asked for' };
  }
  const ofSet = targetsOfLimitSet(house, limitSet);
  const wanted = request.targets ?? ofSet.targets;
  if (wanted.length === 0) {
    return {
      status: 'not possible',
      why: `the set ${limitSet.id} has no limit for any appliance of this house; give a target in pascals`,
    };
  }
  const targets =
    highestPa === undefined ? wanted : [...wanted, ...targetsAgainstPushing(house, highestPa)];
  const { remedy } = offered;
  const sized = request.whenStopped === 'keep' ? sizeUntilStopped : sizeRemedy;
  const result = await sized(
    house,
    { remedy, targets },
    {
      ...(signal === undefined ? {} : { signal }),
      ...(onProgress === undefined ? {} : { onProgress }),
      ...(createPool === undefined ? {} : { createPool }),
    },
  );
  const { kind, what, dimension, assumptions, built } = remedy;
  return {
    status: 'answered',
    sizing: {
      schema: 'evendraft-sizing',
      schemaVersion: 1,
      libraryVersion,
      house: { name: house.name, digest: house.digest },
      ...(result.status === 'unfinished'
        ? { incomplete: { parts: [unfinishedPart(remedy, result.tried.length)] } }
        : {}),
      ...(request.targets === undefined ? { limitSet: limitSet.id } : {}),
      remedy: {
        kind,
        what,
        dimension,
        wanted: remedy.wanted,
        assumptions,
        ...(built === undefined ? {} : { built }),
      },
      targets,
      withoutLimit: request.targets === undefined ? ofSet.withoutLimit : [],
      result,
    },
  };
}

function unfinishedPart({ wanted }: Remedy, done: number): UnfinishedPart {
  return {
    work: 'sizes',
    done,
    notProved: `No size is shown to be the ${wanted} that keeps every target.`,
  };
}

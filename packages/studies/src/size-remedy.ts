import type { House } from '@evendraft/house';
import type { TargetMargin } from './internal/target-margins.js';
import { nextTurn } from './internal/next-turn.js';
import { offeredSizes, type TriedSize } from './internal/offered-sizes.js';
import type { SizingObstacle } from './internal/why-impossible.js';
import { remedyTrial, type RemedyTrial } from './internal/remedy-trial.js';
import { unfinishedSizing, type UnfinishedSizing } from './internal/unfinished-sizing.js';
import type { PressureTarget } from './pressure-target.js';
import type { Remedy } from './remedy.js';
import { StudyArgumentError } from './study-argument-error.js';
import type { PooledOptions } from './study-options.js';

export type { TargetMargin } from './internal/target-margins.js';
export type { SizingObstacle } from './internal/why-impossible.js';
export type { TriedSize } from './internal/offered-sizes.js';
export type { JudgedSize, UnfinishedSizing } from './internal/unfinished-sizing.js';

/** The answer to a question of size; plain JSON. */
export type SizingResult = {
  readonly question: 'size';
  readonly remedy: string;
  /** Sizes that were tried, in rising order, each held against every state and weather or failed in one. */
  readonly tried: readonly TriedSize[];
  /** False where a larger size fails although a smaller one holds, or the other way for a largest size. */
  readonly monotone: boolean;
  readonly solves: number;
} & (
  | {
      readonly status: 'nothing needed';
      readonly margins: readonly TargetMargin[];
    }
  | {
      readonly status: 'sized';
      readonly size: number;
      /** Of every target at that size, over all states and weathers. */
      readonly margins: readonly TargetMargin[];
      /** The nearest size tried on the wanted side, which fails; absent where none was offered. */
      readonly failsAt?: number;
      readonly proved: boolean;
    }
  | {
      readonly status: 'impossible';
      /** The size that comes closest. */
      readonly best: number;
      /** What fails there. */
      readonly margins: readonly TargetMargin[];
      readonly obstacle: SizingObstacle;
    }
);

/** What is asked of a size. */
export interface SizeQuestion {
  readonly remedy: Remedy;
  readonly targets: readonly PressureTarget[];
}

/** How a sizing is watched and stopped. */
export interface SizingOptions extends Pick<PooledOptions, 'signal' | 'createPool'> {
  /** Told how many sizes are done of the most that may be tried, a size under way as the part of it that is done. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Sizes between two neighbours of a continuous size that are held equal: half a per cent. */
const bracketRatio = 1.005;

/**
 * Finds the size of a remedy that keeps every target in every state, weather and airtightness case.
 *
 * Every size offered is tried; where any size may be had, a row of sizes and then the bracket between the last
 * that fails and the first that holds, down to half a per cent, also where what holds lies between a size that
 * draws too much and one that pushes too much. A size fails by one situation that is solved; it
 * holds only by a search of all of them, those included in which an interlocked damper stays shut. Nothing is
 * assumed of how pressures answer to the size: a larger leeward or high opening can deepen the suction.
 *
 * @param house - the house without the remedy
 * @param asked - remedy and targets
 * @param options - signal, progress, workers
 * @returns the size with its margins; that nothing is needed; or why no size offered does it
 * @throws StudyArgumentError where there is no target, a zone is unknown, or the house does not compile
 */
export async function sizeRemedy(
  house: House,
  asked: SizeQuestion,
  options: SizingOptions = {},
): Promise<SizingResult> {
  return search(watchedTrial(house, asked, options));
}

/**
 * The same, and where it is stopped what is known by then.
 *
 * @param house - the house without the remedy
 * @param asked - remedy and targets
 * @param options - signal, progress, workers
 * @returns the answer as {@link sizeRemedy} gives it, or what is known so far, which is none
 * @throws StudyArgumentError as {@link sizeRemedy} does
 */
export async function sizeUntilStopped(
  house: House,
  asked: SizeQuestion,
  options: SizingOptions = {},
): Promise<SizingResult | UnfinishedSizing> {
  const watched = watchedTrial(house, asked, options);
  try {
    return await search(watched);
  } catch (error) {
    if (options.signal?.aborted !== true) throw error;
    return unfinishedSizing(asked.remedy, watched.trial);
  }
}

/** A trial that tells how far it is, and stops between two sizes. */
interface WatchedTrial {
  readonly remedy: Remedy;
  readonly sizes: readonly number[];
  readonly trial: RemedyTrial;
  /** The next piece of the trial's work. */
  readonly next: <Result>(work: () => Promise<Result>) => Promise<Result>;
  /** Tells that all is done. */
  readonly end: () => void;
}

function watchedTrial(
  house: House,
  { remedy, targets }: SizeQuestion,
  { signal, createPool, onProgress }: SizingOptions,
): WatchedTrial {
  requireTargets(house, targets);
  const sizes = offeredSizes(remedy.offered);
  // The house as it is counts as one, and the end, where what holds is looked at once more.
  const most = sizes.length + halvingsAtMost(sizes, remedy) + 2;
  let done = 0;
  const trial = remedyTrial(
    { house, remedy, targets },
    {
      ...(signal === undefined ? {} : { signal }),
      ...(createPool === undefined ? {} : { createPool }),
      onProgress: (part, of) => onProgress?.(done + (0.99 * part) / of, most),
    },
  );
  return {
    remedy,
    sizes,
    trial,
    next: async (work) => {
      signal?.throwIfAborted();
      const result = await work();
      done = Math.min(done + 1, most - 1);
      onProgress?.(done, most);
      await nextTurn();
      return result;
    },
    end: () => onProgress?.(most, most),
  };
}

/** Halvings that narrow the widest gap between neighbours of the first row, where any size may be had. */
function halvingsAtMost(sizes: readonly number[], { offered }: Remedy): number {
  const [first, second] = sizes;
  if (offered.kind === 'listed' || first === undefined || second === undefined) return 0;
  return Math.ceil(Math.log2(Math.log(second / first) / Math.log(bracketRatio)));
}

/** Goes through the sizes; rejects where it is stopped. */
async function search(watched: WatchedTrial): Promise<SizingResult> {
  const { remedy, trial, sizes } = watched;
  const head = { question: 'size', remedy: remedy.what } as const;
  if (remedy.kind !== 'airtightness' && remedy.kind !== 'exhaust flow') {
    const margins = await watched.next(() => trial.asItIs());
    if (margins.every(({ marginPa }) => marginPa >= 0)) {
      return { ...head, status: 'nothing needed', margins, tried: [], monotone: true, solves: 0 };
    }
  }
  for (const size of sizes) await watched.next(() => trial.at(size));
  if (remedy.offered.kind === 'any') {
    await findWindow(watched);
    await narrow(watched);
  }

  const tried = trial.tried();
  const order = remedy.wanted === 'smallest' ? tried : [...tried].reverse();
  const found = order.findIndex(({ holds }) => holds);
  const monotone = order.slice(Math.max(0, found)).every(({ holds }) => holds) || found < 0;
  const common = { ...head, tried, monotone, solves: trial.solves() };
  const chosen = order[found];
  if (chosen === undefined) {
    const best = (await watched.next(() => trial.closest())) ?? sizes[0]!;
    const { margins } = await trial.verify(best);
    watched.end();
    const worst = margins.reduce<TargetMargin | undefined>(
      (one, other) => (one === undefined || other.marginPa < one.marginPa ? other : one),
      undefined,
    );
    const obstacle: SizingObstacle =
      worst === undefined ? { kind: 'does not reach' } : trial.obstacle(best, worst);
    return { ...common, status: 'impossible', best, margins, obstacle };
  }
  const { margins, proved } = await trial.verify(chosen.size);
  watched.end();
  const failsAt = order[found - 1]?.size;
  return {
    ...common,
    status: 'sized',
    size: chosen.size,
    margins,
    ...(failsAt === undefined ? {} : { failsAt }),
    proved,
  };
}

/**
 * Looks for sizes that hold between neighbours of which one draws too much and the other pushes too much: what
 * holds may be narrower than the row of sizes.
 */
async function findWindow({ trial, next }: WatchedTrial): Promise<void> {
  for (let halving = 0; halving < 40; halving += 1) {
    const tried = trial.tried();
    if (tried.some(({ holds }) => holds)) return;
    const place = tried.findIndex(({ size }, index) => {
      const before = tried[index - 1]?.size;
      if (before === undefined || size / before < bracketRatio) return false;
      const [one, other] = [trial.failedSide(before), trial.failedSide(size)];
      return one !== undefined && other !== undefined && one !== other;
    });
    const [low, high] = [tried[place - 1], tried[place]];
    if (low === undefined || high === undefined) return;
    await next(() => trial.at(Math.sqrt(low.size * high.size)));
  }
}

/** Narrows the bracket before the first size that holds, seen from the wanted side. */
async function narrow({ trial, next, remedy: { wanted } }: WatchedTrial): Promise<void> {
  for (let halving = 0; halving < 40; halving += 1) {
    const tried = trial.tried();
    const order = wanted === 'smallest' ? tried : [...tried].reverse();
    const found = order.findIndex(({ holds }) => holds);
    const [fails, holds] = [order[found - 1], order[found]];
    if (fails === undefined || holds === undefined) return;
    const [low, high] = [Math.min(fails.size, holds.size), Math.max(fails.size, holds.size)];
    if (high / low < bracketRatio) return;
    await next(() => trial.at(Math.sqrt(low * high)));
  }
}

function requireTargets(house: House, targets: readonly PressureTarget[]): void {
  if (targets.length === 0) throw new StudyArgumentError('targets', 'empty', 'one or more');
  for (const { zone, limitPa, side, id } of targets) {
    if (!house.zones.some((each) => each.id === zone)) {
      throw new StudyArgumentError('targets', zone, 'the id of a zone of the house');
    }
    const possible = side === 'not below' ? limitPa < 0 : limitPa > 0;
    if (!possible) {
      throw new StudyArgumentError(
        `targets.${id}`,
        `${side} ${limitPa} Pa`,
        'a limit on suction below zero, a limit on pushing outward above zero',
      );
    }
  }
}

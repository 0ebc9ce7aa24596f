import { compileHouse, type House } from '@evendraft/house';
import type { LimitSet } from '@evendraft/rules';
import {
  exhaustCurveStudy,
  sizeRemedy,
  type ExhaustCurveStudy,
  type Stopped,
} from '@evendraft/studies';
import type { CompareOptions } from './compare-options.js';
import { largestAlone } from './internal/largest-alone.js';
import { remedyRowOf } from './internal/remedy-row-of.js';
import { largestExhaust } from './largest-exhaust.js';
import { rankRemedies, usualRankRule, type RankRule } from './rank-rule.js';
import type { RemedyRow } from './remedy-row.js';
import { targetsAgainstPushing, targetsOfLimitSet } from './targets-of-limit-set.js';

/** What sizing takes of the work on one remedy; the rest is a year, where one is asked for. */
const sizingShare = 0.8;

/** Remedies side by side; plain JSON. */
export interface RemedyComparison {
  readonly question: 'compare';
  readonly limitSet: string;
  /** The best first. */
  readonly rows: readonly RemedyRow[];
  readonly rank: RankRule;
  /** The pressure against the flow of the largest exhaust, in the coldest weather, as the house is. */
  readonly asItIs?: ExhaustCurveStudy;
  /** Appliances without a limit in the set: nothing here is sized for them. */
  readonly withoutLimit: readonly string[];
  /** Present where the work was stopped: of how many remedies these are the first. */
  readonly stopped?: Stopped;
}

/**
 * Sizes remedies to a limit set and lays them side by side.
 *
 * No row clears an appliance: after any change the house is to be assessed and tested again.
 *
 * @param house - the house without a remedy
 * @param limitSet - the limits to keep
 * @param options - remedies, ranking, year, signal, what a stop gives, and progress
 * @returns rows in the order of the rule; no rows where the set has no limit for any appliance
 */
export async function compareRemedies(
  house: House,
  limitSet: LimitSet,
  options: CompareOptions,
): Promise<RemedyComparison> {
  const { remedies, reservePa = 0, rank = usualRankRule, onProgress, signal, createPool } = options;
  const ofSet = targetsOfLimitSet(house, limitSet, reservePa);
  const wanted = options.targets ?? ofSet.targets;
  const targets =
    options.highestPa === undefined || wanted.length === 0
      ? wanted
      : [...wanted, ...targetsAgainstPushing(house, options.highestPa)];
  const withoutLimit = options.targets === undefined ? ofSet.withoutLimit : [];
  const rows: RemedyRow[] = [];
  const pooled = {
    ...(signal === undefined ? {} : { signal }),
    ...(createPool === undefined ? {} : { createPool }),
  };
  let stopped: Stopped | undefined;
  for (const [index, remedy] of targets.length === 0 ? [] : remedies.entries()) {
    try {
      const parts = remedies.length;
      const sizing = await sizeRemedy(
        house,
        { remedy, targets },
        {
          ...pooled,
          onProgress: (done, of) => onProgress?.(index + (sizingShare * done) / of, parts),
        },
      );
      const watched: CompareOptions = {
        ...options,
        onProgress: (done, of) =>
          onProgress?.(index + sizingShare + ((1 - sizingShare) * 0.99 * done) / of, parts),
      };
      rows.push(await remedyRowOf(house, { remedy, sizing, options: watched }));
    } catch (error) {
      if (options.whenStopped !== 'keep' || signal?.aborted !== true) throw error;
      stopped = { done: rows.length, of: remedies.length };
      break;
    }
    onProgress?.(index + 1, remedies.length);
  }
  const asItIs =
    rows.length === 0 || stopped !== undefined ? undefined : await curveAsItIs(house, signal);
  return {
    question: 'compare',
    limitSet: limitSet.id,
    rows: rankRemedies(rows, rank),
    rank,
    ...(asItIs === undefined ? {} : { asItIs }),
    withoutLimit,
    ...(stopped === undefined ? {} : { stopped }),
  };
}

async function curveAsItIs(
  house: House,
  signal: AbortSignal | undefined,
): Promise<ExhaustCurveStudy | undefined> {
  const result = compileHouse(house);
  const alone = result.ok ? largestAlone(result.compiled, largestExhaust(house)) : undefined;
  if (!result.ok || alone === undefined) return undefined;
  const { device, question } = alone;
  return exhaustCurveStudy(result.compiled, { ...question, device }, signal ? { signal } : {});
}

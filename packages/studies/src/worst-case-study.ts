import {
  countOperatingStates,
  houseWeather,
  operatingStates,
  type CompiledHouse,
  type HouseWeather,
  type OperatingState,
} from '@evendraft/house';
import {
  balanceStudy,
  baselineStudy,
  type BalanceQuestion,
  type BaselineResult,
} from './balance-study.js';
import { nextTurn } from './internal/next-turn.js';
import { searchExtremes, type Extremes } from './internal/search-extremes.js';
import { depthOf, inTies } from './internal/ties.js';
import type { StateBalance, UnsolvedState } from './state-balance.js';
import { worstOfBalances, type WorstOfBalances } from './worst-of-balances.js';

/** All states in all weathers at all airtightness cases; plain JSON. */
export interface WorstCaseStudy extends WorstOfBalances {
  readonly question: 'worst case';
  /** The deepest of all, deepest first, by the lowest pressure of any living zone, basement or closet. */
  readonly situations: readonly StateBalance[];
  readonly unsolved: readonly UnsolvedState[];
  readonly counts: {
    readonly states: number;
    readonly weathers: number;
    readonly airtightnessCases: number;
    readonly solves: number;
  };
  /** Present where not every state was solved: how the others are covered. */
  readonly coverage?: WorstCaseCoverage;
}

/** How the states that were not solved are covered. */
export interface WorstCaseCoverage {
  /** Situations that the extremes are over: states × weathers × airtightness cases. */
  readonly situations: number;
  /** Devices and ventilators of which only the settings that carry most air out of the house were solved. */
  readonly ordered: readonly string[];
  /** Those of which every setting was solved, because more of them need not lower every pressure. */
  readonly notOrdered: readonly string[];
  /** False where a pressure left the range in which the laws were compared, or a solve failed. */
  readonly proved: boolean;
}

/** How a long study is watched and stopped. */
export interface StudyOptions {
  /** Stops the study; it then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
  /** How many situations the result lists; extremes are over all of them. 2,000 when absent. */
  readonly keep?: number;
  /**
   * Most situations that are solved one by one; a house with more is covered by the ordering of its devices.
   * 5,000 when absent.
   */
  readonly listUpTo?: number;
}

/** Solves between two looks at the signal, so that a page or a terminal stays alive. */
const solvesPerTurn = 200;

/** Situations that are still gone through one by one where the ordering could not be shown. */
const mostListed = 200_000;

/**
 * Finds the worst situations over every operating state, every weather and every airtightness case.
 *
 * A house with few situations is gone through one by one. In a larger one the ordering saves solves: with
 * weather, doors and everything that is not ordered held, a setting that carries outward at least what another
 * carries at every pressure difference gives no higher pressure in any zone, so that only settings which none
 * outdoes are solved. The premise is shown law against law; what it does not cover is gone through. It says
 * nothing of the difference between two zones. A baseline is solved once for each weather, door position and
 * airtightness case.
 *
 * @param compiled - the compiled house
 * @param options - signal, progress, how many situations to list
 * @returns the study; situations that could not be solved are listed apart
 */
export async function worstCaseStudy(
  compiled: CompiledHouse,
  options: StudyOptions = {},
): Promise<WorstCaseStudy> {
  const { house } = compiled;
  const { signal, onProgress, keep = 2000, listUpTo = 5000 } = options;
  const weathers = house.weathers.map((each) => houseWeather(house, each));
  const cases = house.airtightness.cases.length;
  const states = countOperatingStates(house);
  const situations = states * weathers.length * cases;
  const search =
    situations > listUpTo
      ? await searchExtremes({
          compiled,
          weathers,
          async rest(solves) {
            onProgress?.(Math.min(solves, situations - 1), situations);
            await nextTurn();
            signal?.throwIfAborted();
          },
        })
      : undefined;
  const proved =
    search !== undefined && search.coverage.premiseHolds && search.coverage.unsolved.length === 0;
  const byOrdering = search !== undefined && (proved || situations > mostListed);
  const chosen = byOrdering ? lowQuestions(search) : undefined;
  const questions = chosen ?? everyQuestion(compiled, weathers);
  const total = chosen?.length ?? situations;
  const solved: StateBalance[] = [];
  const unsolved: UnsolvedState[] = [];
  const baselines = new Map<string, BaselineResult>();
  let done = 0;

  for (const question of questions) {
    const key = baselineKey(question);
    const baseline = baselines.get(key) ?? baselineStudy(compiled, question);
    baselines.set(key, baseline);
    const balance = balanceStudy(compiled, question, baseline);
    if (balance.status === 'solved') solved.push(balance);
    else unsolved.push(balance);
    done += 1;
    if (done % solvesPerTurn === 0) {
      onProgress?.(done, total);
      await nextTurn();
      signal?.throwIfAborted();
    }
  }
  onProgress?.(done, total);

  const depth = depthOf(house.zones);
  const deepestFirst = solved
    .map((balance) => ({
      balance,
      depth: inTies(depth(balance.zones.map(({ pressurePa }) => pressurePa))),
    }))
    .sort((a, b) => a.depth - b.depth)
    .map(({ balance }) => balance);
  return {
    question: 'worst case',
    situations: deepestFirst.slice(0, keep),
    unsolved,
    counts: {
      states,
      weathers: weathers.length,
      airtightnessCases: cases,
      solves: done + baselines.size + (search?.coverage.solves ?? 0),
    },
    ...(byOrdering
      ? {
          coverage: {
            situations,
            ordered: search.coverage.ordered,
            notOrdered: search.coverage.notOrdered,
            proved,
          },
        }
      : {}),
    ...worstOfBalances(house, deepestFirst),
  };
}

function* everyQuestion(
  compiled: CompiledHouse,
  weathers: readonly HouseWeather[],
): Generator<BalanceQuestion> {
  const states = operatingStates(compiled.house);
  for (let index = 0; index < compiled.house.airtightness.cases.length; index += 1) {
    for (const weather of weathers) {
      for (const state of states) yield { state, weather, airtightnessCase: index };
    }
  }
}

/** The situations of a search that hold a low extreme, and the deepest ones, each once; then what was not solved. */
function lowQuestions({ found, coverage }: Extremes): readonly BalanceQuestion[] {
  const questions = new Map<string, BalanceQuestion>();
  const low = found.filter(({ kind }) => kind !== 'highest' && kind !== 'largest rise');
  for (const question of [...low.map((each) => each.question), ...coverage.unsolved]) {
    const { running } = question.state;
    const key = JSON.stringify([baselineKey(question), Object.entries(running).sort()]);
    if (!questions.has(key)) questions.set(key, question);
  }
  return [...questions.values()];
}

function baselineKey(question: {
  readonly state: OperatingState;
  readonly weather: { readonly name: string };
  readonly airtightnessCase?: number;
}): string {
  return JSON.stringify([
    question.airtightnessCase,
    question.weather.name,
    Object.entries(question.state.doors),
  ]);
}

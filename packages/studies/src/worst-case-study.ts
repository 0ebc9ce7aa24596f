import { countOperatingStates, type CompiledHouse } from '@evendraft/house';
import type { BalanceQuestion } from './balance-study.js';
import { answeredInOrder } from './internal/answered-in-order.js';
import { baselineKey, listedSituations } from './internal/listed-situations.js';
import { searchExtremes, type Extremes } from './internal/search-extremes.js';
import { situationSolver, type SituationSolver } from './internal/situation-solver.js';
import { solveListed } from './internal/solve-listed.js';
import { stopCheck } from './internal/stop-check.js';
import { depthOf, inTies } from './internal/ties.js';
import type { StateBalance, UnsolvedState } from './state-balance.js';
import type { Stopped, WorstCaseOptions } from './study-options.js';
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
  /** Present where the study was stopped: the situations that its extremes are over, of all. */
  readonly stopped?: Stopped;
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
 * @param options - signal and what a stop keeps, progress, workers, how many situations to list
 * @returns the study; situations that could not be solved are listed apart
 */
export async function worstCaseStudy(
  compiled: CompiledHouse,
  options: WorstCaseOptions = {},
): Promise<WorstCaseStudy> {
  const { house } = compiled;
  const { keep = 2000 } = options;
  const states = countOperatingStates(house);
  const cases = house.airtightness.cases.length;
  const situations = states * house.weathers.length * cases;
  const { solved, unsolved, solves, done, coverage } = await solveAll(compiled, {
    ...options,
    situations,
  });

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
      weathers: house.weathers.length,
      airtightnessCases: cases,
      solves,
    },
    ...(coverage === undefined ? {} : { coverage }),
    ...(done < situations ? { stopped: { done, of: situations } } : {}),
    ...worstOfBalances(house, deepestFirst),
  };
}

/** Situations that were solved, and what they took. */
interface SolvedSituations {
  readonly solved: readonly StateBalance[];
  readonly unsolved: readonly UnsolvedState[];
  /** Balances, baselines among them. */
  readonly solves: number;
  /** Situations that were solved or covered. */
  readonly done: number;
  /** Present where not every state was solved. */
  readonly coverage?: WorstCaseCoverage;
}

type SolveAll = WorstCaseOptions & { readonly situations: number };

/** Every situation, or in a large house those that hold an extreme. */
async function solveAll(compiled: CompiledHouse, options: SolveAll): Promise<SolvedSituations> {
  const { situations, listUpTo = 5000, onProgress } = options;
  if (situations <= listUpTo) return solveEvery(compiled, options);
  const solver = situationSolver(compiled, options);
  try {
    const search = await searchExtremes({
      compiled,
      solver,
      stopped: stopCheck(options),
      onProgress,
    });
    const { coverage, settled } = search;
    const ended = settled.done < settled.of;
    const proved = coverage.premiseHolds && coverage.unsolved.length === 0;
    if (!proved && !ended && situations <= mostListed) {
      solver.close();
      const every = await solveEvery(compiled, options);
      return { ...every, solves: every.solves + coverage.solves };
    }
    const found = await solveFound(compiled, search, solver);
    onProgress?.(settled.done, settled.of);
    const { ordered, notOrdered } = coverage;
    return {
      ...found,
      solves: found.solves + coverage.solves,
      done: settled.done,
      coverage: { situations, ordered, notOrdered, proved: proved && !ended },
    };
  } finally {
    solver.close();
  }
}

/** Every situation, one by one. */
async function solveEvery(
  compiled: CompiledHouse,
  options: WorstCaseOptions,
): Promise<SolvedSituations> {
  const { createPool, onProgress } = options;
  const situations = listedSituations(compiled);
  const stopped = stopCheck(options);
  const all = await solveListed(compiled, situations, { createPool, onProgress, stopped });
  return parted(all, situations.baselinesOf(all.length));
}

/** Situations that are asked for at once. */
const askedAtOnce = 4;

/** The situations of a search that hold a low extreme. They are few, so that a stop does not cut them short. */
async function solveFound(
  { house }: CompiledHouse,
  search: Extremes,
  solver: SituationSolver,
): Promise<SolvedSituations> {
  const questions = lowQuestions(search);
  const placeOf = new Map(house.weathers.map(({ name }, index) => [name, index]));
  const left = questions.map(({ state, weather, airtightnessCase = 0 }) => ({
    state,
    weather: placeOf.get(weather.name)!,
    airtightnessCase,
  }));
  const all: (StateBalance | UnsolvedState)[] = [];
  const answers = answeredInOrder(
    () => (left.length === 0 ? undefined : left.splice(0, askedAtOnce)),
    (asked) => solver.ask({ kind: 'balances', questions: asked }),
  );
  for await (const { answer } of answers) all.push(...answer);
  return parted(all, new Set(questions.map(baselineKey)).size);
}

function parted(
  all: readonly (StateBalance | UnsolvedState)[],
  baselines: number,
): SolvedSituations {
  return {
    solved: all.filter((each) => each.status === 'solved'),
    unsolved: all.filter((each) => each.status === 'not solved'),
    solves: all.length + baselines,
    done: all.length,
  };
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

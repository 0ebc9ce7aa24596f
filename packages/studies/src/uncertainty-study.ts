import { baselineOf, compileHouse, type CompiledHouse } from '@evendraft/house';
import type { BuiltNetwork, SolverPool } from '@evendraft/network';
import type { BalanceQuestion } from './balance-study.js';
import { randomNumbers } from './internal/random-numbers.js';
import { restAtTimes } from './internal/rest-at-times.js';
import {
  sampleRows,
  type AskedRow,
  type AskedRows,
  type SampleOutcome,
} from './internal/sample-rows.js';
import { summarizeSamples } from './internal/summarize-samples.js';
import { knobsOf, type Knobs } from './internal/uncertain-knobs.js';
import type { PressureTarget } from './pressure-target.js';
import { StudyArgumentError } from './study-argument-error.js';
import type { WhenStopped } from './study-options.js';
import type { UncertaintyStudy } from './uncertain-pressures.js';
import { uncertainInputIssues, type UncertainInput } from './uncertain-input.js';

/** What an uncertainty study is asked. */
export interface UncertaintyQuestion {
  readonly ranges: readonly UncertainInput[];
  /** Situations that are solved in every sample; a zone's worst of them counts. */
  readonly situations: readonly BalanceQuestion[];
  readonly targets?: readonly PressureTarget[];
}

/** How it is sampled, watched and stopped. */
export interface UncertaintyOptions {
  /** {@link usualSamples} when absent. */
  readonly samples?: number;
  /** 1 when absent. */
  readonly seed?: number;
  readonly signal?: AbortSignal;
  /** What a stopped study does; it rejects when absent. */
  readonly whenStopped?: WhenStopped;
  readonly onProgress?: (done: number, of: number) => void;
  /** Makes workers for a network; everything is solved in this thread when absent. The study closes them. */
  readonly createPool?: (network: BuiltNetwork) => SolverPool;
}

/** Samples that are drawn unless another number is asked for. */
export const usualSamples = 4000;

/**
 * Parts of the range of the flow exponent, each a network of its own, in the order in which they are drawn: one
 * that leaves the draws of a study that is stopped early spread over the range.
 */
const exponentParts = [4, 1, 6, 3, 0, 7, 2, 5] as const;

/** Samples in one batch. */
const samplesPerBatch = 256;

/**
 * Draws what is uncertain and solves the situations anew, again and again.
 *
 * A sample turns factors of links and wind pressures of networks compiled beforehand, one for each value of the
 * flow exponent; nothing is parsed or compiled in the loop. The draws depend on the seed alone, not on workers.
 * The air of shafts and flues is held as each situation has it without any spread.
 *
 * @param compiled - the compiled house
 * @param question - ranges, situations, targets
 * @param options - samples, seed, signal, progress, workers
 * @returns spread of every zone, probability of every target, importance of every input
 * @throws StudyArgumentError where ranges have issues, a target's zone is unknown, or there is no situation
 */
export async function uncertaintyStudy(
  compiled: CompiledHouse,
  question: UncertaintyQuestion,
  options: UncertaintyOptions = {},
): Promise<UncertaintyStudy> {
  const {
    samples = usualSamples,
    seed = 1,
    signal,
    whenStopped = 'reject',
    onProgress,
    createPool,
  } = options;
  const { ranges, situations, targets = [] } = question;
  requireSense(compiled, question, samples);
  const knobs = knobsOf(compiled, ranges);
  const variants = variantsOf(compiled, knobs);
  const { uniform } = randomNumbers(seed);
  const asked = withBaselines(situations);
  const perZone = (): readonly Float64Array[] =>
    compiled.house.zones.map(() => new Float64Array(samples));
  const outcome: SampleOutcome = {
    samples,
    lowestPa: perZone(),
    highestPa: perZone(),
    largestFallPa: perZone(),
    largestRisePa: perZone(),
    inputs: new Map(),
    failed: new Set(),
  };

  // A study that keeps what it has ends between batches; only one that gives it up breaks a batch off.
  const breaks = whenStopped === 'reject' ? signal : undefined;
  const stopped = (): boolean => {
    breaks?.throwIfAborted();
    return signal?.aborted === true;
  };
  const rest = restAtTimes();
  let first = 0;
  let levels = 0;
  for (const variant of variants) {
    if (stopped()) break;
    levels += 1;
    const end = Math.round((levels * samples) / variants.length);
    const pool = createPool?.(variant.compiled.network);
    const rows = sampleRows({
      ...variant,
      knobs,
      asked,
      outcome,
      uniform,
      mostSamples: Math.min(samplesPerBatch, Math.max(1, end - first)),
      pool,
    });
    try {
      while (first < end && !stopped()) {
        const count = Math.min(samplesPerBatch, end - first);
        await rows.solve({ first, count, signal: breaks });
        first += count;
        onProgress?.(first, samples);
        await rest();
      }
    } finally {
      pool?.close();
    }
  }
  return {
    question: 'uncertainty',
    ...summarizeSamples({ house: compiled.house, outcome: firstOf(outcome, first), targets }),
    ranges,
    samples: first,
    failed: outcome.failed.size,
    seed,
    exponents: variants
      .slice(0, levels)
      .map(({ exponent }) => exponent)
      .sort((one, other) => one - other),
    solves: first * asked.rows.length,
    ...(first < samples ? { stopped: { done: first, of: samples } } : {}),
  };
}

/** The first samples of an outcome. */
function firstOf(outcome: SampleOutcome, samples: number): SampleOutcome {
  const cut = (values: Float64Array): Float64Array => values.subarray(0, samples);
  return {
    samples,
    lowestPa: outcome.lowestPa.map(cut),
    highestPa: outcome.highestPa.map(cut),
    largestFallPa: outcome.largestFallPa.map(cut),
    largestRisePa: outcome.largestRisePa.map(cut),
    inputs: new Map([...outcome.inputs].map(([input, values]) => [input, cut(values)])),
    failed: outcome.failed,
  };
}

/** A house with one value of the flow exponent. */
interface Variant {
  readonly compiled: CompiledHouse;
  readonly exponent: number;
}

function variantsOf(compiled: CompiledHouse, { exponent }: Knobs): readonly Variant[] {
  const { house } = compiled;
  if (exponent === undefined) return [{ compiled, exponent: house.airtightness.exponent }];
  return exponentParts.map((part) => {
    const value = exponent.at((part + 0.5) / exponentParts.length);
    const result = compileHouse({
      ...house,
      airtightness: { ...house.airtightness, exponent: value },
    });
    if (!result.ok) {
      throw new StudyArgumentError(
        'ranges',
        `flow exponent ${value}`,
        'a house that still compiles',
      );
    }
    return { compiled: result.compiled, exponent: value };
  });
}

function withBaselines(situations: readonly BalanceQuestion[]): AskedRows {
  const rows: AskedRow[] = [];
  const place = (row: AskedRow): number => {
    const key = keyOf(row);
    const known = rows.findIndex((other) => keyOf(other) === key);
    return known >= 0 ? known : rows.push(row) - 1;
  };
  const pairs = situations.map((question) => ({
    row: place({ question, shown: 'lowest' }),
    baseline: place({
      question: { ...question, state: baselineOf(question.state) },
      shown: 'highest',
    }),
  }));
  return { rows, pairs };
}

function keyOf({ question: { state, weather, airtightnessCase }, shown }: AskedRow): string {
  return JSON.stringify([state, weather.name, airtightnessCase ?? 0, shown]);
}

function requireSense(
  compiled: CompiledHouse,
  { ranges, situations, targets = [] }: UncertaintyQuestion,
  samples: number,
): void {
  const [issue] = uncertainInputIssues(ranges, compiled.house);
  if (issue !== undefined) {
    throw new StudyArgumentError(`ranges.${issue.index}`, issue.found, issue.allowed);
  }
  if (situations.length === 0) throw new StudyArgumentError('situations', 'empty', 'one or more');
  if (!Number.isInteger(samples) || samples < 2) {
    throw new StudyArgumentError('samples', samples, 'a whole number from 2');
  }
  for (const { zone } of targets) {
    if (compiled.house.zones.some(({ id }) => id === zone)) continue;
    throw new StudyArgumentError('targets', zone, 'the id of a zone of the house');
  }
}

import { baselineOf, compileHouse, type CompiledHouse } from '@evendraft/house';
import type { BuiltNetwork, SolverPool } from '@evendraft/network';
import type { BalanceQuestion } from './balance-study.js';
import { nextTurn } from './internal/next-turn.js';
import { randomNumbers } from './internal/random-numbers.js';
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
  /** 4,000 when absent. */
  readonly samples?: number;
  /** 1 when absent. */
  readonly seed?: number;
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
  /** Makes workers for a network; everything is solved in this thread when absent. The study closes them. */
  readonly createPool?: (network: BuiltNetwork) => SolverPool;
}

/** Values that stand for the range of the flow exponent; each is a network of its own. */
const exponentLevels = 8;

/** Work between two looks at the signal [ms]. */
const mostMsBetweenRests = 50;

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
  const { samples = 4000, seed = 1, signal, onProgress, createPool } = options;
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

  let first = 0;
  let rested = Date.now();
  for (const [level, variant] of variants.entries()) {
    const end = Math.round(((level + 1) * samples) / variants.length);
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
      while (first < end) {
        const count = Math.min(samplesPerBatch, end - first);
        await rows.solve({ first, count, signal });
        first += count;
        onProgress?.(first, samples);
        if (pool === undefined && Date.now() - rested > mostMsBetweenRests) {
          await nextTurn();
          rested = Date.now();
        }
        signal?.throwIfAborted();
      }
    } finally {
      pool?.close();
    }
  }
  return {
    question: 'uncertainty',
    ...summarizeSamples({ house: compiled.house, outcome, targets }),
    ranges,
    samples,
    failed: outcome.failed.size,
    seed,
    exponents: variants.map(({ exponent }) => exponent),
    solves: samples * asked.rows.length,
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
  return Array.from({ length: exponentLevels }, (_, level) => {
    const value = exponent.at((level + 0.5) / exponentLevels);
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

import { baselineOf, compileHouse, type CompiledHouse, type House } from '@evendraft/house';
import { questionOf } from '../question-of.js';
import { pressureRangeStudy, type PressureRangeStudy } from '../pressure-range-study.js';
import type { PressureTarget } from '../pressure-target.js';
import type { Remedy } from '../remedy.js';
import { StudyArgumentError } from '../study-argument-error.js';
import type { PooledOptions } from '../study-options.js';
import type { WorstPressure } from '../worst-of-balances.js';
import type { TriedSize } from './offered-sizes.js';
import { solveStates } from './solve-states.js';
import { marginOf, marginsOf, type TargetMargin } from './target-margins.js';
import { whyImpossible, type SizingObstacle } from './why-impossible.js';

/** What is tried. */
export interface TrialQuestion {
  /** The house without the remedy. */
  readonly house: House;
  readonly remedy: Remedy;
  /** Targets that a size must keep. */
  readonly targets: readonly PressureTarget[];
}

/** What a size was judged by. */
export interface SizeJudgement {
  /**
   * Of a size that holds of every target over all situations; of one that fails of the target and the situation that
   * showed it first, none where that could not be solved.
   */
  readonly margins: readonly TargetMargin[];
  /** Whether that is shown for all situations; a size fails by one alone. */
  readonly proved: boolean;
}

/** Tries sizes of a remedy, and remembers what it has tried. */
export interface RemedyTrial {
  /** Margins without the remedy over all situations. */
  asItIs(): Promise<readonly TargetMargin[]>;
  /** Tries a size: known hard situations first, and all of them if it stands those. */
  at(size: number): Promise<TriedSize>;
  /** Margins of a size over all situations. */
  verify(
    size: number,
  ): Promise<{ readonly margins: readonly TargetMargin[]; readonly proved: boolean }>;
  /** In rising order of size. */
  tried(): readonly TriedSize[];
  /** What a size that was tried was judged by. */
  judgedBy(size: number): SizeJudgement;
  /** Margins without the remedy as far as they were found; none before. */
  marginsAsItIs(): readonly TargetMargin[];
  solves(): number;
  /** The side of the target that a size failed first; undefined where it holds or does not compile. */
  failedSide(size: number): PressureTarget['side'] | undefined;
  /** The size whose worst margin over all situations is the best of those tried. */
  closest(): Promise<number | undefined>;
  /** What stands in the way of a size in the situation of its worst margin. */
  obstacle(size: number, worst: TargetMargin): SizingObstacle;
}

/** A situation that some size failed in, for the target that it failed. */
interface Hard {
  readonly target: PressureTarget;
  readonly situation: WorstPressure;
}

/**
 * Prepares trials of a remedy. A trial that is stopped rejects, unless a situation was seen by then that fails.
 *
 * @param question - house, remedy and targets
 * @param options - signal, how far the search of one size is, workers
 * @returns the trial
 */
export function remedyTrial(
  { house, remedy, targets }: TrialQuestion,
  options: Pick<PooledOptions, 'signal' | 'onProgress' | 'createPool'> = {},
): RemedyTrial {
  const known = new Map<number, TriedSize>();
  const judgements = new Map<number, SizeJudgement>();
  let asItIs: readonly TargetMargin[] = [];
  const ranges = new Map<string, PressureRangeStudy>();
  const hard: Hard[] = [];
  const failedSides = new Map<number, PressureTarget['side']>();
  let solves = 0;

  const rangeAt = async (of: {
    readonly size: number;
    readonly side: PressureTarget['side'];
    readonly compiled: CompiledHouse;
  }): Promise<PressureRangeStudy> => {
    const key = `${of.size} ${remedy.houseAtMost === undefined ? '' : of.side}`;
    const before = ranges.get(key);
    if (before !== undefined) return before;
    const range = await pressureRangeStudy(of.compiled, { ...options, whenStopped: 'keep' });
    if (range.stopped === undefined) ranges.set(key, range);
    solves += range.solves;
    return range;
  };
  /** Margins over all situations, each target in the house that is worst for its side. */
  const allMargins = async (
    size: number,
  ): Promise<
    | {
        readonly margins: readonly TargetMargin[];
        readonly whole: boolean;
        readonly proved: boolean;
      }
    | undefined
  > => {
    const margins: TargetMargin[] = [];
    let [whole, proved] = [true, true];
    for (const side of sidesOf(targets)) {
      const compiled = compiledWith(remedy, { size, side });
      if (compiled === undefined) return undefined;
      const range = await rangeAt({ size, side, compiled });
      const found = marginsOf(
        targets.filter((target) => target.side === side),
        range,
      );
      if (range.stopped !== undefined) {
        return { margins: seenToFail(found, options.signal), whole: false, proved: false };
      }
      margins.push(...found);
      whole &&= range.unsolved.length === 0;
      proved &&= range.coverage.proved;
    }
    const order = targets.map(({ id }) => id);
    margins.sort((a, b) => order.indexOf(a.target.id) - order.indexOf(b.target.id));
    return { margins, whole, proved };
  };
  const leastHardMargin = (size: number): number =>
    Math.min(
      ...hard.map((each) => {
        const compiled = compiledWith(remedy, { size, side: each.target.side });
        return (compiled && marginAt(compiled, each))?.marginPa ?? -Infinity;
      }),
    );
  const tryHard = (size: number): TriedSize | undefined => {
    for (const each of hard) {
      const compiled = compiledWith(remedy, { size, side: each.target.side });
      if (compiled === undefined) return { size, holds: false, leastMarginPa: null };
      solves += 2;
      const margin = marginAt(compiled, each);
      if (margin === undefined || margin.marginPa < 0) {
        failedSides.set(size, each.target.side);
        judgements.set(size, { margins: margin === undefined ? [] : [margin], proved: true });
        return { size, holds: false, leastMarginPa: margin?.marginPa ?? null };
      }
    }
    return undefined;
  };
  const tryAll = async (size: number): Promise<TriedSize> => {
    const all = await allMargins(size);
    const [worst] = [...(all?.margins ?? [])].sort((a, b) => a.marginPa - b.marginPa);
    if (all === undefined || worst === undefined)
      return { size, holds: false, leastMarginPa: null };
    const holds = worst.marginPa >= 0 && all.whole;
    if (!holds) {
      hard.unshift({ target: worst.target, situation: worst.situation });
      failedSides.set(size, worst.target.side);
    }
    judgements.set(size, {
      margins: holds ? all.margins : [worst],
      proved: holds ? all.proved : all.whole,
    });
    return { size, holds, leastMarginPa: worst.marginPa };
  };
  return {
    async asItIs() {
      const result = compileHouse(house);
      if (!result.ok) {
        throw new StudyArgumentError('house', result.issues[0]?.code, 'one that compiles');
      }
      const range = await pressureRangeStudy(result.compiled, { ...options, whenStopped: 'keep' });
      const margins = marginsOf(targets, range);
      asItIs = range.stopped === undefined ? margins : margins.filter(isFailing);
      if (range.stopped !== undefined) options.signal?.throwIfAborted();
      return asItIs;
    },
    async verify(size) {
      const { margins, proved } = (await allMargins(size)) ?? { margins: [], proved: false };
      return { margins, proved };
    },
    async at(size) {
      const before = known.get(size);
      if (before !== undefined) return before;
      const tried = tryHard(size) ?? (await tryAll(size));
      known.set(size, tried);
      return tried;
    },
    tried: () => [...known.values()].sort((a, b) => a.size - b.size),
    judgedBy: (size) => judgements.get(size) ?? { margins: [], proved: false },
    marginsAsItIs: () => asItIs,
    solves: () => solves,
    failedSide: (size) => failedSides.get(size),
    async closest() {
      const sizes = [...known.keys()];
      // Each round verifies the best one by the hard situations known; what is worse there joins them.
      for (;;) {
        const [best] = sizes
          .map((size) => ({ size, marginPa: leastHardMargin(size) }))
          .sort((a, b) => b.marginPa - a.marginPa);
        if (best === undefined) return undefined;
        const all = await allMargins(best.size);
        const [worst] = [...(all?.margins ?? [])].sort((a, b) => a.marginPa - b.marginPa);
        if (worst === undefined || worst.marginPa >= best.marginPa - sameMarginPa) return best.size;
        hard.unshift({ target: worst.target, situation: worst.situation });
      }
    },
    obstacle(size, worst) {
      const compiled = compiledWith(remedy, { size, side: worst.target.side });
      return compiled === undefined
        ? { kind: 'does not reach' }
        : whyImpossible(remedy, compiled, worst);
    },
  };
}

function isFailing({ marginPa }: TargetMargin): boolean {
  return marginPa < 0;
}

/** Of a search that was stopped only what fails is known. */
function seenToFail(
  margins: readonly TargetMargin[],
  signal: AbortSignal | undefined,
): readonly TargetMargin[] {
  const failing = margins.filter(isFailing);
  if (failing.length === 0) signal?.throwIfAborted();
  return failing;
}

/** Margins that differ by less are one and the same [Pa]. */
const sameMarginPa = 1e-6;

/** The sides that targets have, each once. */
function sidesOf(targets: readonly PressureTarget[]): readonly PressureTarget['side'][] {
  return [...new Set(targets.map(({ side }) => side))];
}

/** A house may become so tight that its modelled openings leave no leaks; then that size does not hold. */
function compiledWith(
  remedy: Remedy,
  of: { readonly size: number; readonly side: PressureTarget['side'] },
): CompiledHouse | undefined {
  const { size, side } = of;
  const most = side === 'not above' ? remedy.houseAtMost?.(size) : undefined;
  const result = compileHouse(most ?? remedy.houseWith(size));
  return result.ok ? result.compiled : undefined;
}

function marginAt(compiled: CompiledHouse, { target, situation }: Hard): TargetMargin | undefined {
  const { state, weather, airtightnessCase = 0 } = questionOf(compiled, situation);
  const zone = compiled.house.zones.findIndex(({ id }) => id === target.zone);
  const place = { compiled, weather, airtightnessCase };
  const [row, baseline] = solveStates(place, [state, baselineOf(state)]);
  if (row === undefined || baseline === undefined) return undefined;
  const falls = target.side === 'not below';
  const pressurePa = (falls ? row.lowestPa : row.highestPa)[zone]!;
  const baselinePa = (falls ? baseline.highestPa : baseline.lowestPa)[zone]!;
  const now = {
    ...situation,
    pressurePa,
    baselinePa,
    changeFromBaselinePa: pressurePa - baselinePa,
  };
  return marginOf(target, now);
}

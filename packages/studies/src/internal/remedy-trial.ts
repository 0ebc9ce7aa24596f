import { baselineOf, compileHouse, type CompiledHouse } from '@evendraft/house';
import { questionOf } from '../question-of.js';
import { pressureRangeStudy, type PressureRangeStudy } from '../pressure-range-study.js';
import type { PressureTarget } from '../pressure-target.js';
import type { Remedy } from '../remedy.js';
import type { WorstPressure } from '../worst-of-balances.js';
import type { TriedSize } from './offered-sizes.js';
import { solveStates } from './solve-states.js';
import { marginOf, marginsOf, type TargetMargin } from './target-margins.js';
import { whyImpossible, type SizingObstacle } from './why-impossible.js';

/** Tries sizes of a remedy, and remembers what it has tried. */
export interface RemedyTrial {
  /** Tries a size: known hard situations first, and all of them if it stands those. */
  at(size: number): Promise<TriedSize>;
  /** Margins of a size over all situations. */
  verify(
    size: number,
  ): Promise<{ readonly margins: readonly TargetMargin[]; readonly proved: boolean }>;
  /** In rising order of size. */
  tried(): readonly TriedSize[];
  solves(): number;
  /** The size that comes closest over every situation that some size failed in. */
  closest(): number | undefined;
  /** What stands in the way of a size in the situation of its worst margin. */
  obstacle(size: number, worst: TargetMargin): SizingObstacle;
}

/** A situation that some size failed in, for the target that it failed. */
interface Hard {
  readonly target: PressureTarget;
  readonly situation: WorstPressure;
}

/**
 * Prepares trials of a remedy.
 *
 * @param remedy - the remedy
 * @param targets - targets that a size must keep
 * @param options - signal
 * @returns the trial
 */
export function remedyTrial(
  remedy: Remedy,
  targets: readonly PressureTarget[],
  options: { readonly signal?: AbortSignal } = {},
): RemedyTrial {
  const known = new Map<number, TriedSize>();
  const ranges = new Map<number, PressureRangeStudy>();
  const hard: Hard[] = [];
  let solves = 0;

  const rangeAt = async (size: number, compiled: CompiledHouse): Promise<PressureRangeStudy> => {
    const before = ranges.get(size);
    if (before !== undefined) return before;
    const { signal } = options;
    const range = await pressureRangeStudy(compiled, signal === undefined ? {} : { signal });
    ranges.set(size, range);
    solves += range.solves;
    return range;
  };
  const verify = async (size: number): ReturnType<RemedyTrial['verify']> => {
    const compiled = compiledWith(remedy, size);
    if (compiled === undefined) return { margins: [], proved: false };
    const range = await rangeAt(size, compiled);
    return { margins: marginsOf(targets, range), proved: range.coverage.proved };
  };
  const tryHard = (compiled: CompiledHouse, size: number): TriedSize | undefined => {
    for (const each of hard) {
      solves += 2;
      const leastMarginPa = marginAt(compiled, each);
      if (leastMarginPa === null || leastMarginPa < 0) return { size, holds: false, leastMarginPa };
    }
    return undefined;
  };
  const tryAll = async (compiled: CompiledHouse, size: number): Promise<TriedSize> => {
    const range = await rangeAt(size, compiled);
    const [worst] = [...marginsOf(targets, range)].sort((a, b) => a.marginPa - b.marginPa);
    if (worst === undefined) return { size, holds: false, leastMarginPa: null };
    const holds = worst.marginPa >= 0 && range.unsolved.length === 0;
    if (!holds) hard.unshift({ target: worst.target, situation: worst.situation });
    return { size, holds, leastMarginPa: worst.marginPa };
  };
  return {
    verify,
    async at(size) {
      const before = known.get(size);
      if (before !== undefined) return before;
      const compiled = compiledWith(remedy, size);
      const tried =
        compiled === undefined
          ? { size, holds: false, leastMarginPa: null }
          : (tryHard(compiled, size) ?? (await tryAll(compiled, size)));
      known.set(size, tried);
      return tried;
    },
    tried: () => [...known.values()].sort((a, b) => a.size - b.size),
    solves: () => solves,
    closest() {
      const rated = [...known.keys()].map((size) => {
        const compiled = compiledWith(remedy, size);
        const margins = hard.map((each) => {
          return (compiled && marginAt(compiled, each)) ?? -Infinity;
        });
        return { size, marginPa: Math.min(...margins) };
      });
      return rated.sort((a, b) => b.marginPa - a.marginPa)[0]?.size;
    },
    obstacle(size, worst) {
      const compiled = compiledWith(remedy, size);
      return compiled === undefined
        ? { kind: 'does not reach' }
        : whyImpossible(remedy, compiled, worst);
    },
  };
}

/** A house may become so tight that its modelled openings leave no leaks; then that size does not hold. */
function compiledWith(remedy: Remedy, size: number): CompiledHouse | undefined {
  const result = compileHouse(remedy.houseWith(size));
  return result.ok ? result.compiled : undefined;
}

function marginAt(compiled: CompiledHouse, { target, situation }: Hard): number | null {
  const { state, weather, airtightnessCase = 0 } = questionOf(compiled, situation);
  const zone = compiled.house.zones.findIndex(({ id }) => id === target.zone);
  const place = { compiled, weather, airtightnessCase };
  const [row, baseline] = solveStates(place, [state, baselineOf(state)]);
  if (row === undefined || baseline === undefined) return null;
  const falls = target.side === 'not below';
  const pressurePa = (falls ? row.lowestPa : row.highestPa)[zone]!;
  const baselinePa = (falls ? baseline.highestPa : baseline.lowestPa)[zone]!;
  const now = {
    ...situation,
    pressurePa,
    baselinePa,
    changeFromBaselinePa: pressurePa - baselinePa,
  };
  return marginOf(target, now).marginPa;
}

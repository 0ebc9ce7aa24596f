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
    const { signal } = options;
    const range = await pressureRangeStudy(of.compiled, signal === undefined ? {} : { signal });
    ranges.set(key, range);
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
      margins.push(
        ...marginsOf(
          targets.filter((target) => target.side === side),
          range,
        ),
      );
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
        return (compiled && marginAt(compiled, each)) ?? -Infinity;
      }),
    );
  const tryHard = (size: number): TriedSize | undefined => {
    for (const each of hard) {
      const compiled = compiledWith(remedy, { size, side: each.target.side });
      if (compiled === undefined) return { size, holds: false, leastMarginPa: null };
      solves += 2;
      const leastMarginPa = marginAt(compiled, each);
      if (leastMarginPa === null || leastMarginPa < 0) {
        failedSides.set(size, each.target.side);
        return { size, holds: false, leastMarginPa };
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
    return { size, holds, leastMarginPa: worst.marginPa };
  };
  return {
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

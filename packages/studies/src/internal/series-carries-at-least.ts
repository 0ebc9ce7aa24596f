import type { ShownRange } from './carries-at-least.js';
import {
  flowOf,
  shownBetween,
  type ComparedFlow,
  type EndAirs,
  type SeenLaw,
} from './compared-flows.js';

/** Links of one stage of parts in series, at two settings, seen from the room outward. */
export interface ComparedStage {
  readonly larger: readonly SeenLaw[];
  readonly smaller: readonly SeenLaw[];
  readonly air: EndAirs;
}

/** Pressure difference over one stage up to which its laws are compared [Pa]. */
const farPa = 5000;
/** Halvings that find where a law's flow turns. */
const halvings = 60;

/**
 * Shows, or does not, that parts in series carry outward at one setting at least what they carry at another.
 *
 * All stages carry the same flow q, and their pressure differences y(q) add up to that of the whole, X. Where the
 * flow of the larger setting is not inward, X ≥ X0 = sum of the least y at which its stages carry nothing inward,
 * it is enough that every stage carries at least as much at every y at which the smaller setting carries outward:
 * then y(q) is no larger in any stage, nor is their sum. The same holds with in and out exchanged, for a supply fan.
 *
 * @param stages - from the room to the place of known pressure
 * @param needed - the range in which it must be shown
 * @returns the range of X in which it was shown; undefined where it is narrower than needed
 */
export function seriesCarriesAtLeast(
  stages: readonly ComparedStage[],
  needed: ShownRange,
): ShownRange | undefined {
  const outward = shownForward(stages, needed.toPa);
  const inward = shownForward(stages.map(mirrored), -needed.fromPa);
  const ranges = [outward, inward && { fromPa: -inward.toPa, toPa: -inward.fromPa }];
  return ranges.find(
    (range) => range !== undefined && range.fromPa <= needed.fromPa && needed.toPa <= range.toPa,
  );
}

function mirrored({ larger, smaller, air }: ComparedStage): ComparedStage {
  const turned = (laws: readonly SeenLaw[]): readonly SeenLaw[] =>
    laws.map((seen) => ({ ...seen, reversed: !seen.reversed }));
  // What carries more outward carries less inward.
  return {
    larger: turned(smaller),
    smaller: turned(larger),
    air: { first: air.second, second: air.first },
  };
}

function shownForward(
  stages: readonly ComparedStage[],
  neededToPa: number,
): ShownRange | undefined {
  const flows = stages.map(({ larger, smaller, air }) => ({
    more: flowOf(larger, air),
    less: flowOf(smaller, air),
    // A duct that both settings share carries the same at the same pressure difference.
    alike: larger.every(({ scale }, link) => scale === smaller[link]!.scale),
  }));
  const fromPa = flows.reduce((sum, { more }) => sum + leastWithoutReverse(more), 0);
  if (fromPa > neededToPa) return undefined;
  if (flows.some(({ less }) => less.at(farPa) <= 0)) return { fromPa, toPa: farPa };
  const starts = flows.map(({ less }) => mostWithoutForward(less));
  const total = starts.reduce((sum, start) => sum + start, 0);
  // A stage stands above X by what the others gain, such as a fan by its rise.
  const shownTo = (toPa: number): boolean =>
    flows.every(({ more, less, alike }, stage) => {
      const start = starts[stage]!;
      return alike || shownBetween(more, less, [start, Math.max(start, toPa - (total - start))]);
    });
  const toPa = [farPa, 300, 100, 30, 10]
    .filter((end) => end > neededToPa)
    .concat(neededToPa)
    .find(shownTo);
  return toPa === undefined ? undefined : { fromPa, toPa };
}

/** The least pressure difference at which nothing flows in reverse [Pa]. */
function leastWithoutReverse({ at, least }: ComparedFlow): number {
  if (least >= 0 || at(-farPa) >= 0) return -Infinity;
  let [low, high] = [-farPa, farPa];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (at(middle) >= 0) high = middle;
    else low = middle;
  }
  return high;
}

/** The greatest pressure difference at which nothing flows forward [Pa]. */
function mostWithoutForward({ at }: ComparedFlow): number {
  let [low, high] = [-farPa, farPa];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (at(middle) > 0) high = middle;
    else low = middle;
  }
  return low;
}

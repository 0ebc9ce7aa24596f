import type { MakeUpSize } from '@evendraft/remedies';
import type { MakeUpBuilt, SizeDimension, SizingObstacle } from '@evendraft/studies';
import { formatQuantity, type UnitSystem } from '@evendraft/units';
import type { CureResults } from '../cure-results.js';
import { numberPrinter } from './number-printer.js';

/**
 * A size of a remedy in words.
 *
 * @param size - in SI: m², m, m³/s or a share
 * @param dimension - what it is
 * @param system - units of the reader
 * @returns e.g. `8 in round` or `236 L/s`
 */
export function sizeWords(size: number, dimension: SizeDimension, system: UnitSystem): string {
  const printer = numberPrinter(system);
  switch (dimension) {
    case 'area':
      return printer.value(size, 'area');
    case 'diameter':
      return `${formatQuantity(size, 'length', {
        system,
        unit: system === 'us' ? 'in' : 'mm',
        decimals: 0,
      })} round`;
    case 'volume flow':
      return printer.flow(size);
    case 'share of the highest speed':
      return formatQuantity(size, 'ratio', { system, unit: '%', decimals: 1 });
  }
}

/**
 * Where make-up air comes from and by what duct.
 *
 * @param built - as it was asked for
 * @param system - units of the reader
 * @returns a sentence
 */
export function builtWords({ from, run }: MakeUpBuilt, system: UnitSystem): string {
  const place =
    from.kind === 'face'
      ? `from the ${from.face} of the house`
      : from.kind === 'roof'
        ? 'from the roof'
        : from.kind === 'outdoors'
          ? 'from outdoors, out of the wind'
          : `from ${from.kind === 'zone' ? from.zone : from.surrounding}`;
  if (run === undefined) return `Its air comes ${place}.`;
  const { lengthM, elbows, frictionMultiplier = 1 } = run;
  const friction =
    frictionMultiplier === 1 ? '' : ` and ${frictionMultiplier} times the friction of smooth metal`;
  const length = formatQuantity(lengthM, 'length', {
    system,
    unit: system === 'us' ? 'ft' : 'm',
    decimals: 1,
  });
  return `Its air comes ${place}, by a duct of ${length} with ${elbows} bends of 90°${friction}.`;
}

/**
 * Make-up air with its size.
 *
 * @param makeUp - as it was sized
 * @param system - units of the reader
 * @returns words without a full stop
 */
export function makeUpWords({ remedy, size, dimension }: MakeUpSize, system: UnitSystem): string {
  return `${remedy}, ${sizeWords(size, dimension, system)}`;
}

/**
 * What stands in the way of a remedy.
 *
 * @param obstacle - as the study found it
 * @param system - units of the reader
 * @returns words that go on after a colon, without a full stop
 */
export function obstacleWords(obstacle: SizingObstacle, system: UnitSystem): string {
  switch (obstacle.kind) {
    case 'stays shut':
      return `the ${obstacle.item} stays shut or does not run in the situation that fails`;
    case 'resistance':
      return (
        `${numberPrinter(system).flow(obstacle.neededFlowM3PerS)} would have to come in, ` +
        `${obstacle.timesWhatItCarries.toFixed(1)} times what it carries at that pressure`
      );
    case 'does not reach':
      return 'it does not reach what causes the suction: another zone, another device or the weather';
  }
}

/**
 * The make-up air that is recommended, or that none does it alone.
 *
 * @param cures - cures of an assessment
 * @param system - units of the reader
 * @returns one sentence; undefined where nothing was sized
 */
export function makeUpSentence(cures: CureResults, system: UnitSystem): string | undefined {
  const made = madeUp(cures);
  const [first] = made;
  if (first === undefined) return undefined;
  const holding = made.find(({ keepsLimits }) => keepsLimits);
  if (holding !== undefined) {
    return `Make-up air, smallest that was found to keep the limits of the set alone, in all states and weathers: ${makeUpWords(holding, system)}. The smallest leaves next to no margin; "evendraft compare --reserve" sizes with some.`;
  }
  const why = first.obstacle === undefined ? '' : `: ${obstacleWords(first.obstacle, system)}`;
  return `No make-up air of those tried keeps the limits of the set alone. Of the ${first.remedy}${why}. "evendraft compare" lays more remedies side by side.`;
}

function madeUp(cures: CureResults): readonly MakeUpSize[] {
  if (cures.status !== 'solved') return [];
  return cures.appliances.flatMap((each) =>
    each.cures.flatMap(({ makeUp, together }) =>
      makeUp === undefined || together === true ? [] : [makeUp],
    ),
  );
}

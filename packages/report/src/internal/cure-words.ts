import type { SolvedCure } from '@evendraft/remedies';
import type { UnitSystem } from '@evendraft/units';
import type { NumberPrinter } from './number-printer.js';
import { sizeWords } from './size-words.js';

/** How numbers are printed. */
export interface Reader {
  readonly printer: NumberPrinter;
  readonly system: UnitSystem;
}

/**
 * What the cures of one appliance come to: those that keep its limit, or the one that comes closest and several that
 * do together.
 *
 * @param all - as they were solved
 * @param reader - how to print
 * @returns words that go on after the name of the appliance, with a full stop
 */
export function outcomeWords(all: readonly SolvedCure[], reader: Reader): string {
  const { printer } = reader;
  const cures = all.filter(({ together }) => together !== true);
  const count = cures.length === 1 ? 'one cure that was' : `${cures.length} cures that were`;
  const keeping = cures.filter(({ after }) => after.verdict === 'within the limit');
  if (keeping.length > 0) {
    return `of the ${count} solved, each by itself, ${keeping.length === 1 ? 'this brings' : 'these bring'} its suction within the limit: ${keeping.map((cure) => cureWords(cure, reader.system)).join(' ')}`;
  }
  const [closest] = cures
    .filter(({ after }) => after.judged !== undefined)
    .sort((one, other) => other.after.judged!.marginPa - one.after.judged!.marginPa);
  if (closest === undefined) return `none of the ${count} solved could be judged.`;
  const { valuePa, limitPa } = closest.after.judged!;
  const enough = all.find(
    ({ together, after }) => together === true && after.verdict === 'within the limit',
  );
  const several =
    enough === undefined ? '' : ` Several together do: ${cureWords(enough, reader.system)}`;
  return `none of the ${count} solved, each by itself, brings its suction within the limit. The closest leaves ${printer.signedPressure(valuePa)} Pa against ${printer.signedPressure(limitPa)} Pa: ${cureWords(closest, reader.system)}${several}`;
}

/**
 * A cure with the size of its make-up air.
 *
 * @param cure - as it was solved
 * @param system - units of the reader
 * @returns words with a full stop
 */
export function cureWords({ cure, makeUp }: SolvedCure, system: UnitSystem): string {
  if (makeUp === undefined) return cure;
  const nearest = makeUp.keepsLimits ? '' : ', the closest of those offered';
  const size = sizeWords(makeUp.size, makeUp.dimension, system);
  return `${cure.replace(/\.$/u, '')}, ${size}${nearest}.`;
}

import type { SolvedCure } from '@evendraft/remedies';
import { verdictsByUrgency } from '@evendraft/rules';
import { draftVerdicts } from '@evendraft/studies';
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
 * Cures with which a flue drafts from cold and none of its findings is beyond or near, or what comes closest.
 *
 * @param cures - as they were solved
 * @param reader - how to print
 * @returns words that go on after the name of the appliance; undefined where flues were not solved
 */
export function flueOutcomeWords(cures: readonly SolvedCure[], reader: Reader): string | undefined {
  const solved = cures.flatMap((cure) => (cure.draft?.verdict === undefined ? [] : [cure]));
  if (cures.every(({ draft }) => draft === undefined)) return undefined;
  const urgencyOf = ({ draft }: SolvedCure): number =>
    Math.min(
      ...(draft?.findings ?? []).map(({ finding }) => verdictsByUrgency.indexOf(finding.verdict)),
    );
  const rankOf = ({ draft }: SolvedCure): number =>
    draft?.verdict === undefined ? -1 : draftVerdicts.indexOf(draft.verdict);
  const [best] = [...solved].sort((a, b) => rankOf(b) - rankOf(a) || urgencyOf(b) - urgencyOf(a));
  const unflued = cures.filter(({ draft }) => draft !== undefined && draft.verdict === undefined);
  const without = unflued.map((cure) => cureAgain(cure, reader)).join(' ');
  const rest = without === '' ? '' : ` Without an open flue, so not judged: ${without}`;
  if (best === undefined) return `no cure that was solved leaves a flue to judge.${rest}`;
  const alike = solved.filter(
    (cure) => rankOf(cure) === rankOf(best) && urgencyOf(cure) === urgencyOf(best),
  );
  const named = alike.map((cure) => cureAgain(cure, reader)).join(' ');
  const urgent = verdictsByUrgency[urgencyOf(best)] ?? 'not judged';
  const findings = `draft, spillage and gas then at worst ${urgent}`;
  return best.draft?.verdict === 'drafts from cold'
    ? `it drafts from cold, ${findings}, with each of these: ${named}${rest} A test on site decides.`
    : `no cure that was solved lets it draft from cold. At best: ${best.draft?.verdict ?? 'not judged'}, ${findings}: ${named}${rest}`;
}

/**
 * A cure that was told in full above, where its suction is judged.
 *
 * @param cure - as it was solved
 * @param reader - how to print
 * @returns words with a full stop
 */
export function cureAgain(cure: SolvedCure, reader: Reader): string {
  const { makeUp, after, together } = cure;
  if (after.judged === undefined || together === true) return cureWords(cure, reader.system);
  if (makeUp === undefined) return cure.cure.replace(/[,:].*$/u, '.').replace(/\.?$/u, '.');
  const [what = makeUp.remedy] = makeUp.remedy.split(' to the ');
  const size = sizeWords(makeUp.size, makeUp.dimension, reader.system);
  return `Bring in air: ${what}, ${size}.`;
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

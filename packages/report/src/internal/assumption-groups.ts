import type { Assumption } from '@evendraft/house';
import type { NumberPrinter } from './number-printer.js';
import { sourceWords, statusWords } from './source-words.js';

/** The same value assumed from the same source for one or several items. */
export interface AssumptionGroup {
  readonly what: string;
  /** The value in the reader's units, or words. */
  readonly value: string;
  /** Paths of the items in the house file. */
  readonly origins: readonly string[];
  readonly source: string;
  /** How sure the source is. */
  readonly status: string;
}

/**
 * What moves the answer most, first. Judged from the wording: the envelope's flow exponent, where a
 * fan shuts off, where the leakage lies, the weather, fan ratings, heights and temperatures; then
 * the rest. What belongs to a closed damper or to one opening is small beside the envelope.
 */
const influence: readonly RegExp[] = [
  /exponent.*airtightness/iu,
  /shut-?off pressure/iu,
  /where the leakage lies|leakage distribution/iu,
  /weathers? studied|outdoor temperature/iu,
  /wind/iu,
  /rating pressure|fan curve/iu,
  /height|storey|temperature/iu,
];

/**
 * Assumptions that say the same thing put together, the most influential first.
 *
 * @param assumptions - all of them
 * @param printer - prints in the reader's units
 * @returns groups; every assumption is in exactly one
 */
export function assumptionGroups(
  assumptions: readonly Assumption[],
  printer: NumberPrinter,
): readonly AssumptionGroup[] {
  const groups = new Map<string, { group: AssumptionGroup; origins: string[] }>();
  for (const assumption of assumptions) {
    const { what, origin } = assumption;
    const value =
      typeof assumption.value === 'string'
        ? assumption.value
        : printer.value(assumption.value.si, assumption.value.dimension);
    const source = sourceWords(assumption.source);
    const key = JSON.stringify([what, value, source]);
    const known = groups.get(key);
    if (known === undefined) {
      const origins = [origin];
      const status = statusWords(assumption.source);
      groups.set(key, { group: { what, value, origins, source, status }, origins });
    } else {
      known.origins.push(origin);
    }
  }
  // Sorting is stable: within a rank the order of the house file stays.
  return [...groups.values()].map(({ group }) => group).sort((a, b) => rank(a) - rank(b));
}

function rank({ what, origins }: AssumptionGroup): number {
  const words = `${what} for ${origins.join(', ')}`;
  const index = influence.findIndex((pattern) => pattern.test(words));
  return index < 0 ? influence.length : index;
}

import { insideZoneKinds, type CompiledHouse } from '@evendraft/house';
import { targetsOfLimitSet } from '@evendraft/remedies';
import type { LimitSet } from '@evendraft/rules';
import {
  questionOf,
  uncertaintyStudy,
  usualUncertainty,
  type UncertainInput,
  type UncertaintyOptions,
  type UncertaintyStudy,
  type WorstCaseStudy,
  type WorstPressure,
} from '@evendraft/studies';

/** How sure the numbers are: what is drawn, and how. */
export interface UncertaintyRequest extends Pick<
  UncertaintyOptions,
  'samples' | 'seed' | 'createPool'
> {
  /** Ranges; those for a first look when absent. */
  readonly ranges?: readonly UncertainInput[];
}

/**
 * Draws what is uncertain in the situations that are worst for some appliance or living zone.
 *
 * @param of - compiled house, its worst case, limits, the request
 * @param watch - signal, what a stop gives, progress
 * @returns the study; undefined where it was not asked for, no situation was solved or the work was stopped before
 */
export async function worstUncertainty(
  of: {
    readonly compiled: CompiledHouse;
    readonly worstCase: WorstCaseStudy;
    readonly limitSet: LimitSet;
    readonly request: UncertaintyRequest | undefined;
  },
  watch: Pick<UncertaintyOptions, 'signal' | 'whenStopped' | 'onProgress'>,
): Promise<UncertaintyStudy | undefined> {
  const { compiled, worstCase, limitSet, request } = of;
  if (request === undefined || isOver(watch)) return undefined;
  const situations = worstSituations(compiled, worstCase);
  if (situations.length === 0) return undefined;
  const { ranges = usualUncertainty(compiled.house), ...options } = request;
  return uncertaintyStudy(
    compiled,
    {
      ranges,
      situations: situations.map((situation) => questionOf(compiled, situation)),
      targets: targetsOfLimitSet(compiled.house, limitSet).targets,
    },
    { ...options, ...watch },
  );
}

/** Whether the work was stopped before the first draw; where it is to reject the study itself does. */
function isOver({
  signal,
  whenStopped,
}: Pick<UncertaintyOptions, 'signal' | 'whenStopped'>): boolean {
  return whenStopped === 'keep' && signal?.aborted === true;
}

function worstSituations(
  { house }: CompiledHouse,
  { zones, appliances }: WorstCaseStudy,
): readonly WorstPressure[] {
  const inside = new Set(
    house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  const worst = [...zones.filter(({ zone }) => inside.has(zone)), ...appliances];
  const found = new Map<string, WorstPressure>();
  for (const situation of worst.flatMap(({ lowest, largestFall }) => [lowest, largestFall])) {
    const { label, weather, airtightness } = situation;
    found.set(JSON.stringify([label, weather, airtightness]), situation);
  }
  return [...found.values()];
}

import type { SolvedDraft, SpilledAir } from '../draft-results.js';
import { draftSituationWords, type DraftWordsInput } from './draft-words.js';

/** Air of the rooms that one or several appliances make alike. */
export interface SharedAir {
  readonly appliances: readonly string[];
  readonly air: SpilledAir;
}

/** Heads of the columns of {@link airCells}; all but the first hold numbers. */
export const airHeads = [
  'Zone',
  'At rest',
  'After 15 min',
  'After 1 h',
  'After 8 h',
  'CO₂',
] as const;

/**
 * Air of the rooms, once for appliances on one chimney that were found in the same situation.
 *
 * @param draft - the results
 * @returns airs in the order of the appliances
 */
export function sharedAirs({ appliances }: SolvedDraft): readonly SharedAir[] {
  const airs = new Map<string, { appliances: string[]; air: SpilledAir }>();
  for (const { appliance, spilled } of appliances) {
    if (spilled === undefined) continue;
    const key = JSON.stringify(
      [spilled, Object.entries(spilled.firing).sort()],
      (name, value: unknown) => (name === 'firing' ? undefined : value),
    );
    const known = airs.get(key);
    if (known === undefined) airs.set(key, { appliances: [appliance], air: spilled });
    else known.appliances.push(appliance);
  }
  return [...airs.values()];
}

/**
 * What the numbers of the rooms rest on.
 *
 * @param shared - the air
 * @param input - the assessment and how to print
 * @returns sentences
 */
export function airSentence({ appliances, air }: SharedAir, input: DraftWordsInput): string {
  return (
    `Carbon monoxide in ppm where gas of ${appliances.join(', ')} spills, with ${draftSituationWords(air, input)}: ` +
    `for ${air.carbonMonoxideAirFreePpm} ppm in its dry gas without excess air, in proportion to it, and a burner that goes on unchanged. ` +
    'A burner that takes in its own gas makes far more: this is no upper bound.'
  );
}

/**
 * One row a zone: carbon monoxide at rest, on the way there, and carbon dioxide, in ppm.
 *
 * @param air - the air
 * @returns cells
 */
export function airCells({ zones }: SpilledAir): readonly (readonly string[])[] {
  return zones.map(({ zone, carbonMonoxidePpm, carbonDioxidePpm, carbonMonoxideCoursePpm }) => [
    zone,
    ppm(carbonMonoxidePpm),
    ...[0, 1, 2].map((index) => ppm(carbonMonoxideCoursePpm[index])),
    ppm(carbonDioxidePpm),
  ]);
}

/** Null where no air passes and the content never comes to rest. */
function ppm(value: number | null | undefined): string {
  if (value === undefined) return '';
  if (value === null) return 'no air passes';
  return value > 0 && value < 1 ? 'below 1' : Number(value.toPrecision(3)).toFixed(0);
}

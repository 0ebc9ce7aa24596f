import { InvalidArgumentError } from 'commander';
import type { RankCriterion } from 'evendraft';

/** What remedies can be ranked by, what is better of it, and which differences count as none. */
const criteria = {
  limits: { by: 'keeps the limits', better: 'more', step: 0.5 },
  code: { by: 'code rules not satisfied', better: 'less', step: 0.5 },
  heat: { by: 'heat', better: 'less', step: 200 },
  year: { by: 'energy of a year', better: 'less', step: 50 },
  margin: { by: 'least margin', better: 'more', step: 0.1 },
  face: { by: 'face velocity', better: 'less', step: 0.05 },
  flow: { by: 'hood flow', better: 'more', step: 0.005 },
  upkeep: { by: 'things to look after', better: 'less', step: 0.5 },
} as const satisfies Readonly<Record<string, RankCriterion>>;

/** Names of the criteria, for the help. */
export const rankNames: readonly string[] = Object.keys(criteria);

/**
 * Reads a rank rule: criteria in order, the first deciding.
 *
 * @param text - e.g. `limits,heat,upkeep`
 * @returns the criteria
 * @throws InvalidArgumentError for a name that is none, or one that is given twice
 */
export function rankRule(text: string): readonly RankCriterion[] {
  const names = text.split(',').map((name) => name.trim());
  return names.map((name, index) => {
    if (!Object.hasOwn(criteria, name)) {
      throw new InvalidArgumentError(`Write some of ${rankNames.join(', ')}, with commas between.`);
    }
    if (names.indexOf(name) !== index) {
      throw new InvalidArgumentError(`${name} stands there twice; the first place decides.`);
    }
    return criteria[name as keyof typeof criteria];
  });
}

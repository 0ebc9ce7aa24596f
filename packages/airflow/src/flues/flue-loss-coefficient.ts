import { AirflowArgumentError } from '../airflow-argument-error.js';
import { requireNotNegative } from '../internal/require.js';
import { flueComponents, type FlueComponentName } from './flue-components.js';

/** How many of each component a piece of flue has. */
export type FlueComponentCounts = Readonly<Partial<Record<FlueComponentName, number>>>;

/**
 * Loss coefficient of a piece of flue: the sum over its components [-].
 *
 * @param counts - number of each component
 * @returns sum of the coefficients, for the piece's area; without friction [-]
 *
 * Source: the table's (from memory).
 *
 * @example
 * flueLossCoefficient({ 'draft hood': 1, 'elbow 90': 2, 'low-resistance cap': 1 }); // => 3.5
 */
export function flueLossCoefficient(counts: FlueComponentCounts): number {
  let sum = 0;
  for (const [name, count] of Object.entries(counts)) {
    if (!Object.hasOwn(flueComponents, name)) {
      throw new AirflowArgumentError('component', name, Object.keys(flueComponents).join(', '));
    }
    requireNotNegative(name, count);
    sum += count * flueComponents[name as FlueComponentName].lossCoefficient;
  }
  return sum;
}

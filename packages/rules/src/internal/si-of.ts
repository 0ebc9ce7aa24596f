import { parseQuantity, type Dimension } from '@evendraft/units';
import { RulesArgumentError } from '../rules-argument-error.js';

/**
 * A quantity as a document prints it, in the unit that everything computes in [SI unit of the dimension].
 *
 * Rules are written in the units of their documents, and so are these files: `siOf('400 cfm', 'volumeFlow')`.
 *
 * @param text - the quantity with its unit
 * @param dimension - what it measures
 * @returns the value [SI]
 * @throws RulesArgumentError where the text is no quantity of that dimension
 */
export function siOf(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new RulesArgumentError('text', text, `a quantity of ${dimension}`);
  return parsed.quantity.valueSi;
}

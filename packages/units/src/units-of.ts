import type { Dimension } from './dimension.js';
import { amountUnits } from './table/amount-units.js';
import { flowUnits } from './table/flow-units.js';
import { geometryUnits } from './table/geometry-units.js';
import { heatUnits } from './table/heat-units.js';
import { pressureUnits } from './table/pressure-units.js';
import type { UnitDefinition } from './unit-definition.js';

/** The whole unit table, dimension by dimension. */
export const unitTable: readonly UnitDefinition[] = [
  ...geometryUnits,
  ...flowUnits,
  ...pressureUnits,
  ...heatUnits,
  ...amountUnits,
];

/**
 * The units of a dimension, in the order in which they are offered to a person.
 *
 * @param dimension - what is measured
 * @returns the rows of the unit table for it; never empty
 *
 * @example
 * unitsOf('airChangeRate').map((unit) => unit.symbol); // => ['ACH', 'ACH50', '1/h', '1/s']
 */
export function unitsOf(dimension: Dimension): readonly UnitDefinition[] {
  return unitTable.filter((unit) => unit.dimension === dimension);
}

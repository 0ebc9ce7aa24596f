/*
 * Exact conversion between the units of the field and SI.
 *
 * Charter: reads quantities as people type them, keeps them exact until one rounding to SI, and
 * prints SI values in inch-pound or SI units. It is the only place where a conversion factor
 * stands, each once, as an exact fraction with its source.
 * The one central type is `Quantity`. Read `parse-quantity.ts` next, then a file of `table/`.
 */
export { acceptedExamples } from './accepted-examples.js';
export { convert } from './convert.js';
export type { ExactNumber } from './convert.js';
export { dimensions } from './dimension.js';
export type { Dimension, DimensionDefinition } from './dimension.js';
export { formatQuantity, inUnit } from './format-quantity.js';
export type { FormatOptions } from './format-quantity.js';
export { parseQuantity } from './parse-quantity.js';
export type { Quantity, QuantityResult } from './parse-quantity.js';
export { quantityProblems } from './quantity-problem.js';
export type { QuantityProblem, QuantityProblemCode } from './quantity-problem.js';
export { defaultUnit } from './unit-choice.js';
export type { UnitDefinition, UnitSystem } from './unit-definition.js';
export { unitsOf, unitTable } from './units-of.js';
export { UnitsError } from './units-error.js';
export type { UnitsErrorCode } from './units-error.js';

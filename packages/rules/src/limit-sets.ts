import type { LimitSet } from './limit-set.js';
import { canada5Pa } from './limit-sets/canada-5-pa.js';
import { chimneyHeightTable } from './limit-sets/chimney-height-table.js';
import { germany4Pa } from './limit-sets/germany-4-pa.js';
import { modelCode2015 } from './limit-sets/model-code-2015.js';
import { raterGuideline2010 } from './limit-sets/rater-guideline-2010.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

/** The limit sets that come with the library, the default first. */
export const limitSets: readonly LimitSet[] = [
  ventTypeTable,
  modelCode2015,
  chimneyHeightTable,
  raterGuideline2010,
  canada5Pa,
  germany4Pa,
];

/**
 * The set that is used where the user chose none.
 *
 * The vent-type table, because it tells apart what suction does to different vents, whether the vent
 * is shared, and needs no fact that a builder cannot see; most of its rows could be read in a text
 * that restates them. It has no row for hearths and stoves: those are then not judged, and the
 * finding names the sets that have one.
 */
export const defaultLimitSet: LimitSet = ventTypeTable;

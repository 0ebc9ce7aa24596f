import type { LimitSet } from './limit-set.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

/** The limit sets that come with the library, the default first. */
export const limitSets: readonly LimitSet[] = [ventTypeTable];

/**
 * The set that is used where the user chose none.
 *
 * The vent-type table, because it tells apart what suction does to different vents, whether the vent
 * is shared, and needs no fact that a builder cannot see; most of its rows could be read in a text
 * that restates them. It has no row for hearths and stoves: those are then not judged, and the
 * finding names the sets that have one.
 */
export const defaultLimitSet: LimitSet = ventTypeTable;

import type { LimitSet } from './limit-set.js';
import { applianceStandards } from './limit-sets/appliance-standards.js';
import { canada5Pa } from './limit-sets/canada-5-pa.js';
import { chimneyHeightTable } from './limit-sets/chimney-height-table.js';
import { canadaF3261991 } from './limit-sets/canada-f326-1991.js';
import { canadaVentingScreen } from './limit-sets/canada-venting-screen.js';
import { fuelGasCode2012 } from './limit-sets/fuel-gas-code-2012.js';
import { germany4Pa } from './limit-sets/germany-4-pa.js';
import { modelCode2015 } from './limit-sets/model-code-2015.js';
import { oilHeatManual } from './limit-sets/oil-heat-manual.js';
import { raterGuideline2010 } from './limit-sets/rater-guideline-2010.js';
import { spillageAndCo2015 } from './limit-sets/spillage-and-co-2015.js';
import { unitedKingdomExtract } from './limit-sets/united-kingdom-extract.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

/** The limit sets that come with the library, the default first. */
export const limitSets: readonly LimitSet[] = [
  ventTypeTable,
  modelCode2015,
  chimneyHeightTable,
  raterGuideline2010,
  canada5Pa,
  germany4Pa,
  spillageAndCo2015,
  fuelGasCode2012,
  canadaF3261991,
  canadaVentingScreen,
  oilHeatManual,
  unitedKingdomExtract,
  applianceStandards,
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

import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { windRoseData } from '../internal/drawing-data.js';
import type { ReportExtras } from '../report-extras.js';
import { airTables } from './air-tables.js';
import {
  airtightnessTable,
  applianceTable,
  assumptionTable,
  deviceTable,
  preparationTable,
  weatherTable,
} from './basis-tables.js';
import {
  exceedanceTable,
  exhaustCurveTable,
  fanTable,
  flueTable,
  makeUpOptionTable,
  sectionFlowTable,
  sectionTable,
  sharesTable,
  windTable,
} from './drawing-tables.js';
import { draftTables } from './draft-tables.js';
import { codeScreenTable, leakTable } from './extra-tables.js';
import { limitSourceTable, verdictTable } from './finding-tables.js';
import type { ReportTable } from './report-table.js';
import {
  deliveredFlowTable,
  makeUpFlowTable,
  situationTable,
  unsolvedTable,
  zoneTable,
} from './result-tables.js';
import { sentenceTables } from './sentence-tables.js';

/**
 * Every table of the report.
 *
 * @param assessment - what was found
 * @param options - units of the reader and further results
 * @returns tables in the order of the report; some may have no rows
 */
export function reportTables(
  assessment: Assessment,
  options: { readonly system: UnitSystem; readonly extras: ReportExtras },
): readonly ReportTable[] {
  const { system, extras } = options;
  const given = <T>(
    data: T | undefined,
    table: (data: T) => ReportTable,
  ): readonly ReportTable[] => (data === undefined ? [] : [table(data)]);
  return [
    verdictTable(assessment),
    limitSourceTable(assessment),
    ...draftTables(assessment, system),
    ...given(extras.codeScreens, codeScreenTable),
    ...given(extras.makeUpOptions, makeUpOptionTable),
    ...given(extras.shares, sharesTable),
    ...given(extras.exceedance, exceedanceTable),
    zoneTable(assessment),
    ...given(extras.section, sectionTable),
    ...given(extras.section, sectionFlowTable),
    situationTable(assessment),
    unsolvedTable(assessment),
    ...given(windRoseData(assessment), windTable),
    deliveredFlowTable(assessment),
    makeUpFlowTable(assessment),
    ...given(extras.exhaustCurve, exhaustCurveTable),
    ...given(extras.fans, fanTable),
    ...given(extras.flues, flueTable),
    ...airTables(assessment, system),
    deviceTable(assessment),
    applianceTable(assessment),
    airtightnessTable(assessment),
    ...given(extras.leaks, leakTable),
    preparationTable(assessment),
    weatherTable(assessment),
    assumptionTable(assessment, system),
    ...sentenceTables(assessment),
  ];
}

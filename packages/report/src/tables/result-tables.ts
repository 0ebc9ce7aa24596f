import type { WorstPressure } from '@evendraft/studies';
import type { Assessment } from '../assessment.js';
import { deepestPerState } from '../internal/deepest-per-state.js';
import { conditionWords } from '../internal/situation-words.js';
import type { ReportTable } from './report-table.js';

/**
 * The lowest pressure and the largest fall of each zone, and where they occur.
 *
 * @param assessment - what was studied
 * @returns one row a zone
 */
export function zoneTable(assessment: Assessment): ReportTable {
  const kinds = new Map(assessment.house.zones.map(({ id, kind }) => [id, kind]));
  const where = (worst: WorstPressure): string =>
    `${worst.label} (${conditionWords(worst, assessment)})`;
  return {
    id: 'zones',
    caption: 'Extremes of each zone',
    note:
      "Zone minus outdoors at the zone's floor; negative is depressurized. A fall is the change " +
      'from the baseline: same weather and doors, everything off.',
    columns: [
      { header: 'Zone' },
      { header: 'Kind' },
      { header: 'Lowest', quantity: 'pressure' },
      { header: 'Lowest with' },
      { header: 'Largest fall', quantity: 'pressure' },
      { header: 'Its baseline', quantity: 'pressure' },
      { header: 'Fall with' },
    ],
    rows: assessment.worstCase.zones.map(({ zone, lowest, largestFall }) => [
      zone,
      kinds.get(zone) ?? '',
      lowest.pressurePa,
      where(lowest),
      largestFall.changeFromBaselinePa,
      largestFall.baselinePa,
      where(largestFall),
    ]),
  };
}

/**
 * Every situation and zone in one long list, for a spreadsheet.
 *
 * @param assessment - what was studied
 * @returns one row a zone in a situation, worst situation first
 */
export function situationTable(assessment: Assessment): ReportTable {
  return {
    id: 'situations',
    caption: 'Every situation, zone by zone',
    columns: [
      { header: 'No.', quantity: 'count' },
      { header: 'Running' },
      { header: 'Weather' },
      { header: 'Airtightness' },
      { header: 'Zone' },
      { header: 'Pressure', quantity: 'pressure' },
      { header: 'Change from baseline', quantity: 'pressure' },
    ],
    rows: assessment.worstCase.situations.flatMap(
      ({ zones, label, weather, airtightness }, index) =>
        zones.map(({ zone, pressurePa, changeFromBaselinePa }) => [
          index + 1,
          label,
          weather,
          airtightness,
          zone,
          pressurePa,
          changeFromBaselinePa,
        ]),
    ),
  };
}

/**
 * What each running device delivers in each operating state, in the weather in which it goes deepest.
 *
 * @param assessment - what was studied
 * @returns one row a running device in a state
 */
export function deliveredFlowTable(assessment: Assessment): ReportTable {
  return {
    id: 'delivered-flows',
    caption: 'Delivered flow of each device',
    note: 'Each state in the weather in which it goes deepest.',
    columns: [
      { header: 'Running' },
      { header: 'Device' },
      { header: 'Speed' },
      { header: 'Rated', quantity: 'volumeFlow' },
      { header: 'Delivered', quantity: 'volumeFlow' },
      { header: 'Of rating', quantity: 'share' },
      { header: 'Started' },
    ],
    rows: deepestPerState(assessment.worstCase.situations).flatMap(({ label, devices }) =>
      devices.map((each) => [
        label,
        each.device,
        each.speed,
        each.ratedFlowM3PerS,
        each.deliveredFlowM3PerS,
        each.ratedFlowM3PerS === 0 ? undefined : each.deliveredFlowM3PerS / each.ratedFlowM3PerS,
        each.interlocked ? 'by interlock' : 'by hand',
      ]),
    ),
  };
}

/**
 * What each make-up opening lets in, state by state.
 *
 * @param assessment - what was studied
 * @returns one row an opening in a state
 */
export function makeUpFlowTable(assessment: Assessment): ReportTable {
  return {
    id: 'make-up-flows',
    caption: 'Make-up air',
    note: 'Flow into the house; negative is outwards.',
    columns: [
      { header: 'Running' },
      { header: 'Opening' },
      { header: 'Damper' },
      { header: 'Into the house', quantity: 'volumeFlow' },
      { header: 'At its face', quantity: 'faceVelocity' },
    ],
    rows: deepestPerState(assessment.worstCase.situations).flatMap(({ label, makeUp }) =>
      makeUp.map(({ opening, damper, flowM3PerS, faceVelocityMPerS }) => [
        label,
        opening,
        damper,
        flowM3PerS,
        faceVelocityMPerS,
      ]),
    ),
  };
}

/**
 * Situations that could not be solved, and what to do about it.
 *
 * @param assessment - what was studied
 * @returns one row a situation
 */
export function unsolvedTable(assessment: Assessment): ReportTable {
  return {
    id: 'not-solved',
    caption: 'Situations that could not be solved',
    note: 'They have no pressures here; the true worst case may be among them.',
    columns: [
      { header: 'Running' },
      { header: 'Weather' },
      { header: 'Reason' },
      { header: 'Concerns' },
      { header: 'Hint' },
    ],
    rows: assessment.worstCase.unsolved.map((each) => [
      each.label,
      conditionWords(each, assessment),
      each.reason,
      each.concerns.join(', '),
      each.hint,
    ]),
  };
}

import type { Assessment } from '../assessment.js';
import type { SolvedDraft } from '../draft-results.js';
import { judgedCells, threeAnswers, toldFindings } from '../internal/draft-words.js';
import { sharedAirs } from '../internal/spilled-air-words.js';
import { sourceWords } from '../internal/source-words.js';
import type { UnitSystem } from '@evendraft/units';
import type { ReportTable } from './report-table.js';

/**
 * Everything that was found of flues.
 *
 * @param assessment - what was found
 * @param system - units of the reader, for limits of several kinds in one column
 * @returns tables; none where flues were not solved
 */
export function draftTables(assessment: Assessment, system: UnitSystem): readonly ReportTable[] {
  const { draft } = assessment;
  if (draft?.status !== 'solved') return [];
  return [
    answerTable(draft, assessment),
    thresholdTable(draft),
    judgedTable(draft, system),
    airTable(draft),
  ];
}

function answerTable({ appliances }: SolvedDraft, assessment: Assessment): ReportTable {
  return {
    id: 'draft-answers',
    caption: 'Three answers on each flue, from the coarse to the physical',
    note: 'At worst of what was solved. None is a clearance: a test on site decides.',
    columns: [
      { header: 'Appliance' },
      { header: 'Suction limit' },
      { header: 'Draft rule' },
      { header: 'Flue and house together' },
    ],
    rows: appliances.map((found) => threeAnswers(found, assessment)),
  };
}

function thresholdTable({ appliances }: SolvedDraft): ReportTable {
  return {
    id: 'draft-thresholds',
    caption: 'Where each flue turns, and what the house gives there',
    note: 'Room minus outdoors at the collar, in the least favourable situation: a flue draws while the house gives more than the number at which it turns. Draft is vent minus room at the test tap, negative where it draws.',
    columns: [
      { header: 'Appliance' },
      { header: 'Draft once warm', quantity: 'pressure' },
      { header: 'Cold flue starts above', quantity: 'pressure' },
      { header: 'House gives at the start', quantity: 'pressure' },
      { header: 'Hot flue spills below', quantity: 'pressure' },
      { header: 'House gives at the spill', quantity: 'pressure' },
      { header: 'Hot flue reverses below', quantity: 'pressure' },
      { header: 'House gives at the reversal', quantity: 'pressure' },
    ],
    rows: appliances.flatMap(({ appliance, worst }) => {
      if (worst === undefined) return [];
      const { coldEstablishes, hotSpills, hotReverses } = worst.thresholds ?? {};
      const turns = [coldEstablishes, hotSpills, hotReverses];
      return [
        [
          appliance,
          worst.tapDraftPa,
          ...turns.flatMap((turn) => [turn?.roomPa, turn?.houseGivesPa]),
        ],
      ];
    }),
  };
}

function judgedTable({ appliances }: SolvedDraft, system: UnitSystem): ReportTable {
  return {
    id: 'draft-findings',
    caption: 'Draft, spillage and carbon monoxide against limits',
    columns: [
      { header: 'Appliance' },
      { header: 'Held against a limit' },
      { header: 'Found' },
      { header: 'Limit' },
      { header: 'Finding' },
      { header: 'With' },
      { header: 'Source' },
    ],
    rows: appliances.flatMap((found) =>
      toldFindings(found).map((each) => [
        found.appliance,
        ...judgedCells(each, system),
        `${each.situation.label}, ${each.situation.weather}`,
        sourceWords(each.finding.source),
      ]),
    ),
  };
}

function airTable(draft: SolvedDraft): ReportTable {
  return {
    id: 'spilled-air',
    caption: 'What spilled gas makes of the air of rooms',
    note: 'Parts by volume, each zone well mixed and the burner going on unchanged: no upper bound. A gap where no air passes.',
    columns: [
      { header: 'Zone' },
      { header: 'Gas of' },
      { header: 'CO at rest, ppm', quantity: 'factor' },
      { header: 'CO after 15 min, ppm', quantity: 'factor' },
      { header: 'CO after 1 h, ppm', quantity: 'factor' },
      { header: 'CO after 8 h, ppm', quantity: 'factor' },
      { header: 'CO₂ at rest, ppm', quantity: 'factor' },
    ],
    rows: sharedAirs(draft).flatMap(({ appliances, air }) =>
      air.zones.map((zone) => [
        zone.zone,
        appliances.join(', '),
        zone.carbonMonoxidePpm ?? undefined,
        ...[0, 1, 2].map((index) => zone.carbonMonoxideCoursePpm[index]),
        zone.carbonDioxidePpm ?? undefined,
      ]),
    ),
  };
}

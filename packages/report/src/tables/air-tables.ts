import type { FailureRow, HowFar } from '@evendraft/remedies';
import type { RuleFinding } from '@evendraft/rules';
import type { ClosedDamperLeakage, DryerStudy } from '@evendraft/studies';
import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { arithmeticWords } from '../internal/arithmetic-words.js';
import { fullStop } from '../internal/full-stop.js';
import { howFarSentences } from '../internal/how-far-words.js';
import { sourceWords } from '../internal/source-words.js';
import type { ReportTable } from './report-table.js';

/**
 * Everything that was found of the air beside the appliances.
 *
 * @param assessment - what was found
 * @param system - units of the reader, for values of several kinds in one column
 * @returns tables; none where the air was not solved
 */
export function airTables({ air }: Assessment, system: UnitSystem): readonly ReportTable[] {
  if (air?.status !== 'solved') return [];
  return [
    howFarTable(air.howFar, system),
    guidanceTable(air.guidance, system),
    failureTable(air.failures),
    closedDamperTable(air.closedDampers),
    dryerTable(air.dryers),
  ];
}

function howFarTable(howFar: HowFar, system: UnitSystem): ReportTable {
  return {
    id: 'how-far',
    caption: 'How far the house may go without make-up air',
    note: `By the limit set ${howFar.limitSet}, over all states and weathers. At these numbers no margin is left.`,
    columns: [{ header: 'Answer' }],
    rows: howFarSentences(howFar, system).map((sentence) => [sentence]),
  };
}

function guidanceTable(guidance: readonly RuleFinding[], system: UnitSystem): ReportTable {
  return {
    id: 'air-guidance',
    caption: 'The air beside the appliances',
    note: 'Guidance on suction on the ground and on a garage wall, net flow by climate, doors, velocities and hoods.',
    columns: [
      { header: 'Guidance' },
      { header: 'For' },
      { header: 'Finding' },
      { header: 'Arithmetic' },
      { header: 'Notes' },
      { header: 'Source' },
    ],
    rows: guidance
      .filter(({ applies }) => applies !== 'no')
      .map(({ title, subject, verdict, arithmetic, reason, notes, source }) => [
        title,
        subject ?? 'the house',
        verdict,
        [
          ...arithmetic.map((line) => fullStop(arithmeticWords(line, system))),
          ...(reason === undefined ? [] : [fullStop(reason)]),
        ].join(' '),
        notes.map(fullStop).join(' '),
        sourceWords(source),
      ]),
  };
}

function failureTable(failures: readonly FailureRow[]): ReportTable {
  return {
    id: 'failures',
    caption: 'What if one thing fails',
    note: 'Lowest and highest pressure against outdoors of any room inside, over all states and weathers; air that enters with nothing switched on, in the weather in which that is most. A worn gasket leaks ten times what a good one does and a clogged filter passes half, our choice.',
    columns: [
      { header: 'What fails' },
      { header: 'How' },
      { header: 'Lowest', quantity: 'pressure' },
      { header: 'In' },
      { header: 'With' },
      { header: 'Highest', quantity: 'pressure' },
      { header: 'Air that enters', quantity: 'massFlow' },
    ],
    rows: failures.map(({ item, failure, lowest, highest, infiltrationKgPerS }) => [
      item ?? 'nothing',
      failure,
      lowest.pressurePa,
      lowest.zone,
      lowest.situation,
      highest.pressurePa,
      infiltrationKgPerS,
    ]),
  };
}

function closedDamperTable(dampers: readonly ClosedDamperLeakage[]): ReportTable {
  return {
    id: 'closed-dampers',
    caption: 'What closed make-up dampers add to the airtightness test',
    note: 'Flow at 50 Pa through the closed damper and its duct, and its share of the tested flow. A class is an upper bound for a new damper. Classes of AMCA 511 from memory, those of EN 1751:1999 found.',
    columns: [
      { header: 'Damper' },
      { header: 'Leakage' },
      { header: 'Area', quantity: 'area' },
      { header: 'At 50 Pa', quantity: 'volumeFlow' },
      { header: 'Share', quantity: 'probability' },
    ],
    rows: dampers.flatMap(({ item, areaM2, stated, byClass }) =>
      [
        ...(stated === undefined ? [] : [{ ...stated, leakageClass: 'as in the house file' }]),
        ...byClass,
      ].map(({ leakageClass, flowAt50PaM3PerS, shareOfTested }) => [
        item,
        leakageClass,
        areaM2,
        flowAt50PaM3PerS,
        shareOfTested,
      ]),
    ),
  };
}

function dryerTable(dryers: readonly DryerStudy[]): ReportTable {
  const left = dryers.flatMap(({ dryer, notSolved }) =>
    notSolved.map((arrangement) => `${dryer}, ${arrangement}`),
  );
  return {
    id: 'dryers',
    caption: 'Dryers in other arrangements',
    note: `Each dryer alone in the weather in which its room goes lowest, then its room over all states. Its own duct is 6 in. wide, 3 m long with two bends; the door is of usual size with an undercut of 1 cm: our choice. Openings of 100 in² by codes for closets.${left.length === 0 ? '' : ` Not solved: ${left.join('; ')}.`}`,
    columns: [
      { header: 'Dryer' },
      { header: 'Arrangement' },
      { header: 'Exhausts', quantity: 'volumeFlow' },
      { header: 'Its room, alone', quantity: 'pressure' },
      { header: 'Its room, lowest', quantity: 'pressure' },
      { header: 'Over its door', quantity: 'pressure' },
      { header: 'At the handle', quantity: 'force' },
    ],
    rows: dryers.flatMap(({ dryer, rows }) =>
      rows.map((row) => [
        dryer,
        row.arrangement,
        row.deliveredFlowM3PerS,
        row.alonePa,
        row.lowestPa,
        row.doorPa,
        row.doorForceN,
      ]),
    ),
  };
}

import { airtightnessWords } from './house-words.js';
import { assumptionGroups } from './assumption-groups.js';
import { countWords } from './count-words.js';
import type { MarkdownSection } from './markdown-findings.js';
import { proofSentences, roundedUp } from './proof-sentences.js';

/**
 * What the results rest on: the house, its airtightness test, the weather, assumptions, what is not
 * modelled, the proof, and what is needed to repeat the run.
 *
 * @param section - page, assessment and printer
 */
export function markdownBasis(section: MarkdownSection): void {
  house(section);
  weather(section);
  assumed(section);
  if (section.assessment.notModelled.length > 0) {
    section.page.heading(2, 'Not modelled');
    section.page.bullets(section.assessment.notModelled);
  }
  proof(section);
  reproduction(section);
}

function house({ page, assessment, printer }: MarkdownSection): void {
  const summary = assessment.house;
  const { airtightness } = summary;
  const altitude = printer.value(summary.altitudeM, 'length');
  page.heading(2, 'House and airtightness');
  page.bullets([
    `Floor area ${printer.value(summary.floorAreaM2, 'area')}, volume ` +
      `${printer.value(summary.volumeM3, 'volume')}, ${altitude} above sea level.`,
    `Airtightness: ${airtightnessWords(assessment, printer)}.`,
    `Direction of the test: ${airtightness.direction}. Neighbours held at the same pressure: ` +
      `${airtightness.guarded ? 'yes' : 'no'}.`,
  ]);
  page.table(
    [{ header: 'During the test' }, { header: 'Stood' }],
    (summary.testPreparation ?? []).map(({ item, duringTest }) => [item, duringTest]),
  );
  page.table(
    [{ header: 'Device' }, { header: 'Kind' }, { header: 'Moves air' }, { header: 'In' }],
    summary.devices.map(({ id, kind, direction, zone }) => [
      id,
      kind,
      direction === 'exhaust' ? 'out of the zone' : 'into the zone',
      zone,
    ]),
  );
  page.table(
    [{ header: 'Appliance' }, { header: 'Kind' }, { header: 'Vent' }, { header: 'In' }],
    summary.appliances.map(({ id, kind, vent, zone }) => [id, kind, vent, zone]),
  );
}

function weather({ page, assessment, printer }: MarkdownSection): void {
  page.heading(2, 'Weather');
  page.table(
    [
      { header: 'Name' },
      { header: 'Outdoors', align: 'right' },
      { header: 'Wind', align: 'right' },
      { header: 'From', align: 'right' },
    ],
    assessment.house.weathers.map((each) => [
      each.name,
      printer.value(each.outdoorTemperatureC, 'temperature'),
      printer.value(each.windSpeedMPerS, 'speed'),
      each.windSpeedMPerS === 0 ? '' : printer.value(each.windFromDeg, 'angle'),
    ]),
  );
}

function assumed({ page, assessment, printer }: MarkdownSection): void {
  const { assumptions } = assessment;
  page.heading(2, 'Assumed');
  page.paragraph(
    assumptions.length === 0
      ? 'Nothing: the house file gave every value that was used.'
      : `${countWords(assumptions.length, 'value')} that the house file did not give, those that ` +
          'move the answer most first.',
  );
  page.table(
    [{ header: 'What' }, { header: 'Value' }, { header: 'For' }, { header: 'Source' }],
    assumptionGroups(assumptions, printer).map(({ what, value, origins, source }) => [
      what,
      value,
      origins.join(', '),
      source,
    ]),
  );
}

function proof({ page, assessment }: MarkdownSection): void {
  const { worstCase } = assessment;
  const linear = Math.max(0, ...worstCase.situations.map((each) => each.proof.regularisationPa));
  page.heading(2, 'Proof of the solve');
  page.bullets([
    ...proofSentences(worstCase),
    ...(linear === 0
      ? []
      : [
          `Around zero the flow laws are smoothed so that their slope is finite; that moves no pressure by more than ${roundedUp(linear)} Pa.`,
        ]),
    'To repeat it: the same house file and the same version give the same numbers. In every row of ' +
      'the table of situations the air that leaves each zone and the air that enters it are equal, ' +
      'but for the share given there.',
  ]);
}

function reproduction({ page, assessment }: MarkdownSection): void {
  const { limitSet } = assessment;
  page.heading(2, 'To reproduce this report');
  page.bullets([
    `Evendraft ${assessment.libraryVersion}, results in version ${assessment.schemaVersion} of ` +
      `${assessment.schema}.`,
    `House file: ${assessment.house.digest}.`,
    `Limit set: ${limitSet.id}, edition ${limitSet.edition}.`,
    'Each number is rounded by itself, so that a difference may look off by its last digit.',
  ]);
}

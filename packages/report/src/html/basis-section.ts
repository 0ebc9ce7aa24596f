import { markup, type Markup } from '../internal/markup.js';
import { proofSentences, roundedUp } from '../internal/proof-sentences.js';
import { rangeWarningWords } from '../internal/range-warning-words.js';
import {
  airtightnessTable,
  applianceTable,
  assumptionTable,
  deviceTable,
  preparationTable,
  weatherTable,
} from '../tables/basis-tables.js';
import { leakTable } from '../tables/extra-tables.js';
import { htmlFacts, htmlList, type HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';

/**
 * The house as it was computed: devices, appliances, airtightness, leaks, weather.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function houseSection({ assessment, extras, system, printer }: HtmlInput): Markup {
  const { house } = assessment;
  return markup`${htmlFacts([
    ['Floor area', printer.value(house.floorAreaM2, 'area')],
    ['Volume', printer.value(house.volumeM3, 'volume')],
    ['Above sea level', printer.value(house.altitudeM, 'length')],
  ])}
${[
  deviceTable(assessment),
  applianceTable(assessment),
  airtightnessTable(assessment),
  leakTable(extras.leaks ?? []),
  preparationTable(assessment),
  weatherTable(assessment),
].map((table) => htmlTable(table, { system }))}`;
}

/**
 * What was assumed, which laws leave their range, and what this version does not look at.
 *
 * @param input - assessment and units
 * @returns HTML
 */
export function assumptionSection({ assessment, system }: HtmlInput): Markup {
  const table = assumptionTable(assessment, system);
  const beyond = rangeWarningWords(assessment.worstCase);
  return markup`${
    table.rows.length === 0
      ? markup`<p>Nothing was assumed: the house file gave every value that was used.</p>`
      : htmlTable(table, { system })
  }
${
  beyond.length === 0
    ? undefined
    : markup`<h3>Laws beyond their range</h3>
${htmlList(beyond)}`
}
<h3>Not modelled</h3>
${
  assessment.notModelled.length === 0
    ? markup`<p>Nothing is listed.</p>`
    : htmlList(assessment.notModelled)
}`;
}

/**
 * The proof in words that can be repeated, and what is needed to make the same report again.
 *
 * @param input - assessment
 * @returns HTML
 */
export function proofSection({ assessment }: HtmlInput): Markup {
  const { worstCase, limitSet } = assessment;
  const linear = Math.max(0, ...worstCase.situations.map((each) => each.proof.regularisationPa));
  return markup`${htmlList([
    ...proofSentences(worstCase),
    ...(linear === 0
      ? []
      : [
          `Around zero the flow laws are smoothed so that their slope is finite; that moves no pressure by more than ${roundedUp(linear)} Pa.`,
        ]),
    'To repeat it: take a row of the table of situations, work out the flow of every opening from the ' +
      "pressures on its two sides, and add up for each zone; what enters equals what leaves, but for the row's share.",
  ])}
<h3>To reproduce this report</h3>
${htmlFacts([
  ['Library', `Evendraft ${assessment.libraryVersion}`],
  ['Results', `${assessment.schema}, version ${assessment.schemaVersion}`],
  ['House file', assessment.house.digest],
  ['Limit set', `${limitSet.id}, edition ${limitSet.edition}`],
])}
<p class="note">Each number is rounded by itself, so that a difference may look off by its last digit.</p>
`;
}

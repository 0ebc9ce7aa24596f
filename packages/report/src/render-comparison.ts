import type { RankCriterion, RemedyRow } from '@evendraft/remedies';
import { formatQuantity, inUnit, type Dimension } from '@evendraft/units';
import { countWords } from './internal/count-words.js';
import { failureSentences } from './internal/failure-words.js';
import { fullStop } from './internal/full-stop.js';
import { incompleteWords } from './internal/incomplete-words.js';
import { numberPrinter } from './internal/number-printer.js';
import { builtWords, obstacleWords, sizeWords } from './internal/size-words.js';
import { sourceWords } from './internal/source-words.js';
import { yearSentences } from './internal/year-words.js';
import { terminalPage, type TerminalPage } from './internal/terminal-page.js';
import type { Comparison } from './remedy-results.js';
import type { TerminalOptions } from './render-terminal.js';

type Options = Omit<TerminalOptions, 'states'>;

/**
 * Remedies side by side, for a terminal: a table, then what each rests on.
 *
 * @param result - the comparison
 * @param options - units, width, colour
 * @returns lines no wider than asked, ending in a line end
 */
export function renderComparison(result: Comparison, options: Options): string {
  const { width = 80, color = false } = options;
  const page = terminalPage({ width, color });
  const { comparison, house } = result;
  const { rows, rank, withoutLimit } = comparison;
  page.heading(`${house.name}: remedies side by side`);
  for (const sentence of incompleteWords(result.incomplete)) page.paragraph(sentence);
  page.paragraph(
    `Limit set: ${comparison.limitSet}. Ranked by: ${rank.map(rankWords).join('; ')}.`,
  );
  if (rows.length === 0 && result.incomplete === undefined) {
    page.paragraph('Nothing was sized: the set has no limit for any appliance of the house.');
  } else {
    page.paragraph(
      'Whether it keeps the limits, and the least margin in the worst case of all states and weathers, in Pa; negative is past the limit. The rest with the largest exhaust at its highest speed in the coldest weather.',
    );
    table(page, rows, options);
  }
  rows.forEach((row, index) => oneRow(page, { row, index, options }));
  page.heading('To know');
  for (const each of result.leftOut) page.bullet(`Left out: ${fullStop(each)}`);
  if (withoutLimit.length > 0) {
    page.bullet(`The set gives no limit for ${withoutLimit.join(', ')}: not looked at.`);
  }
  page.bullet(
    'No row clears an appliance: after any change the house is to be assessed and tested again.',
  );
  page.bullet(`Evendraft ${result.libraryVersion}. House file ${house.digest}`);
  return page.text();
}

function rankWords({ by, better }: RankCriterion): string {
  return `${better} ${by}`;
}

function table(page: TerminalPage, rows: readonly RemedyRow[], { system }: Options): void {
  const { signedPressure } = numberPrinter(system);
  const years = rows.some(({ year }) => year !== undefined);
  const units = unitsOf[system];
  page.paragraph(
    `Exhaust in ${units.flow}, face velocity in ${units.speed}, heat in ${units.power}${years ? ', a year in kWh' : ''}.`,
  );
  page.blank();
  page.table(
    [
      { header: '#', align: 'right' },
      { header: 'Remedy', minimum: 12 },
      { header: 'Size', minimum: 8 },
      { header: 'Keeps' },
      { header: 'Margin', align: 'right' },
      { header: 'Exhaust', align: 'right' },
      { header: 'Face', align: 'right' },
      { header: 'Heat', align: 'right' },
      ...(years ? [{ header: 'Year', align: 'right' as const }] : []),
    ],
    rows.map((row, index) => [
      String(index + 1),
      row.kind,
      sizeOf(row, system),
      row.sizing.status === 'impossible' ? 'no' : 'yes',
      leastMargin(row, signedPressure),
      number(row.exhaustFlowM3PerS, 'volumeFlow', { unit: units.flow, decimals: 0 }),
      number(row.faceVelocityMPerS, 'speed', { unit: units.speed, decimals: units.speedDecimals }),
      number(row.inducedHeatW, 'power', { unit: units.power, decimals: 1 }),
      ...(years ? [row.year?.totalKWh.toFixed(0) ?? ''] : []),
    ]),
  );
}

const unitsOf = {
  us: { flow: 'cfm', speed: 'fpm', speedDecimals: 0, power: 'kBtu/h' },
  si: { flow: 'L/s', speed: 'm/s', speedDecimals: 2, power: 'kW' },
} as const;

function number(
  si: number | undefined,
  dimension: Dimension,
  { unit, decimals }: { readonly unit: string; readonly decimals: number },
): string {
  return si === undefined ? '' : inUnit(si, dimension, unit).toFixed(decimals);
}

function oneRow(
  page: TerminalPage,
  of: { readonly row: RemedyRow; readonly index: number; readonly options: Options },
): void {
  const { row, index, options } = of;
  const { system } = options;
  const { sizing, upkeep, code, guidance } = row;
  page.blank();
  page.paragraph(`${index + 1}. ${row.remedy}: ${sizeOf(row, system) || 'not sized'}`);
  const detail = (text: string): void => page.paragraph(text, 4);
  if (row.built !== undefined) detail(builtWords(row.built, system));
  if (sizing.status === 'impossible') {
    detail(`Does not do it alone: ${obstacleWords(sizing.obstacle, system)}.`);
  }
  if (sizing.status === 'sized' && sizing.failsAt !== undefined) {
    const fails = sizeWords(sizing.failsAt, row.dimension, system);
    detail(fails === sizeOf(row, system) ? 'Half a per cent beyond it fails.' : `${fails} fails.`);
  }
  for (const { target, valuePa, marginPa, situation } of sizing.margins) {
    const { signedPressure } = numberPrinter(system);
    detail(
      `${target.id}: ${signedPressure(valuePa)} against ${signedPressure(target.limitPa)} Pa, margin ${signedPressure(marginPa)}, with ${situation.label}, ${situation.weather}.`,
    );
  }
  for (const { title, verdict, notes } of guidance) {
    const remarks = verdict === 'within the limit' ? '' : ` ${notes.map(fullStop).join(' ')}`;
    detail(`${title}: ${verdict} of the guidance.${remarks}`);
  }
  if (row.temperingW !== undefined && row.temperingW > 0) {
    detail(
      `Heat to bring its air up to 10 °C before it is delivered: ${heatWords(row.temperingW, system)}.`,
    );
  }
  if (row.year !== undefined) {
    for (const sentence of yearSentences(row.year, system)) detail(sentence);
  }
  for (const { rule, standing, why, source } of code) {
    detail(`Code: ${rule}: ${standing}. ${fullStop(why)} ${sourceWords(source)}.`);
  }
  for (const sentence of failureSentences(row, system)) detail(sentence);
  if (upkeep.length > 0) {
    detail(`To look after (${countWords(upkeep.length, 'thing')}): ${upkeep.join(', ')}.`);
  }
}

function sizeOf({ sizing, dimension }: RemedyRow, system: Options['system']): string {
  switch (sizing.status) {
    case 'sized':
      return sizeWords(sizing.size, dimension, system);
    case 'impossible':
      return sizeWords(sizing.best, dimension, system);
    case 'nothing needed':
      return 'none needed';
  }
}

/** Below this a margin is shown to one digit [Pa]. */
const smallMarginPa = 0.05;

function leastMargin({ sizing }: RemedyRow, print: (pressurePa: number) => string): string {
  const margins = sizing.margins.map(({ marginPa }) => marginPa);
  if (margins.length === 0) return '';
  const least = Math.min(...margins);
  // A margin that rounds to nothing must still show on which side it lies.
  return Math.abs(least) < smallMarginPa ? String(Number(least.toPrecision(1))) : print(least);
}

function heatWords(powerW: number, system: Options['system']): string {
  return formatQuantity(powerW, 'power', {
    system,
    unit: system === 'us' ? 'kBtu/h' : 'kW',
    decimals: 1,
  });
}

import { assumptionGroups } from './internal/assumption-groups.js';
import { numberPrinter } from './internal/number-printer.js';
import { builtWords, obstacleWords, sizeWords } from './internal/size-words.js';
import { terminalPage, type TerminalPage } from './internal/terminal-page.js';
import type { Sizing } from './remedy-results.js';
import type { TerminalOptions } from './render-terminal.js';

/**
 * The answer to a question of size, for a terminal.
 *
 * @param sizing - the answer
 * @param options - units, width, colour
 * @returns lines no wider than asked, ending in a line end
 */
export function renderSizing(sizing: Sizing, options: Omit<TerminalOptions, 'states'>): string {
  const { system, width = 80, color = false } = options;
  const page = terminalPage({ width, color });
  const printer = numberPrinter(system);
  const { result, remedy } = sizing;
  page.heading(`${sizing.house.name}: size of a remedy`);
  const built = remedy.built === undefined ? '' : ` ${builtWords(remedy.built, system)}`;
  page.paragraph(`Remedy: ${remedy.what}.${built}`);
  for (const sentence of answerOf(sizing, options)) page.paragraph(sentence);
  if (result.margins.length > 0) {
    page.heading(result.status === 'nothing needed' ? 'As it is' : 'With it, in the worst case');
    page.paragraph('Value, what it must keep to, and margin in Pa; a negative margin is past it.');
    page.blank();
    page.table(
      [
        { header: 'Target', minimum: 16 },
        { header: 'Value', align: 'right' },
        { header: 'Keep', align: 'right' },
        { header: 'Margin', align: 'right' },
        { header: 'With', minimum: 16 },
      ],
      result.margins.map(({ target, valuePa, marginPa, situation }) => [
        target.id,
        ...[valuePa, target.limitPa, marginPa].map(printer.signedPressure),
        `${situation.label}, ${situation.weather}`,
      ]),
    );
  }
  triedSizes(page, sizing, options);
  remarks(page, sizing, options);
  return page.text();
}

type Options = Omit<TerminalOptions, 'states'>;

function answerOf({ result, remedy }: Sizing, { system }: Options): readonly string[] {
  const words = (size: number): string => sizeWords(size, remedy.dimension, system);
  switch (result.status) {
    case 'nothing needed':
      return ['Nothing is needed: every target is kept in all states and weathers as it is.'];
    case 'sized': {
      const which = remedy.wanted === 'smallest' ? 'Smallest' : 'Largest';
      const beside = remedy.wanted === 'smallest' ? 'smaller' : 'larger';
      return [
        `${which} size that keeps every target: ${words(result.size)}.`,
        result.failsAt === undefined
          ? `No ${beside} size was offered.`
          : words(result.failsAt) === words(result.size)
            ? `One half a per cent ${beside} fails.`
            : `The next ${beside} one that was tried, ${words(result.failsAt)}, fails.`,
        result.proved
          ? 'Held against all states and weathers; those not solved one by one are covered by an ordering that was shown.'
          : 'Not every state is covered by proof: a situation was not solved or not ordered.',
        ...(result.monotone
          ? []
          : [`A ${beside === 'smaller' ? 'larger' : 'smaller'} size fails again: see the sizes.`]),
      ];
    }
    case 'impossible':
      return [
        `No size offered keeps every target. The closest is ${words(result.best)}: ` +
          `${obstacleWords(result.obstacle, system)}.`,
      ];
  }
}

function triedSizes(page: TerminalPage, { result, remedy }: Sizing, { system }: Options): void {
  if (result.tried.length === 0) return;
  const printer = numberPrinter(system);
  page.heading(`Sizes tried, ${result.solves} solves`);
  page.table(
    [
      { header: 'Size', align: 'right' },
      { header: 'Keeps the targets' },
      { header: 'Least margin met, Pa', align: 'right' },
    ],
    result.tried.map(({ size, holds, leastMarginPa }) => [
      sizeWords(size, remedy.dimension, system),
      holds ? 'yes' : 'no',
      leastMarginPa === null ? 'not solved' : printer.signedPressure(leastMarginPa),
    ]),
  );
}

function remarks(page: TerminalPage, sizing: Sizing, { system }: Options): void {
  const { withoutLimit, remedy } = sizing;
  page.heading('To know');
  if (withoutLimit.length > 0) {
    page.bullet(`The set gives no limit for ${withoutLimit.join(', ')}: not looked at.`);
  }
  for (const { what, value, source } of assumptionGroups(
    remedy.assumptions,
    numberPrinter(system),
  )) {
    page.bullet(`Assumed: ${what}, ${value}. Source: ${source}.`);
  }
  page.bullet(
    'No size clears an appliance: after any change the house is to be assessed and tested again.',
  );
  page.bullet(`Evendraft ${sizing.libraryVersion}. House file ${sizing.house.digest}`);
}

import type { SizingResult, TargetMargin, UnfinishedSizing } from '@evendraft/studies';
import { assumptionGroups } from './internal/assumption-groups.js';
import { incompleteWords } from './internal/incomplete-words.js';
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
  const { result, remedy } = sizing;
  page.heading(`${sizing.house.name}: size of a remedy`);
  const built = remedy.built === undefined ? '' : ` ${builtWords(remedy.built, system)}`;
  page.paragraph(`Remedy: ${remedy.what}.${built}`);
  for (const sentence of incompleteWords(sizing.incomplete)) page.paragraph(sentence);
  if (result.status === 'unfinished') {
    knownSoFar(page, { result, remedy }, options);
  } else {
    for (const sentence of answerOf({ result, remedy }, options)) page.paragraph(sentence);
    const title = result.status === 'nothing needed' ? 'As it is' : 'With it, in the worst case';
    marginTable(page, { title, margins: result.margins }, options);
  }
  triedSizes(page, sizing, options);
  remarks(page, sizing, options);
  return page.text();
}

type Options = Omit<TerminalOptions, 'states'>;

/** A sizing whose result is of one kind. */
interface SizingWith<Result> {
  readonly result: Result;
  readonly remedy: Sizing['remedy'];
}

const notCovered =
  'Not every state is covered by proof: a situation was not solved or not ordered.';

/** The sizes between which the answer lies so far, each with what it was judged by. */
function knownSoFar(
  page: TerminalPage,
  { result, remedy }: SizingWith<UnfinishedSizing>,
  options: Options,
): void {
  const { fails, holds, margins, tried } = result;
  const words = (size: number): string => sizeWords(size, remedy.dimension, options.system);
  const [far, other, near, beside] =
    remedy.wanted === 'smallest'
      ? ['smallest', 'smaller', 'largest', 'below']
      : ['largest', 'larger', 'smallest', 'above'];
  if (tried.length > 0) {
    page.paragraph(
      holds === undefined
        ? 'No size was seen so far that keeps every target.'
        : `The ${far} size seen so far that keeps every target: ${words(holds.size)}. One that is ${other} may keep them too.` +
            (holds.proved ? '' : ` ${notCovered}`),
    );
    const which = holds === undefined ? near : `${near} ${beside} it`;
    page.paragraph(
      fails === undefined
        ? `No size${holds === undefined ? '' : ` ${beside} it`} was seen so far that does not.`
        : `The ${which} seen so far that does not: ${words(fails.size)}.`,
    );
  }
  if (fails !== undefined) {
    marginTable(
      page,
      { title: `${words(fails.size)}, where it fails`, margins: fails.margins },
      options,
    );
  }
  if (holds !== undefined) {
    const title = `${words(holds.size)}, over all states and weathers`;
    marginTable(page, { title, margins: holds.margins }, options);
  }
  // Before any size was tried the house itself may have been gone through in part only.
  const title = tried.length > 0 ? 'As it is' : 'As it is, in what was solved so far';
  marginTable(page, { title, margins }, options);
}

function marginTable(
  page: TerminalPage,
  { title, margins }: { readonly title: string; readonly margins: readonly TargetMargin[] },
  { system }: Options,
): void {
  if (margins.length === 0) return;
  const { signedPressure } = numberPrinter(system);
  page.heading(title);
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
    margins.map(({ target, valuePa, marginPa, situation }) => [
      target.id,
      ...[valuePa, target.limitPa, marginPa].map(signedPressure),
      `${situation.label}, ${situation.weather}`,
    ]),
  );
}

function answerOf(
  { result, remedy }: SizingWith<SizingResult>,
  { system }: Options,
): readonly string[] {
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
          : notCovered,
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

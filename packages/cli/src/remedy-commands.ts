import { InvalidArgumentError, Option, type Command } from 'commander';
import { defaultLimitSet, type PressureTarget } from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { compareCommand, type CompareFlags } from './compare-command.js';
import type { ExitCode } from './exit-code.js';
import { listed, number, quantity, quantityWithin, unitSystem } from './flag-values.js';
import { rankNames, rankRule } from './rank-flag.js';
import { remedyName, remedyNames, remedyPlace, type RemedyName } from './remedy-flags.js';
import { sizeCommand, type SizeFlags } from './size-command.js';

const codes =
  '\n\nExit codes: 0 done, 1 nothing that was tried keeps the limits, 2 wrong file or usage, 130 stopped with Ctrl-C.';
const kinds = Object.keys(remedyNames).join(', ');

/**
 * Adds `size` and `compare` to the command.
 *
 * @param program - the command
 * @param streams - where results and messages go
 * @param done - takes the exit code
 */
export function addRemedyCommands(
  program: Command,
  streams: CommandStreams,
  done: (code: ExitCode) => void,
): void {
  withRemedyOptions(
    program
      .command('size')
      .description('Find the size of one remedy that keeps the limits in every state and weather.')
      .argument('<file>', 'house file, YAML or JSON')
      .option('--remedy <kind>', `one of ${kinds}`, remedyName, 'motorized')
      .option(
        '--target <pressure>',
        'a pressure to keep instead of the limits, e.g. "-5 Pa"',
        quantity('pressure'),
      )
      .addOption(
        new Option(
          '--target-of <what>',
          'what the target limits: outdoors (zone minus outdoors) or change (from baseline)',
        )
          .argParser(targetOf)
          .default('zone minus outdoors', 'outdoors'),
      )
      .option('--to <zone>', 'the other zone of a transfer opening'),
  )
    .addHelpText(
      'after',
      `\nExamples:\n  evendraft size my-house.yaml --remedy duct\n  evendraft size my-house.yaml --remedy motorized --target "-5 Pa"\n  evendraft size my-house.yaml --remedy airtightness${codes}`,
    )
    .action(async (file: string, flags: SizeFlags) => {
      done(await sizeCommand(file, flags, streams));
    });

  withRemedyOptions(
    program
      .command('compare')
      .description('Size several remedies to the same limits and lay them side by side.')
      .argument('<file>', 'house file, YAML or JSON')
      .addOption(
        new Option('--remedy <kind>', `one of ${kinds}; may be given again`)
          .argParser(remedyList)
          .default([], 'duct, barometric, motorized, powered, cap'),
      )
      .addOption(
        new Option('--reserve <pressure>', 'how far inside each limit a size must stay')
          .argParser(quantityWithin('pressure', { from: 0, to: 500, words: '0 to 500 Pa' }))
          .default(0, '0 Pa'),
      )
      .addOption(
        new Option(
          '--outlet-area <area>',
          'face through which make-up air enters the room; the free area of the remedy if not given',
        ).argParser(quantityWithin('area', { above: 0, to: 10, words: 'above 0, up to 10 m2' })),
      )
      .addOption(
        new Option(
          '--outlet-distance <length>',
          'from that face to the hood; at the hood if not given',
        ).argParser(quantityWithin('length', { above: 0, to: 100, words: 'above 0, up to 100 m' })),
      )
      .addOption(
        new Option(
          '--rank <criteria>',
          `order of the rows, the first deciding, of ${rankNames.join(', ')}`,
        )
          .argParser(rankRule)
          .default([], 'limits,code,heat,upkeep,margin'),
      )
      .option(
        '--year <file>',
        'CSV, one row an hour: "temperature [C]" or "[F]", and where known "wind speed [m/s]", "wind direction [deg]", "pressure [hPa]"',
      )
      .option(
        '--hours-per-day <hours>',
        'how long the largest exhaust runs, for --year',
        number({ least: 0, most: 24 }),
        1,
      ),
  )
    .addHelpText(
      'after',
      `\nExamples:\n  evendraft compare my-house.yaml\n  evendraft compare my-house.yaml --remedy duct --remedy powered --rank limits,year\n  evendraft compare my-house.yaml --year weather.csv --hours-per-day 1.5${codes}`,
    )
    .action(async (file: string, flags: CompareFlags) => {
      done(await compareCommand(file, flags, streams));
    });
}

function withRemedyOptions(command: Command): Command {
  return command
    .option('--units <system>', 'us (cfm, ft, °F) or si (L/s, m, °C)', unitSystem, 'us')
    .addOption(
      new Option('--limits <set>', 'limit set to keep, or a file of an own set')
        .argParser(listed)
        .default([], defaultLimitSet.id),
    )
    .option('--zone <zone>', 'zone that air is brought to; that of the device if not given')
    .option(
      '--device <device>',
      'device that is followed or capped; the largest exhaust if not given',
    )
    .option(
      '--from <place>',
      'where make-up air comes from: outdoors (calm air), front, right, back, left or roof',
      remedyPlace,
      'outdoors',
    )
    .addOption(
      new Option('--duct-length <length>', 'run of a make-up duct')
        .argParser(quantityWithin('length', { from: 0, to: 500, words: '0 to 500 m' }))
        .default(3, '3 m'),
    )
    .option('--bends <count>', 'its bends of 90°', number({ least: 0, most: 20, whole: true }), 2)
    .option(
      '--friction <factor>',
      'its friction against smooth metal, 1 for rigid duct',
      number({ least: 1, most: 10 }),
      1,
    )
    .addOption(
      new Option('--opens-at <pressure>', 'suction at which a barometric damper begins to open')
        .argParser(
          quantityWithin('pressure', { above: 0, to: 500, words: 'above 0 Pa, up to 500 Pa' }),
        )
        .default(2, '2 Pa'),
    )
    .addOption(
      new Option('--shortfall <share>', 'how far powered make-up air may fall short of its flow')
        .argParser(quantityWithin('ratio', { from: 0, to: 0.9, words: '0 to 90 %' }))
        .default(0.1, '10 %'),
    )
    .addOption(
      new Option('--overshoot <share>', 'how far powered make-up air may go beyond its flow')
        .argParser(quantityWithin('ratio', { from: 0, to: 1, words: '0 to 100 %' }))
        .default(0.1, '10 %'),
    )
    .addOption(
      new Option(
        '--highest <pressure>',
        'a pressure above outdoors that no room inside may exceed, beside the rest',
      ).argParser(
        quantityWithin('pressure', { above: 0, to: 500, words: 'above 0 Pa, up to 500 Pa' }),
      ),
    )
    .option('--json', 'print the whole result as JSON', false);
}

function remedyList(text: string, before: readonly RemedyName[]): readonly RemedyName[] {
  const name = remedyName(text);
  if (before.includes(name)) throw new InvalidArgumentError(`${name} was given already.`);
  return [...before, name];
}

function targetOf(text: string): PressureTarget['quantity'] {
  if (text === 'outdoors') return 'zone minus outdoors';
  if (text === 'change') return 'change from baseline';
  throw new InvalidArgumentError('Write outdoors or change.');
}

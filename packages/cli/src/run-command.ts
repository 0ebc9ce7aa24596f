import { visibleControls } from '@evendraft/text';
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import {
  assessmentJsonSchema,
  comparisonJsonSchema,
  defaultLimitSet,
  houseFileJsonSchema,
  libraryVersion,
  ruleRegions,
  signOffJsonSchema,
  sizingJsonSchema,
  type RuleRegion,
  type WhenCures,
} from 'evendraft';
import { assessCommand, type AssessFlags } from './assess-command.js';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { addRemedyCommands } from './remedy-commands.js';
import { readHouseFile } from './read-house-file.js';
import { listed, number, unitSystem } from './flag-values.js';

/**
 * Runs the command.
 *
 * @param args - arguments after the command's name
 * @param streams - where results and messages go
 * @returns exit code: 0 done, 1 beyond a limit and asked to fail on it, 2 wrong file or usage, 3 a solve failed, 130 stopped by the user
 */
export async function runCommand(
  args: readonly string[],
  streams: CommandStreams,
): Promise<ExitCode> {
  let code: ExitCode = exitCode.done;
  const program = new Command('evendraft')
    .description(
      'What a tight house does to its own air when its exhaust equipment runs: pressures in every state, and what they mean for each vented appliance.',
    )
    .version(libraryVersion)
    .exitOverride()
    .configureOutput({ writeOut: streams.out, writeErr: streams.err })
    .showSuggestionAfterError()
    .showHelpAfterError('\nRun "evendraft --help" for the commands.');

  program
    .command('assess')
    .description(
      'Solve every operating state of a house in every weather and judge its appliances.',
    )
    .argument('<file>', 'house file, YAML or JSON')
    .option('--units <system>', 'us (cfm, ft, °F) or si (L/s, m, °C)', unitSystem, 'us')
    .addOption(
      new Option(
        '--limits <set>',
        'limit set to judge by, or a file of an own set; given again, further sets beside the first',
      )
        .argParser(listed)
        .default([], defaultLimitSet.id),
    )
    .addOption(
      new Option('--region <name>', 'only code screens of this region; may be given again')
        .argParser(region)
        .default([], 'all'),
    )
    .option('--facts <file>', 'YAML or JSON of what code screens ask and the house file lacks')
    .addOption(
      new Option('--cures <when>', 'solve cures: auto (where it is quick), always or never')
        .argParser(whenCures)
        .default('if quick', 'auto'),
    )
    .option(
      '--draft <when>',
      'solve flues with the house: auto (where it is quick), always or never',
      whenCures,
      'if quick',
    )
    .option(
      '--air <when>',
      'solve how far the house may go, what fails and the air beside appliances: auto (where it is quick), always or never',
      whenCures,
      'if quick',
    )
    .option(
      '--uncertainty [draws]',
      'how sure the numbers are: draw what is uncertain so often',
      draws,
    )
    .option(
      '--seed <number>',
      'seed of the draws',
      number({ least: 0, most: 2 ** 31, whole: true }),
    )
    .option('--all', 'print everything, and not only what decides', false)
    .option('--json', 'print the whole result as JSON', false)
    .option('--report <file>', 'write the report as one page, HTML that needs nothing beside it')
    .option('--pdf <file>', 'print that page; needs a browser (CHROMIUM_PATH, or one on the PATH)')
    .option('--csv <folder>', 'write every table into this folder')
    .option('--out <folder>', 'write the full report as Markdown and JSON into this folder')
    .option('--sign-off <file>', 'YAML or JSON of the block to sign, for --report and --pdf')
    .option(
      '--fail-on-beyond',
      'exit with 1 when any finding is beyond its limit: suction by every set, draft, spillage, carbon monoxide, code screens (of the regions asked for)',
      false,
    )
    .addHelpText(
      'after',
      '\nExamples:\n  evendraft assess my-house.yaml\n  evendraft assess my-house.yaml --report my-house.html --pdf my-house.pdf\n  evendraft assess my-house.yaml --units si --out reports --csv tables\n  evendraft assess my-house.yaml --json > my-house.result.json\n  evendraft assess my-house.yaml --limits vent-type-table --limits germany-4-pa\n  evendraft assess my-house.yaml --uncertainty 2000 --seed 7\n\nExit codes: 0 done, 1 beyond a limit with --fail-on-beyond, 2 wrong file or usage, 3 a solve failed, 130 stopped with Ctrl-C.',
    )
    .action(async (file: string, flags: AssessFlags) => {
      code = await assessCommand(file, flags, streams);
    });

  addRemedyCommands(program, streams, (result) => {
    code = result;
  });

  program
    .command('check')
    .description('Read a house file and say what is wrong with it; nothing is solved.')
    .argument('<file>', 'house file, YAML or JSON')
    .option('--json', 'print issues as JSON', false)
    .addHelpText('after', '\nExample:\n  evendraft check my-house.yaml')
    .action(async (file: string, flags: { readonly json: boolean }) => {
      const house = await readHouseFile(file, streams, flags.json);
      if (house === undefined) code = exitCode.wrongInput;
      else if (flags.json) streams.out(`${JSON.stringify({ issues: [] }, null, 2)}\n`);
      else
        streams.out(
          `${visibleControls(file)}: the house file can be read. Nothing was solved or judged.\n`,
        );
    });

  program
    .command('schema')
    .description('Print the JSON Schema of a file or of what --json prints.')
    .argument('[what]', `${Object.keys(schemas).join(', ')}`, schemaName, 'house')
    .addHelpText(
      'after',
      '\nExamples:\n  evendraft schema > house-file.schema.json\n  evendraft schema sign-off > sign-off.schema.json',
    )
    .action((what: SchemaName) => {
      streams.out(`${JSON.stringify(schemas[what](), null, 2)}\n`);
    });

  try {
    await program.parseAsync(args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError)
      return error.exitCode === 0 ? exitCode.done : exitCode.wrongInput;
    throw error;
  }
}

function region(text: string, before: readonly RuleRegion[]): readonly RuleRegion[] {
  const found = ruleRegions.find((each) => each === text);
  if (found !== undefined) return [...before, found];
  throw new InvalidArgumentError(`Write one of ${ruleRegions.join(', ')}.`);
}

function whenCures(text: string): WhenCures {
  if (text === 'auto') return 'if quick';
  if (text === 'always' || text === 'never') return text;
  throw new InvalidArgumentError('Write auto, always or never.');
}

const draws = number({ least: 100, most: 1_000_000, whole: true });

/** What has a schema of its own. */
const schemas = {
  house: houseFileJsonSchema,
  assessment: assessmentJsonSchema,
  sizing: sizingJsonSchema,
  comparison: comparisonJsonSchema,
  'sign-off': signOffJsonSchema,
} as const;

type SchemaName = keyof typeof schemas;

function schemaName(text: string): SchemaName {
  if (Object.hasOwn(schemas, text)) return text as SchemaName;
  throw new InvalidArgumentError(`Write one of ${Object.keys(schemas).join(', ')}.`);
}

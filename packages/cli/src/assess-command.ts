import { visibleControls } from '@evendraft/text';
import {
  assess,
  beyondLimits,
  readScreenFacts,
  renderJson,
  renderTerminal,
  reportExtras,
  screenFactsIssues,
  type Assessment,
  type House,
  type ReportExtras,
  type RuleRegion,
  type ScreenFacts,
  type SignOff,
  type WhenAir,
  type WhenCures,
  type WhenDraft,
} from 'evendraft';
import { chooseLimitSets, type ChosenLimitSets } from './choose-limit-sets.js';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { findBrowser } from './find-browser.js';
import { readDataFile } from './read-data-file.js';
import { readHouseFile } from './read-house-file.js';
import { readSignOffFile } from './read-sign-off-file.js';
import { sayStopped } from './say-stopped.js';
import { situationWorkers } from './situation-workers.js';
import { solverWorkers } from './solver-workers.js';
import { watchWork } from './watch-work.js';
import {
  targetProblem,
  writeReports,
  type ReportTargets,
  type WrittenReport,
} from './write-reports.js';

/** Flags of `evendraft assess`. */
export interface AssessFlags {
  readonly units: 'us' | 'si';
  readonly json: boolean;
  /** Everything on the terminal, and not only what decides. */
  readonly all: boolean;
  readonly limits: readonly string[];
  readonly region: readonly RuleRegion[];
  readonly facts?: string;
  readonly cures: WhenCures;
  readonly draft: WhenDraft;
  readonly air: WhenAir;
  /** Draws; true where no number was given. */
  readonly uncertainty?: number | true;
  readonly seed?: number;
  readonly out?: string;
  readonly report?: string;
  readonly pdf?: string;
  readonly csv?: string;
  readonly signOff?: string;
  readonly failOnBeyond: boolean;
}

/**
 * `evendraft assess FILE`: reads the house, solves every state, judges, prints, and writes the reports asked for.
 *
 * @param file - path of the house file
 * @param flags - units, output and limit sets
 * @param streams - where results and messages go
 * @returns exit code
 */
export async function assessCommand(
  file: string,
  flags: AssessFlags,
  streams: CommandStreams,
): Promise<ExitCode> {
  const prepared = await prepare(file, flags, streams);
  if (prepared === undefined) return exitCode.wrongInput;
  const { signal } = streams;
  const assessment = await watchWork(
    (watch) =>
      assess(prepared.house, { ...prepared.options, ...watch, whenStopped: 'keep' as const }),
    'situations',
    streams,
  );
  if (assessment === undefined) return exitCode.stopped;
  const solved = assessment.worstCase.situations.length;
  if (assessment.incomplete !== undefined && solved === 0) {
    sayStopped(streams, false);
    return exitCode.stopped;
  }
  // Who has stopped the work waits for what is done; only another Ctrl-C ends that.
  const printSignal = signal?.aborted === true ? undefined : signal;
  const extras = wantsExtras(flags)
    ? await reportExtras(prepared.house, assessment, { system: flags.units })
    : {};
  if (assessment.incomplete !== undefined) sayStopped(streams, true);
  streams.out(
    flags.json
      ? renderJson(assessment)
      : renderTerminal(assessment, {
          system: flags.units,
          width: Math.min(Math.max(streams.width, 60), 100),
          color: streams.color,
          ...(flags.all ? {} : { restWith: '--all' }),
        }),
  );
  const allWritten = await writeAsked(
    { assessment, extras },
    { file, flags, prepared, streams, signal: printSignal },
  );
  if (signal?.aborted === true) return exitCode.stopped;
  if (!allWritten) return exitCode.wrongInput;
  if (solved === 0 || assessment.worstCase.unsolved.length > 0) return exitCode.notSolved;
  if (!flags.failOnBeyond) return exitCode.done;
  const beyond = beyondLimits(assessment);
  if (beyond.length === 0) return exitCode.done;
  const told = beyond.map(({ kind, count, of }) => `${kind} ${count} (${of.join(', ')})`);
  streams.err(`--fail-on-beyond: findings beyond a limit: ${told.join('; ')}.\n`);
  return exitCode.beyondLimit;
}

interface Prepared {
  readonly house: House;
  readonly options: Parameters<typeof assess>[1];
  readonly signOff?: SignOff;
  readonly targets: ReportTargets;
}

function wantsExtras({ report, pdf, csv }: AssessFlags): boolean {
  return report !== undefined || pdf !== undefined || csv !== undefined;
}

/** All that can be wrong with the command line is found before anything is solved. */
async function prepare(
  file: string,
  flags: AssessFlags,
  streams: CommandStreams,
): Promise<Prepared | undefined> {
  const sets = await chooseLimitSets(flags.limits, streams);
  if (sets === undefined) return undefined;
  if (flags.seed !== undefined && flags.uncertainty === undefined) {
    streams.err('--seed: a seed is of the draws; add --uncertainty.\n');
    return undefined;
  }
  const { out, report, csv } = flags;
  const targets: ReportTargets = {
    ...(out === undefined ? {} : { out }),
    ...(report === undefined ? {} : { report }),
    ...(csv === undefined ? {} : { csv }),
  };
  const browser = flags.pdf === undefined ? undefined : await findBrowser();
  if (browser !== undefined && 'problem' in browser) {
    streams.err(`--pdf: ${visibleControls(browser.problem)}\n`);
    return undefined;
  }
  const all: ReportTargets =
    browser === undefined || flags.pdf === undefined
      ? targets
      : { ...targets, pdf: { file: flags.pdf, browser: browser.path } };
  const wrong = await targetProblem(all);
  if (wrong !== undefined) {
    streams.err(`${unwrittenWords(wrong)}\n`);
    return undefined;
  }
  if (flags.signOff !== undefined && report === undefined && flags.pdf === undefined) {
    streams.err('--sign-off: the block to sign stands on the page; add --report or --pdf.\n');
    return undefined;
  }
  const signOff =
    flags.signOff === undefined ? undefined : await readSignOffFile(flags.signOff, streams);
  if (flags.signOff !== undefined && signOff === undefined) return undefined;
  const house = await readHouseFile(file, streams, flags.json);
  if (house === undefined) return undefined;
  const facts = flags.facts === undefined ? {} : await readFacts(flags.facts, house, streams);
  if (facts === undefined) return undefined;
  return {
    house,
    options: optionsOf(flags, sets, facts),
    ...(signOff === undefined ? {} : { signOff }),
    targets: all,
  };
}

function optionsOf(
  flags: AssessFlags,
  sets: ChosenLimitSets,
  facts: ScreenFacts,
): Prepared['options'] {
  const { region, cures, draft, air, uncertainty, seed } = flags;
  return {
    ...sets,
    facts,
    cures,
    draft,
    air,
    createPool: situationWorkers,
    ...(region.length === 0 ? {} : { regions: region }),
    ...(uncertainty === undefined
      ? {}
      : {
          uncertainty: {
            createPool: solverWorkers,
            ...(uncertainty === true ? {} : { samples: uncertainty }),
            ...(seed === undefined ? {} : { seed }),
          },
        }),
  };
}

function readFacts(
  file: string,
  house: House,
  streams: CommandStreams,
): Promise<ScreenFacts | undefined> {
  return readDataFile(
    file,
    {
      flag: '--facts',
      what: 'a file of facts for code screens',
      lost: 'what it says',
      issues: screenFactsIssues,
      read: (value) => {
        const result = readScreenFacts(value, house);
        return result.ok ? { ok: true, value: result.facts } : result;
      },
    },
    streams,
  );
}

async function writeAsked(
  result: { readonly assessment: Assessment; readonly extras: ReportExtras },
  options: {
    readonly file: string;
    readonly flags: AssessFlags;
    readonly prepared: Prepared;
    readonly streams: CommandStreams;
    readonly signal: AbortSignal | undefined;
  },
): Promise<boolean> {
  const { file, flags, prepared, streams, signal } = options;
  const { signOff, targets } = prepared;
  const written = await writeReports(result.assessment, targets, {
    houseFile: file,
    system: flags.units,
    extras: result.extras,
    ...(signOff === undefined ? {} : { signOff }),
    ...(signal === undefined ? {} : { signal }),
  });
  const say = flags.json ? streams.err : streams.out;
  for (const report of written) {
    if ('paths' in report) say(`\n${visibleControls(writtenWords(report))}\n`);
    else if ('stopped' in report) {
      streams.err(`Stopped: ${report.flag} ${visibleControls(report.target)} was not written.\n`);
    } else {
      streams.err(`${unwrittenWords(report)}\n`);
    }
  }
  return written.every((report) => 'paths' in report);
}

function unwrittenWords(report: Extract<WrittenReport, { problem: unknown }>): string {
  const { flag, target, problem } = report;
  return visibleControls(`${flag} ${target}: the report could not be written there: ${problem}.`);
}

function writtenWords({ flag, paths }: Extract<WrittenReport, { paths: unknown }>): string {
  const [first = '', second, ...more] = paths;
  const rest =
    second === undefined
      ? ''
      : more.length === 0
        ? ` and ${second}`
        : ` and ${more.length + 1} more`;
  return `${titles[flag] ?? 'Written'}: ${first}${rest}`;
}

const titles: Readonly<Record<string, string>> = {
  '--out': 'Full report',
  '--report': 'Page',
  '--pdf': 'Printed page',
  '--csv': 'Tables',
};

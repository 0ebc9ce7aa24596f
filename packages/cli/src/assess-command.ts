import {
  assess,
  defaultLimitSet,
  formatIssue,
  limitSetById,
  limitSetIssues,
  renderJson,
  renderTerminal,
  unknownLimitSet,
  type Assessment,
  type House,
  type LimitSet,
  type SignOff,
} from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { findBrowser } from './find-browser.js';
import { progressBar } from './progress-bar.js';
import { readHouseFile } from './read-house-file.js';
import { readSignOffFile } from './read-sign-off-file.js';
import { writeReports, type ReportTargets } from './write-reports.js';

/** Flags of `evendraft assess`. */
export interface AssessFlags {
  readonly units: 'us' | 'si';
  readonly json: boolean;
  readonly limits?: string;
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
 * @param flags - units, output and limit set
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
  const assessment = await assessWatched(prepared, streams);
  if (assessment === undefined) return exitCode.stopped;
  streams.out(
    flags.json
      ? renderJson(assessment)
      : renderTerminal(assessment, {
          system: flags.units,
          width: Math.min(Math.max(streams.width, 60), 100),
          color: streams.color,
        }),
  );
  const written = await writeAsked(assessment, { file, flags, prepared, streams });
  if (!written) return exitCode.wrongInput;
  if (assessment.worstCase.situations.length === 0) return exitCode.notSolved;
  if (assessment.worstCase.unsolved.length > 0) return exitCode.notSolved;
  const beyond = assessment.findings.some((finding) => finding.verdict === 'beyond the limit');
  return beyond && flags.failOnBeyond ? exitCode.beyondLimit : exitCode.done;
}

interface Prepared {
  readonly house: House;
  readonly limitSet: LimitSet;
  readonly signOff?: SignOff;
  readonly targets: ReportTargets;
}

/** All that can be wrong with the command line is found before anything is solved. */
async function prepare(
  file: string,
  flags: AssessFlags,
  streams: CommandStreams,
): Promise<Prepared | undefined> {
  const limitSet = flags.limits === undefined ? defaultLimitSet : limitSetById(flags.limits);
  if (limitSet === undefined) {
    const issue = unknownLimitSet(flags.limits ?? '');
    streams.err(`--limits: ${formatIssue(issue, limitSetIssues)}\n`);
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
    streams.err(`--pdf: ${browser.problem}\n`);
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
  return {
    house,
    limitSet,
    ...(signOff === undefined ? {} : { signOff }),
    targets:
      browser === undefined || flags.pdf === undefined
        ? targets
        : { ...targets, pdf: { file: flags.pdf, browser: browser.path } },
  };
}

/** The assessment; nothing where the user stopped it, which is said. */
async function assessWatched(
  { house, limitSet }: Prepared,
  streams: CommandStreams,
): Promise<Assessment | undefined> {
  const { signal } = streams;
  const width = streams.progressWidth ?? streams.width;
  const bar = streams.progress
    ? progressBar({ write: streams.err, width, noun: 'situations' })
    : undefined;
  let soFar = 'nothing was solved yet';
  try {
    return await assess(house, {
      limitSet,
      ...(signal === undefined ? {} : { signal }),
      onProgress: (done, of) => {
        soFar = `${done} of ${of} situations were solved`;
        bar?.update(done, of);
      },
    });
  } catch (error) {
    if (signal?.aborted !== true) throw error;
    bar?.clear();
    streams.err(`Stopped: ${soFar}. There is no result and nothing was written.\n`);
    return undefined;
  } finally {
    bar?.clear();
  }
}

async function writeAsked(
  assessment: Assessment,
  options: {
    readonly file: string;
    readonly flags: AssessFlags;
    readonly prepared: Prepared;
    readonly streams: CommandStreams;
  },
): Promise<boolean> {
  const { file, flags, prepared, streams } = options;
  const { signOff, targets } = prepared;
  const written = await writeReports(assessment, targets, {
    houseFile: file,
    system: flags.units,
    ...(signOff === undefined ? {} : { signOff }),
  });
  const say = flags.json ? streams.err : streams.out;
  let all = true;
  for (const report of written) {
    if ('paths' in report) {
      const [first = '', second, ...more] = report.paths;
      const rest =
        second === undefined
          ? ''
          : more.length === 0
            ? ` and ${second}`
            : ` and ${more.length + 1} more`;
      say(`\n${titles[report.flag] ?? 'Written'}: ${first}${rest}\n`);
    } else {
      all = false;
      streams.err(
        `${report.flag} ${report.target}: the report could not be written there (${report.problem}).\n`,
      );
    }
  }
  return all;
}

const titles: Readonly<Record<string, string>> = {
  '--out': 'Full report',
  '--report': 'Page',
  '--pdf': 'Printed page',
  '--csv': 'Tables',
};

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
} from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { readHouseFile } from './read-house-file.js';
import { writeReports } from './write-reports.js';

/** Flags of `evendraft assess`. */
export interface AssessFlags {
  readonly units: 'us' | 'si';
  readonly json: boolean;
  readonly limits?: string;
  readonly out?: string;
  readonly failOnBeyond: boolean;
}

/**
 * `evendraft assess FILE`: reads the house, solves every state, judges, prints, and writes the full report where asked.
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
  const limitSet = flags.limits === undefined ? defaultLimitSet : limitSetById(flags.limits);
  if (limitSet === undefined) {
    const issue = unknownLimitSet(flags.limits ?? '');
    streams.err(`--limits: ${formatIssue(issue, limitSetIssues)}\n`);
    return exitCode.wrongInput;
  }
  const house = await readHouseFile(file, streams, flags.json);
  if (house === undefined) return exitCode.wrongInput;

  const assessment = await assess(house, {
    limitSet,
    onProgress: (done, of) => {
      if (streams.progress)
        streams.err(done < of ? `\r${done} of ${of} states solved` : '\r\u001b[K');
    },
  });
  streams.out(
    flags.json
      ? renderJson(assessment)
      : renderTerminal(assessment, {
          system: flags.units,
          width: Math.min(Math.max(streams.width, 60), 100),
          color: streams.color,
        }),
  );
  if (flags.out !== undefined) {
    const written = await reportsWritten(assessment, { file, flags, folder: flags.out, streams });
    if (!written) return exitCode.wrongInput;
  }
  if (assessment.worstCase.situations.length === 0) return exitCode.notSolved;
  if (assessment.worstCase.unsolved.length > 0) return exitCode.notSolved;
  const beyond = assessment.findings.some((finding) => finding.verdict === 'beyond the limit');
  return beyond && flags.failOnBeyond ? exitCode.beyondLimit : exitCode.done;
}

async function reportsWritten(
  assessment: Assessment,
  options: {
    readonly file: string;
    readonly flags: AssessFlags;
    readonly folder: string;
    readonly streams: CommandStreams;
  },
): Promise<boolean> {
  const { file, flags, folder, streams } = options;
  try {
    const paths = await writeReports(assessment, { folder, houseFile: file, system: flags.units });
    const say = flags.json ? streams.err : streams.out;
    say(`\nFull report: ${paths.join(' and ')}\n`);
    return true;
  } catch (error) {
    const why = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason';
    streams.err(`--out ${folder}: the report could not be written there (${why}).\n`);
    return false;
  }
}

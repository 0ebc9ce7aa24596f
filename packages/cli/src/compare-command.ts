import { visibleControls } from '@evendraft/text';
import {
  compare,
  renderComparison,
  renderJson,
  usualRankRule,
  type CompareRequest,
  type RankCriterion,
} from 'evendraft';
import { chooseLimitSet } from './choose-limit-sets.js';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { readHouseFile } from './read-house-file.js';
import { readYearFile } from './read-year-file.js';
import { remedyFrom, type RemedyFlags, type RemedyName } from './remedy-flags.js';
import { sayStopped } from './say-stopped.js';
import { situationWorkers } from './situation-workers.js';
import { watchWork } from './watch-work.js';

/** Flags of `evendraft compare`. */
export interface CompareFlags extends RemedyFlags {
  readonly remedy: readonly RemedyName[];
  readonly units: 'us' | 'si';
  readonly json: boolean;
  readonly limits: readonly string[];
  /** How far inside each limit a size must stay [Pa]. */
  readonly reserve: number;
  /** A pressure above outdoors that no room inside may exceed [Pa]. */
  readonly highest?: number;
  /** Through which make-up air enters the room [m²], and its distance to the hood [m]. */
  readonly outletArea?: number;
  readonly outletDistance?: number;
  readonly rank: readonly RankCriterion[];
  readonly year?: string;
  readonly hoursPerDay: number;
}

/** What is compared where no remedy was named: four kinds of make-up air, and less exhaust. */
const usualNames: readonly RemedyName[] = ['duct', 'barometric', 'motorized', 'powered', 'cap'];

/**
 * `evendraft compare FILE`: sizes remedies to the same limits and lays them side by side.
 *
 * @param file - path of the house file
 * @param flags - remedies, limits, rank, output
 * @param streams - where results and messages go
 * @returns exit code: 1 where none of them keeps the limits
 */
export async function compareCommand(
  file: string,
  flags: CompareFlags,
  streams: CommandStreams,
): Promise<ExitCode> {
  if (flags.outletDistance !== undefined && flags.outletArea === undefined) {
    streams.err('--outlet-distance: a jet has a face; add --outlet-area.\n');
    return exitCode.wrongInput;
  }
  const limitSet = await chooseLimitSet(flags.limits, streams);
  if (limitSet === undefined) return exitCode.wrongInput;
  const year = flags.year === undefined ? undefined : await readYearFile(flags.year, streams);
  if (flags.year !== undefined && year === undefined) return exitCode.wrongInput;
  const house = await readHouseFile(file, streams, flags.json);
  if (house === undefined) return exitCode.wrongInput;
  const names = flags.remedy.length === 0 ? usualNames : flags.remedy;
  const request: CompareRequest = {
    remedies: names.map((name) => remedyFrom(name, flags)),
    limitSet,
    createPool: situationWorkers,
    reservePa: flags.reserve,
    ...(flags.highest === undefined ? {} : { highestPa: flags.highest }),
    ...(flags.outletArea === undefined
      ? {}
      : {
          outlet: {
            areaM2: flags.outletArea,
            ...(flags.outletDistance === undefined
              ? {}
              : { diffuser: { distanceToHoodM: flags.outletDistance } }),
          },
        }),
    rank: flags.rank.length === 0 ? usualRankRule : flags.rank,
    ...(year === undefined ? {} : { year: { weather: year, hoursPerDay: flags.hoursPerDay } }),
  };
  const result = await watchWork(
    (watch) => compare(house, { ...request, ...watch, whenStopped: 'keep' }),
    'remedies',
    streams,
  );
  if (result === undefined) return exitCode.stopped;
  if (result.incomplete !== undefined) {
    const known = result.comparison.rows.length > 0;
    sayStopped(streams, known);
    if (!known) return exitCode.stopped;
  }
  if (result.leftOut.length === names.length) {
    for (const each of result.leftOut) streams.err(`${visibleControls(file)}: ${each}.\n`);
    return exitCode.wrongInput;
  }
  streams.out(
    flags.json
      ? renderJson(result)
      : renderComparison(result, {
          system: flags.units,
          width: Math.min(Math.max(streams.width, 60), 100),
          color: streams.color,
        }),
  );
  if (result.incomplete !== undefined) return exitCode.stopped;
  const { rows } = result.comparison;
  const none = rows.length > 0 && rows.every(({ sizing }) => sizing.status === 'impossible');
  return none ? exitCode.beyondLimit : exitCode.done;
}

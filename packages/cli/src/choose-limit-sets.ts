import {
  defaultLimitSet,
  formatIssue,
  limitSetById,
  limitSetIssues,
  readLimitSet,
  unknownLimitSet,
  type LimitSet,
} from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { readDataFile } from './read-data-file.js';

/** The sets to judge by: the first decides, the others are shown beside it. */
export interface ChosenLimitSets {
  readonly limitSet: LimitSet;
  readonly beside: readonly LimitSet[];
}

/**
 * The limit sets that a user named: ids of sets that come with the library, or files of own sets.
 *
 * @param named - as typed, in order; the default set where empty
 * @param streams - where issues go
 * @returns the sets, or nothing where one of them is unknown or cannot be used
 */
export async function chooseLimitSets(
  named: readonly string[],
  streams: CommandStreams,
): Promise<ChosenLimitSets | undefined> {
  const sets: LimitSet[] = [];
  for (const each of named) {
    const set = /\.(ya?ml|json)$/iu.test(each)
      ? await readOwnSet(each, streams)
      : knownSet(each, streams);
    if (set === undefined) return undefined;
    sets.push(set);
  }
  const [limitSet = defaultLimitSet, ...beside] = sets;
  return { limitSet, beside };
}

/**
 * The one limit set that sizes are to keep.
 *
 * @param named - as typed; the default set where empty
 * @param streams - where issues go
 * @returns the set, or nothing where it is unknown, cannot be used, or several were named
 */
export async function chooseLimitSet(
  named: readonly string[],
  streams: CommandStreams,
): Promise<LimitSet | undefined> {
  if (named.length > 1) {
    streams.err('--limits: a size keeps one limit set; name one, and run again for another.\n');
    return undefined;
  }
  return (await chooseLimitSets(named, streams))?.limitSet;
}

function knownSet(id: string, streams: CommandStreams): LimitSet | undefined {
  const set = limitSetById(id);
  if (set === undefined) {
    streams.err(`--limits: ${formatIssue(unknownLimitSet(id), limitSetIssues)}\n`);
  }
  return set;
}

function readOwnSet(file: string, streams: CommandStreams): Promise<LimitSet | undefined> {
  return readDataFile(
    file,
    {
      flag: '--limits',
      what: 'a file of limits',
      lost: 'the limit set',
      issues: limitSetIssues,
      read: (value) => {
        const result = readLimitSet(value);
        return result.ok ? { ok: true, value: result.limitSet } : result;
      },
    },
    streams,
  );
}

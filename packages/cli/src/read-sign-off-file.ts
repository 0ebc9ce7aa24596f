import { readSignOff, signOffIssues, type SignOff } from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { readDataFile } from './read-data-file.js';

/**
 * Reads the file of the block to sign and prints what is wrong with it.
 *
 * @param file - path as the user typed it
 * @param streams - where issues go
 * @returns the block, or nothing where the file cannot be used
 */
export function readSignOffFile(
  file: string,
  streams: CommandStreams,
): Promise<SignOff | undefined> {
  return readDataFile(
    file,
    {
      flag: '--sign-off',
      what: 'a sign-off file',
      lost: 'the block to sign',
      issues: signOffIssues,
      read: (value) => {
        const result = readSignOff(value);
        return result.ok ? { ok: true, value: result.signOff } : result;
      },
    },
    streams,
  );
}

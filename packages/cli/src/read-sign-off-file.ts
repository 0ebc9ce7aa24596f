import { readFile } from 'node:fs/promises';
import { formatIssue, withPosition, textIssues, type Issue } from '@evendraft/text';
import { readDocument } from '@evendraft/text/read';
import { readSignOff, signOffIssues, type SignOff } from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { whyUnreadable } from './why-unreadable.js';

const catalogue = new Map([...textIssues, ...signOffIssues]);

/**
 * Reads the file of the block to sign and prints what is wrong with it.
 *
 * @param file - path as the user typed it
 * @param streams - where issues go
 * @returns the block, or nothing where the file cannot be used
 */
export async function readSignOffFile(
  file: string,
  streams: CommandStreams,
): Promise<SignOff | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    streams.err(`--sign-off ${file}: ${whyUnreadable(error, 'a sign-off file')}\n`);
    return undefined;
  }
  const read = readDocument(bytes, { file });
  const result = read.ok ? readSignOff(read.document.value) : read;
  if (result.ok) return result.signOff;
  for (const issue of result.issues) streams.err(`${formatIssue(located(issue), catalogue)}\n`);
  streams.err(`${file}: the block to sign cannot be used; nothing was calculated.\n`);
  return undefined;

  function located(issue: Issue): Issue {
    if (!read.ok) return issue;
    return withPosition(issue, read.document, issue.code.endsWith('unknown-key') ? 'key' : 'value');
  }
}

import { printableJson, visibleControls } from '@evendraft/text';
import { formatIssue, houseIssues, readHouse, type House, type Issue } from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { readBytes } from './read-bytes.js';
import { whyUnreadable } from './why-unreadable.js';

/**
 * Reads a house file and prints what is wrong with it.
 *
 * @param file - path as the user typed it
 * @param streams - where issues go
 * @param json - print issues as JSON on stdout instead
 * @returns the house, or nothing where the file cannot be used
 */
export async function readHouseFile(
  file: string,
  streams: CommandStreams,
  json: boolean,
): Promise<House | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readBytes(file);
  } catch (error) {
    streams.err(`${visibleControls(file)}: ${whyUnreadable(error, 'a house file')}\n`);
    return undefined;
  }
  const result = readHouse(bytes, { file });
  const issues: readonly Issue[] = result.ok ? result.warnings : result.issues;
  if (json && !result.ok) streams.out(`${printableJson({ issues: issues.map(described) })}\n`);
  else for (const issue of issues) streams.err(`${formatIssue(issue, houseIssues)}\n`);
  if (!result.ok) {
    const errors = issues.filter((issue) => issue.severity === 'error').length;
    streams.err(
      `${visibleControls(file)}: ${errors} ${errors === 1 ? 'error' : 'errors'}; nothing was calculated.\n`,
    );
    return undefined;
  }
  return result.house;
}

function described(issue: Issue): object {
  return { ...issue, message: formatIssue(issue, houseIssues) };
}

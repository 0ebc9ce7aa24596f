import { readFile } from 'node:fs/promises';
import { formatIssue, houseIssues, readHouse, type House, type Issue } from 'evendraft';
import type { CommandStreams } from './command-streams.js';

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
    bytes = await readFile(file);
  } catch (error) {
    streams.err(`${file}: ${whyUnreadable(error)}\n`);
    return undefined;
  }
  const result = readHouse(bytes, { file });
  const issues: readonly Issue[] = result.ok ? result.warnings : result.issues;
  if (json && !result.ok)
    streams.out(`${JSON.stringify({ issues: issues.map(described) }, null, 2)}\n`);
  else for (const issue of issues) streams.err(`${formatIssue(issue, houseIssues)}\n`);
  if (!result.ok) {
    const errors = issues.filter((issue) => issue.severity === 'error').length;
    streams.err(
      `${file}: ${errors} ${errors === 1 ? 'error' : 'errors'}; nothing was calculated.\n`,
    );
    return undefined;
  }
  return result.house;
}

function described(issue: Issue): object {
  return { ...issue, message: formatIssue(issue, houseIssues) };
}

function whyUnreadable(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  switch (code) {
    case 'ENOENT':
      return 'there is no such file. Give the path of a house file, for example my-house.yaml.';
    case 'EISDIR':
      return 'this is a folder. Give the path of a house file in it.';
    case 'EACCES':
      return 'this file may not be read. Check its permissions.';
    default:
      return `the file could not be read (${String(code ?? 'unknown reason')}).`;
  }
}

import { textIssues, visibleControls } from '@evendraft/text';
import { formatIssue, readYear, yearIssues, type YearOfWeather } from 'evendraft';
import type { CommandStreams } from './command-streams.js';
import { readBytes } from './read-bytes.js';
import { whyUnreadable } from './why-unreadable.js';

const catalogue = new Map([...textIssues, ...yearIssues]);

/**
 * Reads a year of weather and prints what is wrong with it.
 *
 * @param file - path as the user typed it
 * @param streams - where issues go
 * @returns the year, or nothing where the file cannot be used
 */
export async function readYearFile(
  file: string,
  streams: CommandStreams,
): Promise<YearOfWeather | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readBytes(file);
  } catch (error) {
    streams.err(
      `--year ${visibleControls(file)}: ${whyUnreadable(error, 'a table of hourly weather')}\n`,
    );
    return undefined;
  }
  const result = readYear(bytes, { file });
  if (result.ok) return result.year;
  for (const issue of result.issues) streams.err(`${formatIssue(issue, catalogue)}\n`);
  streams.err(
    `${visibleControls(file)}: the year of weather cannot be used; nothing was calculated.\n`,
  );
  return undefined;
}

import {
  formatIssue,
  textIssues,
  visibleControls,
  withPosition,
  type Issue,
  type IssueCatalogue,
} from '@evendraft/text';
import { readDocument } from '@evendraft/text/read';
import type { CommandStreams } from './command-streams.js';
import { readBytes } from './read-bytes.js';
import { whyUnreadable } from './why-unreadable.js';

/** What a file beside the house file is to be. */
export interface DataFileKind<Value> {
  /** The flag that names it, e.g. `--sign-off`. */
  readonly flag: string;
  /** With its article, e.g. `a sign-off file`. */
  readonly what: string;
  /** What cannot be used where it has errors, e.g. `the block to sign`. */
  readonly lost: string;
  readonly issues: IssueCatalogue;
  /** Checks the parsed value. */
  readonly read: (
    value: unknown,
  ) =>
    | { readonly ok: true; readonly value: Value }
    | { readonly ok: false; readonly issues: readonly Issue[] };
}

/**
 * Reads a YAML or JSON file and prints what is wrong with it.
 *
 * @param file - path as the user typed it
 * @param kind - what it is to be
 * @param streams - where issues go
 * @returns its value, or nothing where the file cannot be used
 */
export async function readDataFile<Value>(
  file: string,
  kind: DataFileKind<Value>,
  streams: CommandStreams,
): Promise<Value | undefined> {
  let bytes: Uint8Array;
  try {
    bytes = await readBytes(file);
  } catch (error) {
    streams.err(`${kind.flag} ${visibleControls(file)}: ${whyUnreadable(error, kind.what)}\n`);
    return undefined;
  }
  const read = readDocument(bytes, { file });
  const result = read.ok ? kind.read(read.document.value) : read;
  if (result.ok) return result.value;
  const catalogue = new Map([...textIssues, ...kind.issues]);
  for (const issue of result.issues) streams.err(`${formatIssue(located(issue), catalogue)}\n`);
  streams.err(`${visibleControls(file)}: ${kind.lost} cannot be used; nothing was calculated.\n`);
  return undefined;

  function located(issue: Issue): Issue {
    if (!read.ok) return issue;
    return withPosition(issue, read.document, issue.code.endsWith('unknown-key') ? 'key' : 'value');
  }
}

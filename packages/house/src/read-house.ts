import { textDigest, withPosition, type Issue, type TextDocument } from '@evendraft/text';
import { readDocument } from '@evendraft/text/read';
import { issuesAtTheKey } from './house-issues.js';
import { parseHouse, type HouseResult } from './parse-house.js';

/** How a house is read from text. */
export interface ReadHouseOptions {
  /** Name of the file, for messages. */
  readonly file: string;
  /** Format of the text; by the name of the file, else by its content, when absent. */
  readonly format?: 'yaml' | 'json';
}

/**
 * A house from the text of a house file, YAML or JSON; each issue with file, line and column.
 *
 * Everything that is wrong is reported at once; nothing is thrown on any text.
 *
 * @param source - the text, or its bytes
 * @param options - name of the file, and the format where the name does not say it
 * @returns the house with warnings, or all issues in the order of the file
 *
 * @example
 * const result = readHouse('evendraft: 1', { file: 'house.yaml' });
 * result.ok; // => false
 */
export function readHouse(source: string | Uint8Array, options: ReadHouseOptions): HouseResult {
  const read = readDocument(source, options);
  if (!read.ok) return { ok: false, issues: read.issues };
  const { document } = read;
  const result = parseHouse(document.value, { digest: textDigest(source) });
  if (result.ok) {
    return { ...result, warnings: [...read.warnings, ...placed(result.warnings, document)] };
  }
  return { ok: false, issues: [...read.warnings, ...placed(result.issues, document)] };
}

function placed(issues: readonly Issue[], document: TextDocument): readonly Issue[] {
  return issues
    .map((issue) => withPosition(issue, document, issuesAtTheKey.has(issue.code) ? 'key' : 'value'))
    .sort(
      (a, b) =>
        (a.position?.line ?? 0) - (b.position?.line ?? 0) ||
        (a.position?.column ?? 0) - (b.position?.column ?? 0),
    );
}

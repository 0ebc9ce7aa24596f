import type { Issue } from './issue.js';
import type { TextDocument } from './text-document.js';

/**
 * The issue with the place in the text that its path leads to.
 *
 * Where the path leads to nothing, as for a missing key, the key of the nearest existing parent
 * serves; at last the start of the data.
 *
 * @param issue - an issue raised on the document's value
 * @param document - where the value came from
 * @param part - `key` if the key itself is wrong, for instance unknown; the value unless said otherwise
 * @returns the issue with file, line and column
 *
 * @example
 * withPosition({ code: 'x', severity: 'error', path: ['hood', 'flow'], parameters: {} }, document);
 */
export function withPosition(
  issue: Issue,
  document: TextDocument,
  part: 'key' | 'value' = 'value',
): Issue {
  const { file } = document;
  const own = document.locate(issue.path, part);
  if (own) return { ...issue, file, position: own };
  for (let length = issue.path.length - 1; length >= 0; length--) {
    const parent = document.locate(issue.path.slice(0, length), 'key');
    if (parent) return { ...issue, file, position: parent };
  }
  return { ...issue, file };
}

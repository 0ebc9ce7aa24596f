import { checkKeys } from './internal/check-keys.js';
import { decodeText } from './internal/decode-text.js';
import { documentOf } from './internal/document-of.js';
import { lineIndex } from './internal/line-index.js';
import { issuesOf, type Problem } from './internal/problem-list.js';
import { readJson } from './internal/read-json.js';
import { readYaml } from './internal/read-yaml.js';
import type { Issue } from './issue.js';
import { TextArgumentError } from './text-argument-error.js';
import type { TextDocument } from './text-document.js';
import { defaultTextLimits, type TextLimits } from './text-limits.js';

/** How a text is read. */
export interface ReadDocumentOptions {
  /** The file's name as the user gave it; it stands in every issue. */
  readonly file: string;
  /** Left out: JSON if the name ends in `.json`, else YAML. */
  readonly format?: 'yaml' | 'json';
  /** Ceilings other than `defaultTextLimits`. */
  readonly limits?: Partial<TextLimits>;
}

/** A document with warnings, or at least one error among the issues. */
export type ReadDocumentResult =
  | { readonly ok: true; readonly document: TextDocument; readonly warnings: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Reads a YAML or JSON text into plain data that knows where each part stands.
 *
 * Strict, so that a text means the same to every reader: YAML 1.2 without tags, references, merge
 * keys, several documents, repeated keys, or numbers in other forms than decimal; JSON as RFC 8259.
 * Ceilings bound time and memory. All issues are found at once, each with its place.
 *
 * @param source - the text, or the bytes of a UTF-8 file
 * @param options - the file's name, and format and ceilings where the usual ones do not fit
 * @returns the document, or the issues (codes in `textIssues`); never throws on any text
 * @throws TextArgumentError `text.invalid-limit` if a ceiling is not positive, or `maxDepth` is over 200
 *
 * @example
 * const result = readDocument('hood: { high: 900 cfm }', { file: 'house.yaml' });
 * result.ok && result.document.locate(['hood', 'high']); // => { line: 1, column: 15 }
 *
 * @example
 * const split = readDocument('hood: { high: 1,200 cfm }', { file: 'house.yaml' });
 * !split.ok && split.issues[0]?.code; // => 'text.number-split-by-comma'
 */
export function readDocument(
  source: string | Uint8Array,
  options: ReadDocumentOptions,
): ReadDocumentResult {
  const { file } = options;
  const format = options.format ?? (/\.json$/i.test(file) ? 'json' : 'yaml');
  const limits = checkedLimits({ ...defaultTextLimits, ...options.limits });

  const { text, problem } = decodeText(source, limits);
  const positionOf = lineIndex(text);
  const context = { file, positionOf };
  if (problem) return { ok: false, issues: issuesOf([problem], context) };

  const { root, problems } = (format === 'json' ? readJson : readYaml)(text, limits);
  const all: Problem[] = [...problems];
  if (root === undefined) {
    if (all.length === 0) all.push({ code: 'text.empty', offset: 0 });
  } else if (root.kind === 'scalar') {
    if (all.length === 0) all.push(bareValue(root));
  } else {
    all.push(...checkKeys(root, positionOf));
  }

  const issues = issuesOf(all, context);
  if (root === undefined || issues.some(({ severity }) => severity === 'error')) {
    return { ok: false, issues };
  }
  return { ok: true, document: documentOf(root, context), warnings: issues };
}

/** A file that holds one value; an empty YAML value is a file of comments. */
function bareValue({
  start,
  text,
  quoted,
}: {
  start: number;
  text: string;
  quoted: boolean;
}): Problem {
  if (text === '' && !quoted) return { code: 'text.empty', offset: start };
  const [line = ''] = text.split('\n');
  const found = line.length <= 40 ? line : `${line.slice(0, 39)}…`;
  return { code: 'text.bare-value', offset: start, parameters: { found } };
}

function checkedLimits(limits: TextLimits): TextLimits {
  for (const [name, limit] of Object.entries(limits)) {
    const most = name === 'maxDepth' ? maxDepthAllowed : Number.POSITIVE_INFINITY;
    if (!(limit > 0) || limit > most) {
      throw new TextArgumentError('text.invalid-limit', `${name} cannot be ${limit}.`);
    }
  }
  return limits;
}

/** Beyond this the call stack, which differs between machines, would be the ceiling. */
const maxDepthAllowed = 200;

import type { ErrorCode, YAMLParseError } from 'yaml';

import type { TextIssueCode } from '../text-issue-code.js';
import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';
import type { OpenedPart } from './yaml-nodes.js';

/** What the library's errors are told from. */
export interface SyntaxContext {
  readonly source: string;
  readonly opened: readonly OpenedPart[];
  readonly limits: TextLimits;
}

/** The library's codes that say one thing, in ours; `undefined` is said by the scan already. */
const simple: Partial<Record<ErrorCode, TextIssueCode | undefined>> = {
  ALIAS_PROPS: undefined,
  BAD_ALIAS: undefined,
  BAD_COLLECTION_TYPE: undefined,
  BAD_DIRECTIVE: undefined,
  BAD_PROP_ORDER: undefined,
  MULTIPLE_ANCHORS: undefined,
  MULTIPLE_TAGS: undefined,
  TAG_RESOLVE_FAILED: undefined,
  MULTIPLE_DOCS: 'text.several-documents',
  TAB_AS_INDENT: 'text.tab',
  KEY_OVER_1024_CHARS: 'text.key-too-long',
};

const closers: Readonly<Record<string, string>> = { '{': '}', '[': ']', '"': '"', "'": "'" };

/**
 * The syntax errors of a YAML text in our words, one a line.
 *
 * The library goes on after an error and then stumbles over its remains; what it finds further
 * right on the same line is nearly always such a remnant, and so is what it finds at the end.
 */
export function yamlSyntaxProblems(
  errors: readonly YAMLParseError[],
  context: SyntaxContext,
): Problem[] {
  const offsetsOfNesting = new Set(
    errors.filter((error) => error.code === 'BLOCK_AS_IMPLICIT_KEY').map((error) => error.pos[0]),
  );
  const problems: Problem[] = [];
  let lineEnd = -1;
  for (const error of errors.toSorted((a, b) => a.pos[0] - b.pos[0] || rank(a) - rank(b))) {
    const [offset] = error.pos;
    if (offset < lineEnd && error.code !== 'RESOURCE_EXHAUSTION') continue;
    if (error.code === 'MULTILINE_IMPLICIT_KEY' && offsetsOfNesting.has(offset)) {
      problems.push(deeperLine(offset, context.source));
    } else {
      const problem = problemOf(error, context);
      if (!problem) continue;
      problems.push(problem);
    }
    const end = context.source.indexOf('\n', offset);
    lineEnd = end < 0 ? context.source.length + 1 : end;
    if (problems.length > 1000) break;
  }
  return problems;
}

/** Of several errors at one place, that a key spans lines is the least telling, unless it nests. */
function rank({ code }: YAMLParseError): number {
  if (code === 'MULTILINE_IMPLICIT_KEY') return 1;
  return code === 'BLOCK_AS_IMPLICIT_KEY' ? 2 : 0;
}

function problemOf(error: YAMLParseError, context: SyntaxContext): Problem | undefined {
  const { code, message } = error;
  const { source, limits } = context;
  const [offset] = error.pos;
  if (code in simple) {
    const own = simple[code];
    return own === undefined ? undefined : { code: own, offset };
  }
  const unclosed = /(?:end with a |Missing closing )(.)/.exec(message)?.[1];
  if (unclosed !== undefined) return unclosedPart(unclosed, offset, context.opened);

  switch (code) {
    case 'RESOURCE_EXHAUSTION':
      return { code: 'text.too-deep', offset, parameters: { maxDepth: limits.maxDepth } };
    case 'BAD_INDENT':
      return { code: 'text.indent', offset };
    case 'BAD_SCALAR_START':
      return { code: 'text.reserved-start', offset, parameters: { found: source.charAt(offset) } };
    case 'BAD_DQ_ESCAPE':
      return {
        code: 'text.escape',
        offset,
        parameters: { found: source.slice(offset, offset + 2) },
      };
    case 'BLOCK_AS_IMPLICIT_KEY':
      return { code: 'text.colon-in-value', offset };
    case 'BLOCK_IN_FLOW':
      return { code: blockInFlow(offset, source), offset };
    case 'MULTILINE_IMPLICIT_KEY':
      return keyOverLines(offset, source);
    default:
  }
  if (/^Missing ,/.test(message)) return { code: 'text.comma-missing', offset };
  if (/^Unexpected (?:,|empty item)/.test(message))
    return { code: 'text.comma-unexpected', offset };
  if (/^Comments must be/.test(message)) return { code: 'text.comment-space', offset };
  if (/^Implicit map keys/.test(message)) return keyOverLines(offset, source);
  // The directive or the tag itself was reported by the scan.
  if (/^(?:Missing directives-end|Tags and anchors)/.test(message)) return undefined;
  return { code: 'text.syntax', offset, parameters: { found: restOfLine(offset, source) } };
}

/** An opening character that has no closing one is shown where it stands, not where it was missed. */
function unclosedPart(closer: string, offset: number, opened: readonly OpenedPart[]): Problem {
  const matching = opened.filter(({ opener, end }) => closers[opener] === closer && end === offset);
  const innermost = matching.toSorted((a, b) => b.start - a.start)[0];
  const opener = Object.keys(closers).find((key) => closers[key] === closer) ?? closer;
  return {
    code: 'text.unclosed',
    offset: innermost?.start ?? offset,
    parameters: { opened: opener, expected: closer },
  };
}

/** `{a: b: c}` holds a second colon; `[- a]` and a key on its own line are blocks by indent. */
function blockInFlow(offset: number, source: string): TextIssueCode {
  const start = Math.max(
    ...['\n', '{', '[', ','].map((mark) => source.lastIndexOf(mark, offset - 1)),
  );
  return /:\s/.test(source.slice(start + 1, offset)) ? 'text.colon-in-value' : 'text.block-in-flow';
}

/** A line among keys without a colon, or with a colon that no space follows. */
function keyOverLines(offset: number, source: string): Problem {
  const found = restOfLine(offset, source);
  const glued = /^([^\s:"'][^:"']*):([^\s:].*)$/.exec(found);
  if (glued) {
    const mended = `${glued[1] ?? ''}: ${glued[2] ?? ''}`;
    return { code: 'text.space-after-colon', offset, parameters: { found, mended } };
  }
  if (/^["'[{]/.test(found)) return { code: 'text.key-spans-lines', offset };
  return { code: 'text.colon-missing', offset, parameters: { found } };
}

/** A key that is indented below a key that has a value already: shown at the deeper line. */
function deeperLine(offset: number, source: string): Problem {
  const next = /\n\s*(?=\S)/g;
  next.lastIndex = offset;
  return { code: 'text.indent', offset: next.exec(source) ? next.lastIndex : offset };
}

function restOfLine(offset: number, source: string): string {
  const end = source.indexOf('\n', offset);
  const rest = source.slice(offset, end < 0 ? source.length : end).trim();
  return rest.length <= 40 ? rest : `${rest.slice(0, 39)}…`;
}

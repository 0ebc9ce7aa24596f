import type { IssueParameters, IssuePath } from '../issue.js';
import type { TextIssueCode } from '../text-issue-code.js';
import type { TextLimits } from '../text-limits.js';
import { readJsonText } from './json-text.js';
import type { Problem } from './problem-list.js';
import type { ReadNodes } from './read-yaml.js';
import { inexact } from './resolve-plain-scalar.js';
import type { MapEntry, ScalarNode, TextNode } from './text-node.js';

/**
 * Reads JSON as RFC 8259 has it, keeping the place of every key and value.
 *
 * After a comment or a trailing comma, which leave no doubt about the rest, it goes on; at any
 * other error it stops, since what follows would only be remnants.
 */
export function readJson(source: string, limits: TextLimits): ReadNodes {
  const problems: Problem[] = [];
  let at = 0;
  let nodes = 0;

  function fail(code: TextIssueCode, offset: number, parameters: IssueParameters = {}): undefined {
    problems.push({ code, offset, parameters });
    return undefined;
  }

  function unexpected(expected: string): undefined {
    return fail('text.json-syntax', at, { found: take(word, 30), expected });
  }

  /** What a sticky pattern matches here, shortened for a message. */
  function take(pattern: RegExp, maxLength = Number.POSITIVE_INFINITY): string {
    pattern.lastIndex = at;
    return (pattern.exec(source)?.[0] ?? '').slice(0, maxLength);
  }

  function skipSpace(): void {
    for (;;) {
      at += take(space).length;
      const length = take(comment).length;
      if (length === 0) return;
      fail('text.json-comment', at);
      at += length;
    }
  }

  function readValue(path: IssuePath): TextNode | undefined {
    nodes += 1;
    if (nodes > limits.maxNodes) {
      return fail('text.too-many-values', at, { maxNodes: limits.maxNodes });
    }
    const first = source[at];
    if (first === '{' || first === '[') return readCollection(path, first);
    return first === '"' ? readText() : readBareWord(path);
  }

  function readCollection(path: IssuePath, opener: '{' | '['): TextNode | undefined {
    const start = at;
    const closer = opener === '{' ? '}' : ']';
    if (path.length >= limits.maxDepth) {
      return fail('text.too-deep', at, { maxDepth: limits.maxDepth });
    }
    const entries: MapEntry[] = [];
    const items: TextNode[] = [];
    at += 1;
    skipSpace();
    while (source[at] !== closer) {
      if (opener === '{') {
        const entry = readEntry(path);
        if (!entry) return undefined;
        entries.push(entry);
      } else {
        const item = readValue([...path, items.length]);
        if (!item) return undefined;
        items.push(item);
      }
      skipSpace();
      if (source[at] === ',') {
        const comma = at;
        at += 1;
        skipSpace();
        if (source[at] === closer) fail('text.json-trailing-comma', comma);
        else if (at >= source.length) return unclosed(start, opener, closer);
      } else if (at >= source.length) {
        return unclosed(start, opener, closer);
      } else if (source[at] !== closer) {
        return unexpected(`a comma or ${closer}`);
      }
    }
    at += 1;
    return opener === '{' ? { kind: 'map', start, entries } : { kind: 'list', start, items };
  }

  function unclosed(start: number, opened: string, expected: string): undefined {
    return fail('text.unclosed', start, { opened, expected });
  }

  function readEntry(path: IssuePath): MapEntry | undefined {
    if (source[at] !== '"') {
      const found = take(bareKey, 40);
      if (found === '') return unexpected('a key in double quotes');
      return fail('text.json-quotes', at, { found });
    }
    nodes += 1;
    const key = readText();
    if (!key) return undefined;
    skipSpace();
    if (source[at] !== ':') return unexpected('a colon after the key');
    at += 1;
    skipSpace();
    const value = readValue([...path, key.text]);
    return value && { key: key.text, keyStart: key.start, value };
  }

  function readText(): ScalarNode | undefined {
    const start = at;
    const read = readJsonText(source, start);
    if (!read.ok) return fail(read.code, read.offset, read.parameters);
    const { text, end } = read;
    const { maxScalarLength } = limits;
    if (end - start > maxScalarLength)
      return fail('text.too-long-value', start, { maxScalarLength });
    at = end;
    return { kind: 'scalar', start, text, quoted: true, value: text };
  }

  function readBareWord(path: IssuePath): ScalarNode | undefined {
    const start = at;
    const text = take(bareWord);
    if (text === '') {
      return source[at] === "'"
        ? fail('text.json-quotes', at, { found: take(bareKey, 40) })
        : unexpected('a value');
    }
    const found = text.slice(0, 40);
    at += text.length;
    const constant = constants.get(text);
    if (constant !== undefined)
      return { kind: 'scalar', start, text, quoted: false, value: constant };
    if (!number.test(text)) {
      return fail(/^[-+]?\.?\d/.test(text) ? 'text.json-number' : 'text.json-word', start, {
        found,
      });
    }
    const value = Number(text);
    if (!Number.isFinite(value)) return fail('text.not-finite', start, { found });
    const { inexact: read } = inexact(text, value);
    if (read !== undefined) {
      problems.push({
        code: 'text.inexact-number',
        offset: start,
        path,
        parameters: { found, read },
      });
    }
    return { kind: 'scalar', start, text, quoted: false, value };
  }

  skipSpace();
  if (at >= source.length) return { root: undefined, problems };
  const root = readValue([]);
  if (root) {
    skipSpace();
    if (at < source.length) unexpected('the end of the file');
  }
  return { root, problems };
}

const space = /[ \t\r\n]*/y;
const comment = /(?:\/\/|#)[^\n]*|\/\*[^]*?(?:\*\/|$)/y;
const word = /[\w$]+|[^]/uy;
const bareKey = /'[^'\n]*'?|[\w$-]+/y;
const bareWord = /[\w$.+-]+/y;
const number = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:e[-+]?\d+)?$/i;
const constants = new Map<string, boolean | null>([
  ['true', true],
  ['false', false],
  ['null', null],
]);

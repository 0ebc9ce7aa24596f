import { isAlias, isMap, isScalar, isSeq, type Node, type Pair, type Scalar } from 'yaml';

import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';
import { resolvePlainScalar } from './resolve-plain-scalar.js';
import { splitInList, splitInMap } from './split-number.js';
import type { ListNode, MapEntry, MapNode, ScalarNode, TextNode } from './text-node.js';

/** Something with an end of its own, to find what an unclosed one began with. */
export interface OpenedPart {
  readonly opener: string;
  readonly start: number;
  readonly end: number;
}

/** What a YAML text holds, and what is wrong with its values and keys. */
export interface YamlNodes {
  readonly root: TextNode;
  readonly problems: readonly Problem[];
  readonly opened: readonly OpenedPart[];
}

type Path = readonly (string | number)[];

/** Turns the library's nodes into ours, and judges every key and value on the way. */
export function yamlNodes(contents: Node, source: string, limits: TextLimits): YamlNodes {
  const problems: Problem[] = [];
  const opened: OpenedPart[] = [];
  let tooDeep = false;

  function read(node: unknown, path: Path, fallbackStart: number): TextNode {
    const collection = isMap(node) || isSeq(node);
    if (collection && path.length >= limits.maxDepth) {
      if (!tooDeep) {
        const parameters = { maxDepth: limits.maxDepth };
        problems.push({
          code: 'text.too-deep',
          offset: node.range?.[0] ?? fallbackStart,
          parameters,
        });
      }
      tooDeep = true;
      return emptyScalar(fallbackStart);
    }
    if (collection && node.flow === true && node.range) {
      const [start, end] = node.range;
      opened.push({ opener: source.charAt(start), start, end });
    }
    if (isMap(node)) return readMap(node.items, path, node.range?.[0] ?? fallbackStart);
    if (isSeq(node)) return readList(node.items, path, node.range?.[0] ?? fallbackStart);
    if (isScalar(node)) return readScalar(node, path, fallbackStart);
    return emptyScalar(fallbackStart);
  }

  function readMap(pairs: readonly Pair[], path: Path, start: number): MapNode {
    const entries: MapEntry[] = pairs.map((pair) => {
      const { key, keyStart } = readKey(pair.key, path, start);
      const value = read(pair.value, [...path, key], keyStart);
      return { key, keyStart, value };
    });
    for (let index = 0; index < entries.length; index++) {
      const split = splitInMap(entries, index, source);
      const entry = entries[index];
      if (!entry) continue;
      if (split) {
        const { found, joined } = split;
        problems.push({
          code: 'text.number-split-by-comma',
          offset: entry.value.start,
          path: [...path, entry.key],
          parameters: { found, joined },
        });
        index += split.pieces;
      } else {
        checkSpaceAfterColon(entry, path);
      }
    }
    return { kind: 'map', start, entries };
  }

  /** `{low:250 cfm}` is one key without a value; no one means that. */
  function checkSpaceAfterColon({ key, keyStart, value }: MapEntry, path: Path): void {
    const hasNoValue = value.kind === 'scalar' && value.text === '' && !value.quoted;
    const glued = /^([^\s:"'][^:"']*):([^\s:].*)$/s.exec(key);
    if (!hasNoValue || !glued || !source.startsWith(key, keyStart)) return;
    problems.push({
      code: 'text.space-after-colon',
      offset: keyStart,
      path: [...path, key],
      parameters: { found: key, mended: `${glued[1] ?? ''}: ${glued[2] ?? ''}` },
    });
  }

  function readKey(node: unknown, path: Path, start: number): { key: string; keyStart: number } {
    if (isScalar(node)) {
      const keyStart = node.range?.[0] ?? start;
      const key = String(node.value ?? '');
      noteQuotes(node);
      if (key === '' && node.type === 'PLAIN') {
        problems.push({ code: 'text.empty-key', offset: keyStart, path });
      } else if (key === '<<' && node.type === 'PLAIN') {
        problems.push({ code: 'text.merge-key', offset: keyStart, path });
      }
      return { key, keyStart };
    }
    if (isMap(node) || isSeq(node)) {
      const keyStart = node.range?.[0] ?? start;
      problems.push({ code: 'text.complex-key', offset: keyStart, path });
      return { key: '', keyStart };
    }
    // A reference as a key was refused when the words were scanned.
    const missing = !isAlias(node);
    if (missing) problems.push({ code: 'text.empty-key', offset: start, path });
    return { key: '', keyStart: start };
  }

  function readList(items: readonly unknown[], path: Path, start: number): ListNode {
    const nodes = items.map((item, index) => read(item, [...path, index], start));
    for (let index = 0; index < nodes.length; index++) {
      const split = splitInList(nodes, index, source);
      if (!split) continue;
      const { found, joined } = split;
      problems.push({
        code: 'text.number-split-by-comma',
        offset: nodes[index]?.start ?? start,
        path: [...path, index],
        parameters: { found, joined },
      });
      index += split.pieces;
    }
    return { kind: 'list', start, items: nodes };
  }

  function readScalar(node: Scalar, path: Path, fallbackStart: number): ScalarNode {
    const text = String(node.value ?? '');
    const [from, to] = node.range ?? [fallbackStart, fallbackStart];
    // A value that is not there has the place of its key, where a person would look.
    const start = from === to ? fallbackStart : from;
    noteQuotes(node);
    if (node.type !== 'PLAIN') return { kind: 'scalar', start, text, quoted: true, value: text };
    const resolved = resolvePlainScalar(text);
    if (!resolved.ok) {
      problems.push({ code: resolved.code, offset: start, path, parameters: resolved.parameters });
      return { kind: 'scalar', start, text, quoted: false, value: null };
    }
    if (resolved.inexact !== undefined) {
      const parameters = { found: text.slice(0, 40), read: resolved.inexact };
      problems.push({ code: 'text.inexact-number', offset: start, path, parameters });
    }
    return { kind: 'scalar', start, text, quoted: false, value: resolved.value };
  }

  function noteQuotes(node: Scalar): void {
    if (!node.range || (node.type !== 'QUOTE_DOUBLE' && node.type !== 'QUOTE_SINGLE')) return;
    const opener = node.type === 'QUOTE_DOUBLE' ? '"' : "'";
    opened.push({ opener, start: node.range[0], end: node.range[1] });
  }

  const root = read(contents, [], 0);
  return { root, problems, opened };
}

function emptyScalar(start: number): ScalarNode {
  return { kind: 'scalar', start, text: '', quoted: false, value: null };
}

import type { MapEntry, TextNode } from './text-node.js';

/** A number that its own thousands comma cut in pieces. */
export interface SplitNumber {
  /** As it was typed: `1,200 cfm`. */
  readonly found: string;
  /** Without commas: `1200 cfm`. */
  readonly joined: string;
  /** How many further entries or items are pieces of it. */
  readonly pieces: number;
}

/**
 * Finds `{ high: 1,200 cfm }`, which YAML reads as `high: 1` and a key `200 cfm` without a value.
 *
 * The tell is a value of one to three digits, a comma with no space after it, and a key that begins
 * with three digits and has no value.
 */
export function splitInMap(
  entries: readonly MapEntry[],
  index: number,
  source: string,
): SplitNumber | undefined {
  const first = entries[index];
  if (!first || !isNumberHead(first.value)) return undefined;
  let previous = first.value;
  const pieces: string[] = [];
  for (let next = index + 1; next < entries.length; next++) {
    const entry = entries[next];
    if (!entry) break;
    const { key, keyStart, value } = entry;
    const hasNoValue = value.kind === 'scalar' && value.text === '' && !value.quoted;
    if (!hasNoValue || !/^\d{3}(?!\d)/.test(key) || !touches(previous, keyStart, source)) break;
    pieces.push(key);
    if (!/^\d{3}$/.test(key)) break;
    previous = { kind: 'scalar', start: keyStart, text: key, quoted: false, value: key };
  }
  return joined(first.value.text, pieces);
}

/**
 * Finds `[1,200 cfm]`, which YAML reads as 1 and `200 cfm`.
 *
 * Only if the last piece carries more than digits: `[100,200]` is a list of two numbers.
 */
export function splitInList(
  items: readonly TextNode[],
  index: number,
  source: string,
): SplitNumber | undefined {
  const first = items[index];
  if (!first || !isNumberHead(first)) return undefined;
  let previous = first;
  const pieces: string[] = [];
  for (const item of items.slice(index + 1, index + 12)) {
    if (item.kind !== 'scalar' || item.quoted || !/^\d{3}(?!\d)/.test(item.text)) return undefined;
    if (!touches(previous, item.start, source)) return undefined;
    pieces.push(item.text);
    if (/^\d{3} ?[^\d\s.]/.test(item.text)) return joined(first.text, pieces);
    previous = { ...item };
  }
  return undefined;
}

function isNumberHead(node: TextNode): node is TextNode & { kind: 'scalar' } {
  return node.kind === 'scalar' && !node.quoted && /^[-+]?[1-9]\d{0,2}$/.test(node.text);
}

/** Whether nothing but one comma stands between a scalar and what follows. */
function touches(before: { start: number; text: string }, next: number, source: string): boolean {
  return source.slice(before.start + before.text.length, next) === ',';
}

function joined(head: string, pieces: readonly string[]): SplitNumber | undefined {
  if (pieces.length === 0) return undefined;
  return {
    found: [head, ...pieces].join(','),
    joined: head + pieces.join(''),
    pieces: pieces.length,
  };
}

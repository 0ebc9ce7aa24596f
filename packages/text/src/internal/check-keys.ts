import type { IssuePath, TextPosition } from '../issue.js';
import type { Problem } from './problem-list.js';
import type { TextNode } from './text-node.js';

/** Keys through which a careless program would reach a prototype. */
const reserved = new Set(['__proto__', 'constructor', 'prototype']);

/** Finds keys that stand twice in a map, and keys that no data may have. */
export function checkKeys(
  root: TextNode,
  positionOf: (offset: number) => TextPosition,
): readonly Problem[] {
  const problems: Problem[] = [];

  function check(node: TextNode, path: IssuePath): void {
    if (node.kind === 'list') node.items.forEach((item, index) => check(item, [...path, index]));
    if (node.kind !== 'map') return;
    const firstStarts = new Map<string, number>();
    for (const { key, keyStart, value } of node.entries) {
      const own = [...path, key];
      const first = firstStarts.get(key);
      if (first === undefined) {
        firstStarts.set(key, keyStart);
      } else if (key !== '') {
        const parameters = { key: shortened(key), firstLine: positionOf(first).line };
        problems.push({ code: 'text.duplicate-key', offset: keyStart, path: own, parameters });
      }
      if (reserved.has(key)) {
        problems.push({
          code: 'text.reserved-key',
          offset: keyStart,
          path: own,
          parameters: { key },
        });
      }
      check(value, own);
    }
  }

  check(root, []);
  return problems;
}

function shortened(key: string): string {
  return key.length <= 40 ? key : `${key.slice(0, 39)}…`;
}

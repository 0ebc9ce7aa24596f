import type { IssuePath, TextPosition } from '../issue.js';
import type { TextDocument } from '../text-document.js';
import type { TextNode } from './text-node.js';

/** The document that a caller gets: plain data, and the places kept beside it. */
export function documentOf(
  root: TextNode,
  { file, positionOf }: { file: string; positionOf: (offset: number) => TextPosition },
): TextDocument {
  return {
    value: valueOf(root),
    file,
    locate(path, part = 'value') {
      const found = find(root, path);
      if (!found) return undefined;
      return positionOf(part === 'key' ? found.keyStart : found.node.start);
    },
    scalarAt(path) {
      const node = find(root, path)?.node;
      return node?.kind === 'scalar' ? { text: node.text, quoted: node.quoted } : undefined;
    },
  };
}

function find(root: TextNode, path: IssuePath): { node: TextNode; keyStart: number } | undefined {
  let node = root;
  let keyStart = root.start;
  for (const step of path) {
    if (node.kind === 'map') {
      const entry = node.entries.find(({ key }) => key === String(step));
      if (!entry) return undefined;
      node = entry.value;
      keyStart = entry.keyStart;
    } else if (node.kind === 'list') {
      const item = typeof step === 'number' ? node.items[step] : undefined;
      if (!item) return undefined;
      node = item;
      keyStart = item.start;
    } else {
      return undefined;
    }
  }
  return { node, keyStart };
}

function valueOf(node: TextNode): unknown {
  switch (node.kind) {
    case 'scalar':
      return node.value;
    case 'list':
      return node.items.map(valueOf);
    case 'map':
      return Object.fromEntries(node.entries.map(({ key, value }) => [key, valueOf(value)]));
  }
}

import { CST, Lexer } from 'yaml';

import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';

/** What the words of a YAML text give away before anything is built from them. */
export interface YamlScan {
  readonly problems: readonly Problem[];
  /** Whether the text is not to be parsed at all, because it is too large or no one wrote it. */
  readonly stopped: boolean;
}

/** Words of all kinds, spaces and line ends included, that a text may have for each key or value. */
const maxWordsPerNode = 4;

/** Problems after which a text is not worth reading on: no person wrote it. */
const maxProblems = 1000;

/**
 * Goes once through the words of a YAML text, in time proportional to its length.
 *
 * Ceilings are held here, because parsing costs a hundred times more; and so are tags, references
 * and directives refused, because here each has a place of its own.
 */
export function scanYaml(text: string, limits: TextLimits): YamlScan {
  const { maxNodes, maxScalarLength } = limits;
  const problems: Problem[] = [];
  let offset = 0;
  let words = 0;
  let nodes = 0;
  let isPlain = false;

  for (const word of new Lexer().lex(text)) {
    if (word === CST.DOCUMENT || word === CST.FLOW_END) continue;
    if (word === CST.SCALAR) {
      isPlain = true;
      continue;
    }
    const type = isPlain ? 'scalar' : CST.tokenType(word);
    isPlain = false;
    words += 1;
    switch (type) {
      case 'scalar':
      case 'single-quoted-scalar':
      case 'double-quoted-scalar':
        if (word.length > maxScalarLength) {
          problems.push({ code: 'text.too-long-value', offset, parameters: { maxScalarLength } });
          return { problems, stopped: true };
        }
        nodes += 1;
        break;
      case 'flow-map-start':
      case 'flow-seq-start':
      case 'seq-item-ind':
        nodes += 1;
        break;
      case 'anchor':
      case 'alias':
        problems.push({ code: 'text.anchor', offset, parameters: { found: shortened(word) } });
        break;
      case 'tag':
        problems.push({ code: 'text.tag', offset, parameters: { found: shortened(word) } });
        break;
      case 'directive-line':
        if (!/^%YAML +1\.2\s*$/.test(word)) {
          problems.push({ code: 'text.directive', offset, parameters: { found: shortened(word) } });
        }
        break;
      default:
    }
    if (nodes > maxNodes || words > maxWordsPerNode * maxNodes) {
      problems.push({ code: 'text.too-many-values', offset, parameters: { maxNodes } });
      return { problems, stopped: true };
    }
    if (problems.length >= maxProblems) return { problems, stopped: true };
    offset += word.length;
  }
  return { problems, stopped: false };
}

function shortened(word: string): string {
  return word.length <= 30 ? word : `${word.slice(0, 29)}…`;
}

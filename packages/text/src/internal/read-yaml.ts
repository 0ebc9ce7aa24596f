import { parseDocument } from 'yaml';

import type { TextIssueCode } from '../text-issue-code.js';
import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';
import { scanYaml } from './scan-yaml.js';
import type { TextNode } from './text-node.js';
import { yamlNodes } from './yaml-nodes.js';
import { yamlSyntaxProblems } from './yaml-syntax.js';

/** What a text holds, if anything, and what is wrong with it. */
export interface ReadNodes {
  readonly root: TextNode | undefined;
  readonly problems: readonly Problem[];
}

/** Reads YAML 1.2 with the library's parser and our rules for values; all problems at once. */
export function readYaml(source: string, limits: TextLimits): ReadNodes {
  const scan = scanYaml(source, limits);
  if (scan.stopped) return { root: undefined, problems: scan.problems };

  const document = parseDocument(source, {
    // Every scalar comes out as text, and duplicate keys are found here in linear time.
    schema: 'failsafe',
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: 'error',
  });
  const { contents } = document;
  if (contents === null) return { root: undefined, problems: scan.problems };

  const { root, problems, opened } = yamlNodes(contents, source, limits);
  const syntax = yamlSyntaxProblems(document.errors, { source, opened, limits });
  // After a syntax error a key may look odd only because its line was not understood.
  const own = problems.filter(({ code }) => syntax.length === 0 || !mayBeRemnant.has(code));
  return { root, problems: [...scan.problems, ...syntax, ...own] };
}

const mayBeRemnant = new Set<TextIssueCode>(['text.empty-key', 'text.complex-key']);

import { basename } from 'node:path';

/** Names that say nothing about what is inside. */
const emptyNames = /^(utils?|helpers?|misc|common|stuff)$/;

/**
 * A file is named in kebab-case after the one thing it exports, and never `utils`.
 *
 * @type {import('eslint').Rule.RuleModule}
 */
export const fileNameRule = {
  meta: {
    type: 'suggestion',
    docs: { description: 'a file is named in kebab-case after what it exports' },
    messages: {
      kebab: '{{name}}: name a file in kebab-case, after the one thing it exports.',
      empty: '{{name}}: name a file after what it exports; this name could mean anything.',
    },
    schema: [],
  },
  create(context) {
    return {
      Program(node) {
        const name = basename(context.filename);
        const stem = name.split('.')[0] ?? name;
        if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(stem)) {
          context.report({ node, messageId: 'kebab', data: { name } });
        } else if (emptyNames.test(stem)) {
          context.report({ node, messageId: 'empty', data: { name } });
        }
      },
    };
  },
};

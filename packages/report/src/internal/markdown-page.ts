import { escapeMarkdown } from './escape-markdown.js';

/** A column of a Markdown table. */
export interface MarkdownColumn {
  readonly header: string;
  /** Numbers stand on the right. */
  readonly align?: 'left' | 'right';
}

/** Collects a Markdown document. Every text given to it is escaped; none is markup. */
export interface MarkdownPage {
  readonly heading: (level: 1 | 2 | 3, title: string) => void;
  readonly paragraph: (text: string) => void;
  readonly bullets: (texts: readonly string[]) => void;
  readonly numbered: (texts: readonly string[]) => void;
  readonly table: (
    columns: readonly MarkdownColumn[],
    rows: readonly (readonly string[])[],
  ) => void;
  /** Everything so far, ending in one line end. */
  readonly text: () => string;
}

/**
 * An empty document.
 *
 * @returns the document
 */
export function markdownPage(): MarkdownPage {
  const blocks: string[] = [];
  const put = (lines: readonly string[]): void => {
    if (lines.length > 0) blocks.push(lines.join('\n'));
  };
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return {
    heading: (level, title) => put([`${'#'.repeat(level)} ${escapeMarkdown(title)}`]),
    paragraph: (text) => put([escapeMarkdown(text)]),
    bullets: (texts) => put(texts.map((text) => `- ${escapeMarkdown(text)}`)),
    numbered: (texts) => put(texts.map((text, index) => `${index + 1}. ${escapeMarkdown(text)}`)),
    table: (columns, rows) => {
      if (rows.length === 0) return;
      put([
        row(columns.map(({ header }) => escapeMarkdown(header))),
        row(columns.map(({ align }) => (align === 'right' ? '--:' : '---'))),
        ...rows.map((cells) => row(columns.map((_, index) => escapeMarkdown(cells[index] ?? '')))),
      ]);
    },
    text: () => `${blocks.join('\n\n')}\n`,
  };
}

import { verdictsByUrgency, type Verdict } from '@evendraft/rules';
import { displayWidth } from './display-width.js';
import { textTable, type TextColumn, type TextTable } from './text-table.js';
import { withMinus } from './typeset.js';
import { wrapText } from './wrap-text.js';

/** Lays out what is put on it, line by line, within one width. */
export interface TerminalPage {
  readonly width: number;
  /** An empty line. */
  readonly blank: () => void;
  /** A section's title with a rule to the right edge, and an empty line before it. */
  readonly heading: (title: string) => void;
  /** A wrapped paragraph. */
  readonly paragraph: (text: string, indent?: number) => void;
  /** A paragraph whose opening words are dressed where they are a verdict. */
  readonly verdictParagraph: (text: string) => void;
  /** A wrapped paragraph under a bullet. */
  readonly bullet: (text: string) => void;
  /** A bullet that opens with a dressed verdict and a colon. */
  readonly verdictBullet: (verdict: Verdict, text: string) => void;
  readonly table: (columns: readonly TextColumn[], rows: readonly (readonly string[])[]) => void;
  /** The same table, not yet put on the page. */
  readonly layTable: (
    columns: readonly TextColumn[],
    rows: readonly (readonly string[])[],
  ) => TextTable;
  /** Dresses a finished text by its verdict where colour is wanted; the words say it all without. */
  readonly dressVerdict: (text: string, verdict: Verdict) => string;
  /** Puts finished lines as they are. */
  readonly lines: (lines: readonly string[]) => void;
  /** Everything so far, ending in one line end. */
  readonly text: () => string;
}

const escape = '\u001b[';
const reset = `${escape}0m`;

/** Within a limit stays undressed: a green number would look like a clearance. */
const verdictColours: Readonly<Record<Verdict, string>> = {
  'beyond the limit': `${escape}1;31m`,
  'near the limit': `${escape}33m`,
  'not judged': `${escape}35m`,
  'within the limit': '',
};

/**
 * An empty page.
 *
 * @param options - columns of the line [-] and whether to colour
 * @returns the page
 */
export function terminalPage(options: {
  readonly width: number;
  readonly color: boolean;
}): TerminalPage {
  const { width, color } = options;
  const lines: string[] = [];
  const dress = (text: string, code: string): string =>
    color && code !== '' && text !== '' ? code + text + reset : text;
  const bold = (text: string): string => dress(text, `${escape}1m`);
  const layTable: TerminalPage['layTable'] = (columns, rows) =>
    textTable({ columns, rows, width, dressHeader: bold });
  return {
    width,
    heading: (title) => {
      if (lines.length > 0) lines.push('');
      const wrapped = wrapText(title, { width });
      const last = wrapped.at(-1) ?? '';
      const rule = '─'.repeat(Math.max(0, width - displayWidth(last) - 1));
      lines.push(...wrapped.slice(0, -1).map(bold));
      lines.push(rule === '' ? bold(last) : `${bold(last)} ${rule}`);
    },
    paragraph: (text, indent = 0) => {
      const space = ' '.repeat(indent);
      lines.push(...wrapText(text, { width, first: space, rest: space }));
    },
    verdictParagraph: (text) => {
      const [first = '', ...rest] = wrapText(text, { width });
      const verdict = verdictsByUrgency.find((each) => first.toLowerCase().startsWith(`${each}:`));
      const length = verdict?.length ?? 0;
      const opening = first.slice(0, length);
      lines.push(
        (verdict === undefined ? opening : dress(opening, verdictColours[verdict])) +
          first.slice(length),
        ...rest,
      );
    },
    bullet: (text) => {
      lines.push(...wrapText(text, { width, first: '- ', rest: '  ' }));
    },
    verdictBullet: (verdict, text) => {
      const [first = '', ...rest] = wrapText(`${verdict}: ${text}`, {
        width,
        first: '- ',
        rest: '  ',
      });
      const end = 2 + verdict.length;
      lines.push(
        `- ${dress(first.slice(2, end), verdictColours[verdict])}${first.slice(end)}`,
        ...rest,
      );
    },
    table: (columns, rows) => {
      const { header, rows: body } = layTable(columns, rows);
      lines.push(...header, ...body.flat());
    },
    layTable,
    blank: () => {
      lines.push('');
    },
    dressVerdict: (text, verdict) => dress(text, verdictColours[verdict]),
    lines: (finished) => {
      lines.push(...finished);
    },
    text: () => withMinus(`${lines.join('\n')}\n`),
  };
}

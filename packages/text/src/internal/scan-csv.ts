import type { TextLimits } from '../text-limits.js';
import type { Problem } from './problem-list.js';

/** A cell as it stands in the text. */
export interface ScannedCell {
  readonly text: string;
  readonly offset: number;
}

/** Rows of cells, and what is wrong with them. */
export interface ScannedCsv {
  readonly rows: readonly (readonly ScannedCell[])[];
  readonly problems: readonly Problem[];
}

/** Cells end at a comma or at the end of a line. */
const endOfCell = /,|\r?\n/g;

/**
 * Splits a text into rows of cells; stops at the first ceiling.
 *
 * @param text - the text
 * @param limits - of which the count of values and their length are held
 * @returns rows and problems
 */
export function scanCsv(text: string, limits: TextLimits): ScannedCsv {
  const rows: ScannedCell[][] = [];
  const problems: Problem[] = [];
  const { maxNodes, maxScalarLength } = limits;
  let row: ScannedCell[] = [];
  let cells = 0;
  let at = 0;
  const endRow = (): void => {
    const blank = row.length === 1 && row[0]?.text === '';
    if (row.length > 0 && !blank) rows.push(row);
    row = [];
  };
  while (at < text.length) {
    const cell = text[at] === '"' ? quotedCell(text, at) : plainCell(text, at);
    problems.push(...cell.problems);
    row.push({ text: cell.text, offset: at });
    cells += 1;
    if (cell.text.length > maxScalarLength) {
      problems.push({ code: 'text.too-long-value', offset: at, parameters: { maxScalarLength } });
      break;
    }
    if (cells > maxNodes) {
      problems.push({ code: 'text.too-many-values', offset: at, parameters: { maxNodes } });
      break;
    }
    at = cell.end;
    if (text[at] === ',') {
      at += 1;
      // A comma at the very end has one more cell behind it, which is empty.
      if (at === text.length) row.push({ text: '', offset: at });
      continue;
    }
    at += text.startsWith('\r\n', at) ? 2 : 1;
    endRow();
  }
  endRow();
  return { rows, problems };
}

interface OneCell {
  readonly text: string;
  /** Place of the comma or line end after it. */
  readonly end: number;
  readonly problems: readonly Problem[];
}

function plainCell(text: string, from: number): OneCell {
  const end = nextEnd(text, from);
  const found = text.slice(from, end);
  const quote = found.indexOf('"');
  return {
    text: found.trim(),
    end,
    problems: quote < 0 ? [] : [{ code: 'text.csv-quote', offset: from + quote }],
  };
}

function quotedCell(text: string, from: number): OneCell {
  const parts: string[] = [];
  let at = from + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) {
      const problem: Problem = {
        code: 'text.unclosed',
        offset: from,
        parameters: { opened: '"', expected: '"' },
      };
      return { text: parts.join(''), end: text.length, problems: [problem] };
    }
    parts.push(text.slice(at, quote));
    if (text[quote + 1] !== '"') {
      const end = nextEnd(text, quote + 1);
      const rest = text.slice(quote + 1, end).trim();
      return {
        text: parts.join(''),
        end,
        problems: rest === '' ? [] : [{ code: 'text.csv-quote', offset: quote }],
      };
    }
    parts.push('"');
    at = quote + 2;
  }
}

function nextEnd(text: string, from: number): number {
  endOfCell.lastIndex = from;
  return endOfCell.exec(text)?.index ?? text.length;
}

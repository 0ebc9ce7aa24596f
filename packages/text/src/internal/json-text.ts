import type { TextIssueCode } from '../text-issue-code.js';
import type { IssueParameters } from '../issue.js';

/** A JSON string with the offset behind it, or what is wrong with it and where. */
export type JsonText =
  | { readonly ok: true; readonly text: string; readonly end: number }
  | {
      readonly ok: false;
      readonly code: TextIssueCode;
      readonly offset: number;
      readonly parameters: IssueParameters;
    };

/** Reads the JSON string that begins with the quote at `start`. */
export function readJsonText(source: string, start: number): JsonText {
  let end = start + 1;
  for (; source[end] !== '"'; end++) {
    const character = source[end];
    if (character === undefined || character === '\n') {
      const parameters = { opened: '"', expected: '"' };
      return { ok: false, code: 'text.unclosed', offset: start, parameters };
    }
    if (character === '\t' || character === '\r') {
      const parameters = { found: character, expected: 'an escape such as \\t' };
      return { ok: false, code: 'text.json-syntax', offset: end, parameters };
    }
    if (character === '\\') {
      escape.lastIndex = end;
      const length = escape.exec(source)?.[0].length;
      if (length === undefined) {
        const parameters = { found: source.slice(end, end + 2).trimEnd() };
        return { ok: false, code: 'text.escape', offset: end, parameters };
      }
      end += length - 1;
    }
  }
  end += 1;
  return { ok: true, text: String(JSON.parse(source.slice(start, end))), end };
}

const escape = /\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;

import { describe, expect, it } from 'vitest';
import { formatIssue } from './format-issue.js';
import { readCsv } from './read-csv.js';
import { textIssues } from './text-issues.js';

const file = 'weather.csv';

function words(source: string | Uint8Array, limits = {}): readonly string[] {
  const result = readCsv(source, { file, limits });
  return result.ok ? [] : result.issues.map((issue) => formatIssue(issue, textIssues));
}

describe('readCsv', () => {
  it('reads quotes, doubled quotes, commas and line ends inside cells, and places each cell', () => {
    const result = readCsv('a,"b, c"\r\n1,"said ""so""\nhere"\r\n', { file });
    expect(result).toEqual({
      ok: true,
      table: {
        header: [
          { text: 'a', position: { line: 1, column: 1 } },
          { text: 'b, c', position: { line: 1, column: 3 } },
        ],
        rows: [
          [
            { text: '1', position: { line: 2, column: 1 } },
            { text: 'said "so"\nhere', position: { line: 2, column: 3 } },
          ],
        ],
      },
    });
  });

  it.each([
    ['LF', 'a,b\n1,2\n'],
    ['CRLF', 'a,b\r\n1,2\r\n'],
    ['no end at the last line', 'a,b\n1,2'],
    ['blank lines', 'a,b\n\n1,2\n\n'],
    ['space around cells', 'a , b\n 1,2 \n'],
    ['a byte order mark', '\ufeffa,b\n1,2\n'],
  ])('reads the same rows with %s', (_, source) => {
    const result = readCsv(source, { file });
    const cells = result.ok
      ? [result.table.header, ...result.table.rows].map((row) => row.map(({ text }) => text))
      : [];
    expect(cells).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });

  it('keeps empty cells, also behind the last comma', () => {
    const result = readCsv('a,b,c\n,,', { file });
    expect(result.ok && result.table.rows[0]?.map(({ text }) => text)).toEqual(['', '', '']);
  });

  it('says where a quote stands wrong, is not closed, and where cells are missing', () => {
    expect(words('a,b\n1 "x",2\n')[0]).toContain('weather.csv:2:3: a quote stands');
    expect(words('a,b\n"1" x,2\n')[0]).toContain('weather.csv:2:3: a quote stands');
    expect(words('a,b\n1,"2\n')[0]).toContain('weather.csv:2:3: the opening " is not closed');
    expect(words('a,b\n1\n1,2,3\n')).toEqual([
      expect.stringContaining('weather.csv:2:1: this row has 1 cell, the head has 2'),
      expect.stringContaining('weather.csv:3:1: this row has 3 cells, the head has 2'),
    ]);
    expect(words('a,a\n1,2\n')[0]).toContain(
      'weather.csv:1:3: the column "a" stands here a second',
    );
    expect(words('')[0]).toContain('nothing but space');
  });

  it('holds its ceilings, and refuses what is no text', () => {
    expect(words('a,b\n1,2\n', { maxBytes: 4 })[0]).toContain('larger than 4 bytes');
    expect(words('a,b\n1,2\n', { maxNodes: 3 })[0]).toContain('more than 3 keys and values');
    expect(words('a,b\n1234,2\n', { maxScalarLength: 3 })[0]).toContain('longer than 3 characters');
    expect(words(Uint8Array.of(0x61, 0xff))[0]).toContain('not UTF-8');
  });
});

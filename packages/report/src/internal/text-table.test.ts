import { describe, expect, it } from 'vitest';
import { textTable, type TextColumn } from './text-table.js';

const columns: readonly TextColumn[] = [
  { header: 'Zone', minimum: 6 },
  { header: 'Pressure', align: 'right', minimum: 5 },
];
const rows = [
  ['kitchen', '-12.3'],
  ['utility room', '-4.0'],
];

function lines(width: number): readonly string[] {
  const table = textTable({ columns, rows, width });
  return [...table.header, ...table.rows.flat()];
}

describe('textTable', () => {
  it('aligns words on the left and numbers on the right', () => {
    expect(lines(40)).toEqual([
      'Zone          Pressure',
      'kitchen          -12.3',
      'utility room      -4.0',
    ]);
  });

  it('aligns names of two columns a character', () => {
    const table = textTable({
      columns,
      rows: [
        ['厨房', '-1.0'],
        ['hall', '-2.0'],
      ],
      width: 40,
    });
    expect(table.rows.flat()).toEqual(['厨房      -1.0', 'hall      -2.0']);
  });

  it('wraps words in cells and headers before it is too wide', () => {
    expect(lines(17)).toEqual([
      'Zone     Pressure',
      'kitchen     -12.3',
      'utility      -4.0',
      'room',
    ]);
  });

  it('names the columns in a paragraph a row where they cannot stand side by side, numbers whole', () => {
    expect(lines(12)).toEqual([
      'Zone:',
      '  kitchen;',
      '  Pressure:',
      '  -12.3',
      'Zone:',
      '  utility',
      '  room;',
      '  Pressure:',
      '  -4.0',
    ]);
  });

  it('dresses cells after padding, so that dressing takes no room', () => {
    const dressed: readonly TextColumn[] = [
      { header: 'Finding', dress: (padded, cell) => `<${cell}>${padded}` },
      { header: 'Pa', align: 'right' },
    ];
    const table = textTable({ columns: dressed, rows: [['near', '1.0']], width: 40 });
    expect(table.rows).toEqual([['<near>near     1.0']]);
  });

  it('writes the same lines for a row whether or not other rows follow in its paragraph form', () => {
    const alone = textTable({ columns, rows: rows.slice(0, 1), width: 12 });
    expect(alone.rows[0]).toEqual(textTable({ columns, rows, width: 12 }).rows[0]);
  });
});

import { formatIssue, textIssues } from '@evendraft/text';
import { describe, expect, it } from 'vitest';
import { readYear } from './read-year.js';
import { yearIssues } from './year-issues.js';

const catalogue = new Map([...textIssues, ...yearIssues]);

function table(head: string, row: string, hours = 8760): string {
  return `${head}\n${`${row}\n`.repeat(hours)}`;
}

function words(source: string): readonly string[] {
  const result = readYear(source, { file: 'year.csv' });
  return result.ok ? [] : result.issues.map((issue) => formatIssue(issue, catalogue));
}

describe('readYear', () => {
  it('reads temperatures in the unit that the head states, in any column', () => {
    const celsius = readYear(table('hour,temperature [C],wind [m/s]', '1,-4.5,3'), { file: 'a' });
    expect(celsius.ok && celsius.year.temperaturesC.length).toBe(8760);
    expect(celsius.ok && celsius.year.temperaturesC[0]).toBe(-4.5);
    const fahrenheit = readYear(table('Temperature (°F)', '14', 8784), { file: 'a' });
    // 14 °F is −10 °C.
    expect(fahrenheit.ok && fahrenheit.year.temperaturesC[8783]).toBeCloseTo(-10, 9);
  });

  it('says with line and column what is wrong', () => {
    expect(words(table('hour,outdoors [C]', '1,2'))[0]).toContain(
      'year.csv:1:1: no column begins with "temperature"',
    );
    expect(words(table('temperature', '1'))[0]).toContain('year.csv:1:1: the column "temperature"');
    expect(words(`${table('hour,temperature [C]', '1,2', 8759)}1,\n`)).toEqual([
      expect.stringContaining('year.csv:8761:3: found "", expected an outdoor temperature'),
    ]);
    expect(words(table('temperature [C]', '1', 24))[0]).toContain('found 24 rows');
    expect(words('a,b\n1\n')[0]).toContain('year.csv:2:1: this row has 1 cell');
  });
});

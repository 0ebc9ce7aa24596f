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

  it('reads wind and pressure where they are there, in the units of their heads', () => {
    const read = readYear(
      table(
        'temperature [C],wind speed [mph],Wind direction [°],pressure [hPa],snow',
        '1,10,270,1002.5,x',
      ),
      { file: 'a' },
    );
    if (!read.ok) throw new Error('the table can be read');
    // 10 mph are 4.4704 m/s.
    expect(read.year.windSpeedsMPerS![0]).toBeCloseTo(4.4704, 9);
    expect(read.year.windFromDeg![0]).toBeCloseTo(270, 9);
    expect(read.year.pressuresPa![8759]).toBeCloseTo(100_250, 6);
    const plain = readYear(table('temperature [C]', '1'), { file: 'a' });
    expect(plain.ok && 'windSpeedsMPerS' in plain.year).toBe(false);
    const calm = readYear(table('temperature [C],wind speed [m/s],wind from [deg]', '1,0.0,'), {
      file: 'a',
    });
    expect(calm.ok && calm.year.windFromDeg![0]).toBe(0);
  });

  it('says which cell of wind or pressure is wrong', () => {
    const wrong = (head: string, row: string) =>
      words(`${head}\n${'1,2,90,990\n'.repeat(8759)}${row}\n`);
    const head = 'temperature [C],wind speed [m/s],wind direction [deg],pressure [hPa]';
    expect(wrong(head, '1,-2,90,990')).toEqual([
      expect.stringContaining('year.csv:8761:3: found "-2", expected a wind speed'),
    ]);
    expect(wrong(head, '1,2,,990')[0]).toContain(
      'year.csv:8761:5: found "", expected where the wind comes from',
    );
    expect(wrong(head, '1,2,361,990')).toHaveLength(1);
    expect(wrong(head, '1,2,90,101325')[0]).toContain('expected an air pressure');
    expect(wrong(head.replace('[hPa]', '[m]'), '1,2,90,990')[0]).toContain(
      'the column "pressure [m]" states no unit that it can have',
    );
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

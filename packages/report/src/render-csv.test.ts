import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { hostile, manyZones, oneZone } from '../fixtures/invented-assessments.js';
import { everyExtra } from '../fixtures/invented-extras.js';
import { everyPart } from '../fixtures/invented-results.js';
import type { Assessment } from './assessment.js';
import { renderCsv } from './render-csv.js';

/** Reads RFC 4180 strictly: throws on a bare quote or a line end that is not CRLF. */
function parseCsv(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/uy;
  while (cell.lastIndex < text.length) {
    const start = cell.lastIndex;
    const match = cell.exec(text);
    if (match === null) throw new Error(`not CSV at ${start}: ${text.slice(start, start + 40)}`);
    row.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') {
      rows.push(row);
      row = [];
    }
  }
  return rows;
}

function fileOf(assessment: Assessment, name: string): readonly (readonly string[])[] {
  const file = renderCsv(assessment, { system: 'us' }).find((each) => each.name === name);
  if (file === undefined) throw new Error(`there is no ${name}`);
  return parseCsv(file.text);
}

describe('renderCsv', () => {
  it('writes heads with units and numbers without', () => {
    expect(fileOf(oneZone, 'delivered-flows.csv').slice(0, 2)).toEqual([
      ['Running', 'Device', 'Speed', 'Rated, cfm', 'Delivered, cfm', 'Of rating, %', 'Started'],
      ['hood high + dryer', 'hood', 'high', '400', '251', '63', 'by hand'],
    ]);
  });

  it('has a row for every zone of every situation', () => {
    const rows = fileOf(manyZones, 'situations.csv');
    const expected = manyZones.worstCase.situations.reduce(
      (sum, { zones }) => sum + zones.length,
      0,
    );
    expect(rows).toHaveLength(expected + 1);
    expect(rows[1]?.slice(3)).toEqual(['tight end', 'attic', '0.0', '1.5']);
  });

  it('names no column of a table twice, so that a reader can take columns by their names', () => {
    const files = [everyPart, manyZones].flatMap((assessment) =>
      renderCsv(assessment, { system: 'si', extras: everyExtra }),
    );
    expect(files.length).toBeGreaterThan(20);
    for (const { name, text } of files) {
      const [head = []] = parseCsv(text);
      expect([name, new Set(head).size]).toEqual([name, head.length]);
    }
  });

  it('names every file itself, one for each table that has rows', () => {
    const names = renderCsv(hostile, { system: 'si' }).map(({ name }) => name);
    for (const name of names) expect(name).toMatch(/^[a-z-]+\.csv$/u);
    expect(new Set(names).size).toBe(names.length);
    const all = renderCsv(manyZones, { system: 'us', extras: everyExtra }).map(({ name }) => name);
    for (const name of ['leaks.csv', 'code-screens.csv', 'make-up-options.csv', 'shares.csv']) {
      expect(all).toContain(name);
      expect(names).not.toContain(name);
    }
  });

  it.each(['=1+1', '+1', '-1+1', '@sum(A1)', '\t=1', ' =1', '\uff1d1', '\u00a0=1'])(
    'keeps %j from being calculated',
    (name) => {
      const house = {
        ...oneZone.house,
        devices: oneZone.house.devices.map((d) => ({ ...d, id: name })),
      };
      const cell = fileOf({ ...oneZone, house }, 'devices.csv')[1]?.[0] ?? '';
      expect(cell.startsWith("'")).toBe(true);
    },
  );

  it('leaves negative numbers as numbers', () => {
    expect(fileOf(oneZone, 'findings.csv')[1]?.slice(3)).toEqual([
      '-46.8',
      '-2.0',
      '-44.8',
      '1.0',
      '-1.5',
    ]);
  });

  it('can be read back whatever the names, every row as wide as its head', () => {
    fc.assert(
      fc.property(anyAssessment, (assessment) => {
        for (const { text } of renderCsv(assessment, { system: 'us' })) {
          const rows = parseCsv(text);
          for (const row of rows) {
            expect(row).toHaveLength(rows[0]?.length ?? 0);
            for (const cell of row) {
              if (!/^-?\d+(?:\.\d+)?$/u.test(cell)) expect(cell).not.toMatch(/^[\s]*[=+@-]/u);
            }
          }
        }
      }),
      { seed: 7302, numRuns: 80 },
    );
  });
});

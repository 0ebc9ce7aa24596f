import { describe, expect, it } from 'vitest';
import {
  hostile,
  hostileName,
  manyZones,
  noAppliances,
  oneZone,
} from '../fixtures/invented-assessments.js';
import { everyPart } from '../fixtures/invented-results.js';
import { situation, studyOf } from '../fixtures/invented-parts.js';
import { renderTerminal } from './render-terminal.js';
import { ReportError } from './report-error.js';

const us = { system: 'us' } as const;

describe('renderTerminal', () => {
  // Golden: our own output, read by eye when it was recorded; it says nothing about any house.
  it.each([
    ['one-zone.txt', oneZone, us],
    ['many-zones.txt', manyZones, { system: 'si' as const }],
    ['no-appliances.txt', noAppliances, us],
    ['every-part.txt', everyPart, us],
    ['narrow.txt', manyZones, { system: 'us' as const, width: 48 }],
  ])('writes what is recorded in %s', async (file, assessment, options) => {
    await expect(renderTerminal(assessment, options)).toMatchFileSnapshot(`../recorded/${file}`);
  });

  it('shows one row for a state, with its deepest weather', () => {
    const text = renderTerminal(oneZone, us);
    expect(text.match(/^\d {2}.*$/gmu)).toEqual([
      '1  hood high + dryer  −48.3  cold',
      '2  hood high          −31.9  cold',
      '3  dryer               −9.0  cold',
      '4  all off             −1.5  cold',
    ]);
  });

  it('tells of flues what they do, where they turn and what limits say, never as a clearance', () => {
    const text = renderTerminal(everyPart, us).replace(/\s+/gu, ' ');
    expect(text).toContain('water heater beyond the limit beyond the limit reversed');
    expect(text).toContain('a cold flue starts to draw only above 1.5, this house gives −34.3');
    expect(text).toContain('with no end in the 30 min that were followed');
    expect(text).toContain('Carbon monoxide in a room from 36 ppm 52 ppm 36 ppm beyond the limit');
    expect(text).toContain('What that calls for: What 36 ppm calls for.');
    expect(text).not.toContain('What 9 ppm calls for');
    expect(text).toContain('No number here clears an appliance: a test on site decides.');
    expect(text).not.toMatch(/\b(safe|passes the test|ok)\b/iu);
  });

  it('says why flues were not solved', () => {
    const draft = { status: 'not solved', why: 'They take long' } as const;
    const text = renderTerminal({ ...oneZone, draft }, us);
    expect(text).toContain('Draft, spillage and spilled gas');
    expect(text).toContain('They take long.');
  });

  it('lists as many states as asked and counts the rest', () => {
    const text = renderTerminal(oneZone, { ...us, states: 1 });
    expect(text).toContain('… and 3 further states; all 5 situations are in the full report.');
    expect(text).not.toMatch(/^2 {2}/mu);
  });

  it('lists the zones under their state where they do not fit side by side', () => {
    const zones = ['north', 'south', 'east', 'west', 'upper', 'lower', 'middle', 'far end'];
    const many = {
      ...noAppliances,
      house: {
        ...noAppliances.house,
        zones: zones.map((id) => ({ id, kind: 'living' as const })),
      },
      worstCase: studyOf([
        situation({
          label: 'hood',
          running: {},
          pressuresPa: Object.fromEntries(zones.map((zone, index) => [zone, index - 8])),
        }),
      ]),
    };
    const text = renderTerminal(many, { ...us, width: 60 });
    expect(text).toContain(
      '1. hood (cold)\n    north −8.0, south −7.0, east −6.0, west −5.0,\n    upper −4.0, lower',
    );
  });

  it('says the same without colour as with it', () => {
    const coloured = renderTerminal(manyZones, { ...us, color: true });
    const stripped = coloured.replace(/\p{Cc}\[[\d;]*m/gu, '');
    const lines = (text: string): readonly string[] =>
      text.split('\n').map((line) => line.trimEnd());
    expect(lines(stripped)).toEqual(lines(renderTerminal(manyZones, us)));
    expect(coloured).toContain('\u001b[1;31mBeyond the limit\u001b[0m');
  });

  it('gives no colour to what is within the limit, lest it look like a clearance', () => {
    const coloured = renderTerminal(manyZones, { ...us, color: true });
    expect(coloured).toMatch(/^Within the limit: /mu);
    expect(coloured).not.toContain('\u001b[32m');
  });

  it('passes no control character of a name on to the terminal', () => {
    expect(hostileName).toContain('\u001b');
    expect(renderTerminal(hostile, us)).not.toMatch(/(?!\n)[\p{Cc}\u202e]/u);
  });

  it('shows a finding in words and numbers whose signs agree', () => {
    const text = renderTerminal(manyZones, us);
    expect(text).toContain('near the limit     −5.0   −5.0     0.0');
    expect(text).toContain('less than 0.1 Pa short of it');
  });

  it('refuses a width that is no number and a count of states below one', () => {
    const codeOf = (run: () => unknown): unknown => {
      try {
        run();
      } catch (error) {
        return error instanceof ReportError ? error.code : error;
      }
      return 'nothing thrown';
    };
    expect(codeOf(() => renderTerminal(oneZone, { ...us, width: Number.NaN }))).toBe(
      'report.invalid-width',
    );
    expect(codeOf(() => renderTerminal(oneZone, { ...us, states: 0 }))).toBe(
      'report.invalid-count',
    );
  });
});

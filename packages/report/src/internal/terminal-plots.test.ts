import { describe, expect, it } from 'vitest';
import { crowded, manyZones, noAppliances, oneZone } from '../../fixtures/invented-assessments.js';
import { finding, situation, studyOf } from '../../fixtures/invented-parts.js';
import type { Assessment } from '../assessment.js';
import { numberPrinter } from './number-printer.js';
import { terminalLadder } from './terminal-ladder.js';
import { terminalPage } from './terminal-page.js';
import { terminalStrip } from './terminal-strip.js';

function drawn(
  plot: typeof terminalLadder,
  assessment: Assessment,
  look: { readonly width: number; readonly color: boolean } = { width: 80, color: false },
): readonly string[] {
  const page = terminalPage(look);
  plot({ page, assessment, system: 'us', printer: numberPrinter('us') });
  return page.text().trimEnd().split('\n');
}

describe('terminalLadder', () => {
  it('draws a line from outdoors to the value, double from the limit on', () => {
    const line = drawn(terminalLadder, manyZones).find((each) => each.startsWith('water heater'));
    const [, single = '', double = ''] = /(-+)\|(=+)o +\u221212\.6$/u.exec(line ?? '') ?? [];
    // The limit is 2.0 of 12.6 Pa down, on a grid of columns.
    expect(single.length / (single.length + double.length + 1)).toBeCloseTo(2 / 12.56, 1);
  });

  it('shows the bar beyond a value that is within its limit, and an X on the limit itself', () => {
    const lines = drawn(terminalLadder, manyZones);
    expect(lines.find((each) => each.startsWith('fireplace'))).toMatch(/-o +\| +\u22121\.2$/u);
    expect(lines.find((each) => each.startsWith('furnace'))).toMatch(/-X +\u22125\.0$/u);
  });

  it('keeps to the width, in columns, for any names', () => {
    for (const assessment of [oneZone, manyZones, crowded, noAppliances]) {
      for (const width of [60, 80, 100]) {
        for (const line of drawn(terminalLadder, assessment, { width, color: false })) {
          expect(line.length).toBeLessThanOrEqual(width);
        }
      }
    }
  });

  it('puts a name that has no room beside its line above it, whole', () => {
    const name = 'the water heater in the closet behind the kitchen stair';
    const lines = drawn(terminalLadder, {
      ...oneZone,
      findings: oneZone.findings.map((each) => ({ ...each, appliance: name })),
    });
    const place = lines.indexOf(name);
    expect(place).toBeGreaterThan(0);
    expect(lines[place + 1]).toMatch(/^ +-+\|/u);
    expect(lines.join('')).not.toContain('…');
  });

  it('colours only values that have a verdict, and only when asked', () => {
    const escape = String.fromCharCode(27);
    expect(drawn(terminalLadder, oneZone).join('')).not.toContain(escape);
    const colored = drawn(terminalLadder, oneZone, { width: 80, color: true });
    const line = colored.find((each) => each.startsWith('water heater'));
    expect(line).toContain(`${escape}[1;31m`);
    expect(colored.find((each) => each.startsWith('house'))).not.toContain(escape);
  });

  it('says nothing where nothing was solved', () => {
    const nothing = { ...oneZone, worstCase: studyOf([]) };
    expect(drawn(terminalLadder, nothing)).toEqual(['']);
  });

  it('stands a house that is pushed above outdoors on the other side of zero', () => {
    const pushed = {
      ...oneZone,
      worstCase: studyOf([situation({ label: 'fan', running: {}, pressuresPa: { house: 2 } })]),
      findings: [
        finding({
          appliance: 'stove',
          zone: 'house',
          verdict: 'within the limit',
          valuePa: 2,
          limitPa: -4,
        }),
      ],
    };
    expect(drawn(terminalLadder, pushed).find((each) => each.startsWith('stove'))).toMatch(
      /o-+ +\| /u,
    );
  });
});

describe('terminalStrip', () => {
  it('hangs a column for each situation, the worst first', () => {
    // 6 characters wide; 8 lines of 2.5 Pa down to 20 Pa, each reached from its middle on.
    const situations = [-16, -12, -8, -4].map((house, index) =>
      situation({ label: `state ${index}`, running: {}, pressuresPa: { house } }),
    );
    const lines = drawn(terminalStrip, { ...oneZone, worstCase: studyOf(situations) }).slice(1);
    expect(
      lines.filter((line) => line.includes('#')).map((line) => line.split('#').length - 1),
    ).toEqual([24, 24, 18, 12, 12, 6]);
  });

  it('lets a column stand for several where there are too many, and keeps to the width', () => {
    const situations = Array.from({ length: 500 }, (_, index) =>
      situation({ label: `state ${index}`, running: {}, pressuresPa: { house: -50 + index / 10 } }),
    );
    const lines = drawn(terminalStrip, { ...oneZone, worstCase: studyOf(situations) });
    expect(lines.join('\n')).toContain('500 situations, worst first');
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('leaves a handful of situations to the table', () => {
    expect(drawn(terminalStrip, manyZones)).toEqual(['']);
  });
});

import { describe, expect, it } from 'vitest';
import { hostileName } from '../fixtures/invented-assessments.js';
import { compared, sized } from '../fixtures/invented-remedies.js';
import type { Sizing } from './remedy-results.js';
import { renderComparison } from './render-comparison.js';
import { renderJson } from './render-json.js';
import { renderSizing } from './render-sizing.js';

const us = { system: 'us' } as const;

function widest(text: string): number {
  return Math.max(...text.split('\n').map((line) => line.length));
}

describe('renderSizing', () => {
  // Golden: our own output, read by eye when it was recorded.
  it('writes what is recorded in size.txt', async () => {
    await expect(renderSizing(sized, us)).toMatchFileSnapshot('../recorded/size.txt');
    expect(widest(renderSizing(sized, us))).toBeLessThanOrEqual(80);
  });

  it('says in SI what fails, that it is not monotone, and what was not looked at', () => {
    const text = renderSizing(sized, { system: 'si' }).replace(/\s+/gu, ' ');
    expect(text).toContain('Smallest size that keeps every target: 203 mm round.');
    expect(text).toContain('The next smaller one that was tried, 178 mm round, fails.');
    expect(text).toContain('A larger size fails again');
    expect(text).toContain('no limit for hearth');
    expect(text).toContain('No size clears an appliance');
  });

  it('says where the air comes from and by what duct, in the units of the reader', () => {
    const { remedy } = sized;
    const built = {
      from: { kind: 'face', face: 'back' },
      run: { lengthM: 3.048, elbows: 4, frictionMultiplier: 2 },
    } as const;
    const text = (system: 'us' | 'si') =>
      renderSizing({ ...sized, remedy: { ...remedy, built } }, { system }).replace(/\s+/gu, ' ');
    expect(text('us')).toContain(
      'from the back of the house, by a duct of 10.0 ft with 4 bends of 90° and 2 times the friction of smooth metal.',
    );
    expect(text('si')).toContain('by a duct of 3.0 m with 4 bends');
    expect(renderSizing(sized, us)).not.toContain('Its air comes');
  });

  it('says first that it was stopped, and gives the sizes between which the answer lies as no answer', () => {
    const { margins, remedy, solves, tried } = sized.result;
    const parts = [{ work: 'sizes', done: 3, notProved: 'No size is shown to do it.' }] as const;
    const known = { question: 'size', remedy, status: 'unfinished', margins, solves } as const;
    const text = (result: Sizing['result']) =>
      renderSizing({ ...sized, incomplete: { parts }, result }, us).replace(/\s+/gu, ' ');
    const [fails, holds] = [
      { ...tried[0]!, margins, proved: true },
      { ...tried[1]!, margins },
    ];
    const both = text({ ...known, tried, fails, holds: { ...holds, proved: false } });
    expect(both).toMatch(
      /Incomplete: .* 3 sizes\. No size is shown to do it\. The smallest size seen so far that keeps every target: 8 in round\. One that is smaller may keep them too\. Not every state is covered/u,
    );
    expect(both).toContain('The largest below it seen so far that does not: 7 in round.');
    expect(both).toMatch(/7 in round, where it fails .* 8 in round, over all states .* As it is/u);
    expect(both).not.toContain('Smallest size that keeps');
    const one = text({ ...known, tried, fails });
    expect(one).toContain(
      'No size was seen so far that keeps every target. The largest seen so far that does not: 7 in',
    );
    const none = text({ ...known, tried: [] });
    expect(none).not.toContain('so far that');
    expect(none).toContain('As it is, in what was solved so far');
  });

  it('says why no size does it', () => {
    const { margins, tried, solves, remedy } = sized.result;
    const text = renderSizing(
      {
        ...sized,
        result: {
          question: 'size',
          status: 'impossible',
          best: 0.4572,
          obstacle: { kind: 'stays shut', item: 'motorized make-up' },
          margins,
          tried,
          monotone: true,
          solves,
          remedy,
        },
      },
      us,
    ).replace(/\s+/gu, ' ');
    expect(text).toContain('No size offered keeps every target. The closest is 18 in round');
    expect(text).toContain('motorized make-up stays shut');
  });
});

describe('renderComparison', () => {
  // Golden: our own output, read by eye when it was recorded.
  it('writes what is recorded in compare.txt', async () => {
    await expect(renderComparison(compared, us)).toMatchFileSnapshot('../recorded/compare.txt');
    expect(widest(renderComparison(compared, us))).toBeLessThanOrEqual(80);
  });

  it('says first that it was stopped, and what is not shown', () => {
    const parts = [
      { work: 'remedies', done: 1, of: 4, notProved: 'A better one may come.' },
    ] as const;
    const text = renderComparison({ ...compared, incomplete: { parts } }, us).replace(/\s+/gu, ' ');
    expect(text).toMatch(
      /side by side \S+ Incomplete: .* 1 of 4 remedies\. A better one may come\./u,
    );
  });

  it('says that nothing was sized where no appliance has a limit', () => {
    const none = { ...compared, comparison: { ...compared.comparison, rows: [] } };
    expect(renderComparison(none, us)).toContain('Nothing was sized');
  });

  it('lets no name command the terminal', () => {
    const { house, ...rest } = compared;
    const text = renderComparison({ ...rest, house: { ...house, name: hostileName } }, us);
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/u);
  });

  it('is the same as JSON', () => {
    expect(JSON.parse(renderJson(compared))).toEqual(compared);
    expect(JSON.parse(renderJson(sized))).toEqual(sized);
    expect(renderJson(sized)).toMatch(/^\{\n {2}"schema": "evendraft-sizing"/u);
  });
});

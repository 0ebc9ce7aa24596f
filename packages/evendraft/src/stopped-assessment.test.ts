import { parseHouse, type House } from '@evendraft/house';
import {
  assessmentSchema,
  renderSizing,
  sizingSchema,
  renderCsv,
  renderHtml,
  renderMarkdown,
  renderTerminal,
} from '@evendraft/report';
import { describe, expect, it } from 'vitest';
import { assess, type AssessWork } from './assess.js';
import { reportExtras } from './report-extras.js';
import { size } from './size.js';

/** Invented: a hood and a dryer beyond the limit of a boiler with a flue. */
function house(): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Lane 9',
    floorArea: '1500 ft2',
    airtightness: '900 cfm at 50 Pa',
    exhaust: { hood: { low: '150 cfm', high: '400 cfm' }, dryer: '160 cfm' },
    weather: [{ name: 'cold', outdoorTemperature: '-10 C' }],
    appliances: {
      boiler: {
        vent: 'natural draft',
        fuel: 'gas',
        kind: 'boiler',
        input: '60 kBtu/h',
        flue: { height: '16 ft', diameter: '6 in', collarHeight: '5 ft' },
      },
    },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

/** Assessed, and stopped as soon as so many of one kind of work are done. */
function stoppedAt(work: AssessWork, count: number) {
  const stop = new AbortController();
  return assess(house(), {
    signal: stop.signal,
    whenStopped: 'keep',
    uncertainty: { samples: 800 },
    onProgress(done, _, of) {
      if (of === work && done >= count) stop.abort();
    },
  });
}

describe('an assessment that is stopped and keeps what is done', () => {
  it('says in every form, first of all, how many of how many and what is not shown', async () => {
    const of = house();
    const assessment = await stoppedAt('situations', 3);
    expect(assessmentSchema.safeParse(assessment).error).toBeUndefined();
    expect(assessment.worstCase.situations).toHaveLength(3);
    expect(
      assessment.incomplete?.parts.map(({ work, done, of: all }) => [work, done, all]),
    ).toEqual([
      ['situations', 3, 6],
      ['orders of switching on', 0, undefined],
      ['draws', 0, 800],
      ['flue states', 0, undefined],
      ['cures', 0, undefined],
      ['questions of the air', 0, 4],
    ]);
    const extras = await reportExtras(of, assessment, { system: 'us' });
    const told = /^(?:(?!At worst)[^])*Incomplete: the work was stopped[^]*3 of 6 situations\./u;
    expect(renderTerminal(assessment, { system: 'us' })).toMatch(told);
    expect(renderMarkdown(assessment, { system: 'us' })).toMatch(told);
    expect(renderHtml(assessment, { system: 'us', extras })).toMatch(told);
    const files = renderCsv(assessment, { system: 'us', extras });
    expect(files.find(({ name }) => name === 'incomplete.csv')?.text).toContain(
      '3 of 6 situations',
    );
  });

  it('judges nothing to be within a limit that not all situations were held against', async () => {
    const { findings, houseFindings, screens } = await stoppedAt('situations', 1);
    const verdicts = [...findings, ...houseFindings].map(({ verdict }) => verdict);
    expect(verdicts).not.toContain('within the limit');
    const ofPressure = screens.filter(({ rule }) => rule.includes('house-limit'));
    for (const { verdict } of ofPressure) expect(verdict).not.toBe('within the limit');
  });

  it.each([
    ['draws', 100, ['draws', 'flue states', 'cures', 'questions of the air']],
    ['flue states', 1, ['flue states', 'cures', 'questions of the air']],
    ['cures', 1, ['cures', 'questions of the air']],
  ] as const)(
    'stopped in the %s it keeps all that came before',
    async (work, count, unfinished) => {
      const assessment = await stoppedAt(work, count);
      expect(assessment.incomplete?.parts.map((part) => part.work)).toEqual(unfinished);
      expect(assessment.worstCase.stopped).toBeUndefined();
      expect(assessment.attribution).toBeDefined();
      const [first] = assessment.incomplete!.parts;
      expect(first!.done).toBeGreaterThanOrEqual(count);
      expect(first!.done).toBeLessThan(first!.of ?? Infinity);
      if (work === 'cures' && assessment.cures.status === 'solved') {
        expect(assessment.cures.appliances[0]?.cures).toHaveLength(1);
      }
    },
  );
});

describe('a sizing that is stopped and keeps what is done', () => {
  /** Stopped as soon as so many sizes are done, the house as it is counted as one. */
  const stoppedAfter = (count: number) => {
    const stop = new AbortController();
    return size(house(), {
      remedy: { kind: 'passive opening' },
      signal: stop.signal,
      whenStopped: 'keep',
      onProgress: (done) => {
        if (done >= count) stop.abort();
      },
    });
  };

  it('says first that it is incomplete, and gives no size as the answer', async () => {
    const result = await stoppedAfter(15);
    if (result.status !== 'answered') throw new Error(result.why);
    const { sizing } = result;
    expect(sizingSchema.safeParse(sizing).error).toBeUndefined();
    expect(sizing.incomplete?.parts).toEqual([
      {
        work: 'sizes',
        done: 14,
        notProved: 'No size is shown to be the smallest that keeps every target.',
      },
    ]);
    if (sizing.result.status !== 'unfinished') throw new Error(sizing.result.status);
    const { fails, holds } = sizing.result;
    expect(fails!.size).toBeLessThan(holds!.size);
    expect(renderSizing(sizing, { system: 'us' })).toMatch(
      /Remedy: [^]*Incomplete: [^]*14 sizes\.[^]*The smallest size seen so far that keeps/u,
    );
  });

  it('rejects where that was not asked for', async () => {
    const signal = AbortSignal.abort(new Error('enough'));
    await expect(size(house(), { remedy: { kind: 'passive opening' }, signal })).rejects.toThrow(
      'enough',
    );
  });
});

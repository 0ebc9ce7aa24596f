import { formatIssue } from '@evendraft/text';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitSetIssues } from './limit-set-issues.js';
import { limitSets } from './limit-sets.js';
import { readLimitSet } from './read-limit-set.js';
import { unknownLimitSet } from './unknown-limit-set.js';

/** A user's own set of one row; what is given replaces keys of the row. */
function own(row: Readonly<Record<string, unknown>> = {}): Record<string, unknown> {
  return {
    evendraftLimits: 1,
    id: 'county-rule',
    name: 'County rule',
    edition: '2026-10',
    document: 'Letter of the building office',
    editionOfDocument: '2025',
    summary: 'One limit for everything with a natural draft.',
    testSetUp: 'All exhaust on.',
    limits: [
      {
        id: 'natural-draft',
        condition: 'Natural draft',
        limitPa: -3,
        quantity: 'change from baseline',
        applies: [{ vents: ['natural draft'] }],
        source: { document: 'Letter of the building office', status: 'found' },
        ...row,
      },
    ],
  };
}

const letter = { document: 'Letter of the building office', status: 'found' };
const level = (id: string, fromPpm: number) => ({
  id,
  fromPpm,
  action: 'Ventilate.',
  leave: false,
  source: letter,
});
const houseLimit = {
  id: 'house',
  condition: 'Any house',
  limitPa: -10,
  quantity: 'change from baseline',
  source: letter,
};
const spillageTime = { id: 'five', condition: 'Five', vent: 'cold', limitS: 300, source: letter };
const configuration = {
  id: 'two',
  words: 'Two fans.',
  exhaust: 'two largest',
  doors: 'as found',
  hearthDamper: 'not stated',
  airHandler: 'off',
  firing: 'nothing',
  baseline: 'nothing is subtracted',
  source: letter,
};
const corner = (outdoorTemperatureC: number) => ({ outdoorTemperatureC, draftPa: -2 });
const draftLimit = {
  id: 'draft',
  condition: 'Draft',
  applies: [{ vents: ['natural draft'] }],
  place: 'at the hood',
  corners: [corner(0), corner(10)],
  source: letter,
};

/** The issues as a person reads them. */
function told(value: unknown): readonly string[] {
  const result = readLimitSet(value);
  return result.ok ? [] : result.issues.map((issue) => formatIssue(issue, limitSetIssues));
}

describe('a limit set that is read', () => {
  it('comes back with its note and exclusions filled in', () => {
    expect(readLimitSet(own())).toEqual({
      ok: true,
      limitSet: { ...own(), note: '', exclusions: [] },
    });
  });

  it('may have only times of spillage, and a test of its own', () => {
    const { ok } = readLimitSet({
      ...own(),
      limits: [],
      testConfigurations: [configuration],
      houseLimits: [{ ...houseLimit, configuration: 'two' }],
      draftLimits: [draftLimit],
      spillageTimes: [spillageTime],
      ambientCo: [level('low', 9), level('high', 70)],
    });
    expect(ok).toBe(true);
  });

  it('may be any of our own, from JSON', () => {
    for (const set of limitSets) {
      expect(readLimitSet(JSON.parse(JSON.stringify(set)))).toEqual({ ok: true, limitSet: set });
    }
  });
});

describe('a limit set that is wrong', () => {
  it.each<[string, unknown, string]>([
    ['is nothing', undefined, 'found nothing, expected keys and values.'],
    ['is a list', [], 'found a list, expected keys and values.'],
    [
      'is of another version',
      { ...own(), evendraftLimits: 2 },
      'evendraftLimits: found version 2, this library reads version 1.',
    ],
    ['lacks a name', { ...own(), name: undefined }, 'name: missing, expected a text.'],
    ['has a blank name', { ...own(), name: '  ' }, 'name: the text is empty.'],
    [
      'has an id with a space',
      { ...own(), id: 'my rule' },
      'id: found "my rule", expected small letters, digits and hyphens.',
    ],
    [
      'has an edition without a month',
      { ...own(), edition: '2026' },
      'edition: found "2026", expected a year and a month. Write it as "2026-11", in quotes.',
    ],
    ['has no limits', { ...own(), limits: [] }, 'limits: the list is empty.'],
    [
      'has a mistyped key',
      { ...own(), sumary: 'x' },
      'sumary: the key "sumary" is not known here; known are evendraftLimits, id, name, edition, document, editionOfDocument, region, summary, note, testSetUp, limits, exclusions, testConfigurations, houseLimits, extractLimits, draftLimits, spillageTimes, ambientCo, flueCo; perhaps "summary".',
    ],
    [
      'has a level of carbon monoxide below the one before',
      { ...own(), ambientCo: [level('high', 70), level('low', 9)] },
      'ambientCo[1].fromPpm: found 9 after 70, expected numbers that rise.',
    ],
    [
      'has a house limit for a test that it does not describe',
      { ...own(), houseLimits: [{ ...houseLimit, configuration: 'all-fans' }] },
      'houseLimits[0].configuration: there is no test configuration "all-fans" in this set; there are none.',
    ],
    [
      'has a time of spillage in milliseconds',
      { ...own(), spillageTimes: [{ ...spillageTime, limitS: 120000 }] },
      'spillageTimes[0].limitS: found 120000, expected 3600 or less.',
    ],
    [
      'has a test with exhaust that no word is for',
      { ...own(), testConfigurations: [{ ...configuration, exhaust: 'two biggest' }] },
      'testConfigurations[0].exhaust: found "two biggest", expected one of none, all, two largest, largest, dryers and larger, continuous only; perhaps "two largest".',
    ],
    [
      'has two rows of one id in another list',
      { ...own(), spillageTimes: [spillageTime, spillageTime] },
      'spillageTimes[1].id: the id "five" stands in an earlier row of this list already.',
    ],
    [
      'has corners that do not rise',
      { ...own(), draftLimits: [{ ...draftLimit, corners: [corner(10), corner(0)] }] },
      'draftLimits[0].corners[1].outdoorTemperatureC: found 0 after 10, expected numbers that rise.',
    ],
    [
      'has a positive limit',
      own({ limitPa: 5 }),
      'limits[0].limitPa: found 5, expected a number below 0. Zone minus outdoors is negative under suction: a limit of 5 Pa is -5.',
    ],
    [
      'has a limit in another unit',
      own({ limitPa: -500 }),
      'limits[0].limitPa: found -500, expected -100 or more.',
    ],
    [
      'has a limit with its unit',
      own({ limitPa: '-5 Pa' }),
      'limits[0].limitPa: found "-5 Pa", expected a number.',
    ],
    [
      'has a limit that is no number',
      own({ limitPa: NaN }),
      'limits[0].limitPa: found NaN, expected a number.',
    ],
    [
      'limits something else',
      own({ quantity: 'change from base line' }),
      'limits[0].quantity: found "change from base line", expected one of change from baseline, zone minus outdoors; perhaps "change from baseline".',
    ],
    [
      'lacks a source',
      own({ source: undefined }),
      'limits[0].source: missing, expected keys and values.',
    ],
    [
      'has a source without status',
      own({ source: { document: 'x' } }),
      'limits[0].source.status: missing, expected found, found second-hand, memory, our choice, derived, common practice, no source.',
    ],
    [
      'is for a vent that no limit can be for',
      own({ applies: [{ vents: ['electric'] }] }),
      'limits[0].applies[0].vents[0]: found "electric", expected one of natural draft, fan assisted, induced draft, power vented, direct vent, sealed combustion, open hearth, closed stove.',
    ],
    [
      'has a mistyped fact',
      own({ applies: [{ vent: ['natural draft'] }] }),
      'limits[0].applies[0].vent: the key "vent" is not known here; known are kinds, vents, fuels, alone, sharesVentWith, ventDamper, chimney; perhaps "vents".',
    ],
    [
      'asks for a vent that is shared and not shared',
      own({ applies: [{ alone: true, sharesVentWith: {} }] }),
      'limits[0].applies[0].alone: no appliance is alone on its vent and shares it.',
    ],
    [
      'asks for a height that is none',
      own({ applies: [{ chimney: { fromHeightM: 6, belowHeightM: 6 } }] }),
      'limits[0].applies[0].chimney.belowHeightM: no height is from 6 m and below 6 m at once.',
    ],
    [
      'asks for a height below the ground',
      own({ applies: [{ chimney: { belowHeightM: 0 } }] }),
      'limits[0].applies[0].chimney.belowHeightM: no height is from 0 m and below 0 m at once.',
    ],
    [
      'asks for a negative height',
      own({ applies: [{ chimney: { fromHeightM: -1 } }] }),
      'limits[0].applies[0].chimney.fromHeightM: found -1, expected 0 or more.',
    ],
  ])('because it %s says so at its key', (_, value, message) => {
    expect(told(value)).toEqual([message]);
  });

  it('hears all of it at once, a duplicate id included', () => {
    const set = own();
    const [row] = set['limits'] as [Record<string, unknown>];
    const value = { ...set, name: 3, limits: [row, { ...row, limitPa: 4 }] };
    expect(told(value)).toEqual([
      'name: found 3, expected a text.',
      expect.stringMatching(/^limits\[1\]\.limitPa: found 4/),
      'limits[1].id: the id "natural-draft" stands in an earlier row of this list already.',
    ]);
  });

  it('is never answered with an exception or without a path and words of our own', () => {
    const anySet = fc
      .record({ key: fc.constantFrom(...Object.keys(own())), value: fc.anything() })
      .map(({ key, value }) => ({ ...own(), [key]: value }));
    const anyRow = fc
      .record({ key: fc.constantFrom('id', 'limitPa', 'applies', 'source'), value: fc.anything() })
      .map(({ key, value }) => own({ [key]: value }));
    fc.assert(
      fc.property(fc.oneof(fc.anything(), anySet, anyRow), (value) => {
        const result = readLimitSet(value);
        if (result.ok) return;
        expect(result.issues.length).toBeGreaterThan(0);
        for (const issue of result.issues) {
          expect(limitSetIssues.has(issue.code)).toBe(true);
          expect(formatIssue(issue, limitSetIssues)).not.toMatch(/invalid/i);
        }
      }),
      { seed: 20261125, numRuns: 600 },
    );
  });
});

describe('the catalogue', () => {
  it('has a remedy for every code, and every code was raised above or by the name of a set', () => {
    const raised = new Set<string>();
    const values: readonly unknown[] = [
      { ...own(), name: undefined, edition: '', id: '', evendraftLimits: 2, more: 1 },
      { ...own(), name: 1, summary: '' },
      own({ limitPa: 1, quantity: '' }),
      own({ limitPa: -1000, applies: [{ alone: true, sharesVentWith: {} }] }),
      own({ applies: [{ chimney: { fromHeightM: 2, belowHeightM: 1 } }] }),
      { ...own(), limits: [{ id: 'twin' }, { id: 'twin' }] },
      { ...own(), ambientCo: [level('high', 70), level('low', 9)] },
      { ...own(), spillageTimes: [{ ...spillageTime, limitS: 3601 }] },
      { ...own(), houseLimits: [{ ...houseLimit, configuration: 'none-such' }] },
    ];
    for (const value of values) {
      const result = readLimitSet(value);
      if (!result.ok) result.issues.forEach(({ code }) => raised.add(code));
    }
    raised.add(unknownLimitSet('none').code);
    expect([...raised].sort()).toEqual([...limitSetIssues.keys()].sort());
    for (const { remedy } of limitSetIssues.values()) expect(remedy).toMatch(/\.$/);
  });
});

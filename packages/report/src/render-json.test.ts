import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import { manyZones, oneZone } from '../fixtures/invented-assessments.js';
import type { Assessment } from './assessment.js';
import { renderJson } from './render-json.js';
import { ReportError } from './report-error.js';

/** The same data with every object's keys the other way round. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, each]) => [key, reversed(each)]),
  );
}

function errorOf(part: Record<string, unknown>): ReportError {
  try {
    renderJson({ ...oneZone, ...part } as Assessment);
  } catch (error) {
    if (error instanceof ReportError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}

describe('renderJson', () => {
  it('says the same data', () => {
    expect(JSON.parse(renderJson(manyZones))).toEqual(manyZones);
  });

  it('says any assessment, names such as __proto__ included', () => {
    fc.assert(
      fc.property(anyAssessment, (assessment) => {
        const expected: unknown = JSON.parse(JSON.stringify(assessment));
        expect(JSON.parse(renderJson(assessment))).toEqual(expected);
      }),
      { seed: 2028, numRuns: 100 },
    );
  });

  it('writes the same text whatever the order in which the object was built', () => {
    expect(renderJson(reversed(manyZones) as Assessment)).toBe(renderJson(manyZones));
  });

  it('begins with what the file is and sorts the keys inside', () => {
    const text = renderJson(manyZones);
    expect(text).toMatch(/^\{\n {2}"schema": "evendraft-assessment",\n {2}"schemaVersion": 3,\n/u);
    expect(text.indexOf('"airtightness"')).toBeLessThan(text.indexOf('"altitudeM"'));
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'refuses %d and says where it is',
    (bad) => {
      const error = errorOf({ house: { ...oneZone.house, volumeM3: bad } });
      expect(error.code).toBe('report.not-finite');
      expect(error.message).toContain('assessment.house.volumeM3');
    },
  );

  it.each([
    ['undefined', undefined],
    ['a function', () => 1],
    ['a big integer', 1n],
    ['a map', new Map()],
    ['a date', new Date(0)],
  ])('refuses %s, which JSON would drop or change', (_, bad) => {
    expect(errorOf({ cautions: [bad] }).code).toBe('report.not-plain-data');
    expect(errorOf({ cautions: [bad] }).message).toContain('assessment.cautions[0]');
  });

  it('refuses an object that holds itself, and takes one that is used twice', () => {
    const circle: Record<string, unknown> = {};
    circle['self'] = circle;
    expect(errorOf({ cautions: [circle] }).code).toBe('report.not-plain-data');
    const shared = { document: 'a' };
    expect(() => renderJson({ ...oneZone, cautions: [shared, shared] } as never)).not.toThrow();
  });
});

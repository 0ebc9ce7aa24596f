import { describe, expect, it } from 'vitest';

import { suggest } from './suggest.js';

const keys = ['hood', 'dryer', 'floorArea', 'airtightness', 'hall bath', 'low', 'high'];

describe('suggest', () => {
  it.each([
    ['hodo', 'hood'],
    ['hod', 'hood'],
    ['Dryer', 'dryer'],
    ['dryre', 'dryer'],
    ['floor_area', 'floorArea'],
    ['floor area', 'floorArea'],
    ['hall-bath', 'hall bath'],
    ['air tightnes', 'airtightness'],
    ['lwo', 'low'],
    ['chimney', undefined],
    ['x', undefined],
    ['', undefined],
    ['hi', undefined],
    ['h'.repeat(10_000), undefined],
  ])('takes %.20s for %s', (found, expected) => {
    expect(suggest(found, keys)).toBe(expected);
  });

  it('prefers the nearest, and of equals the first', () => {
    expect(suggest('flow', ['floor', 'flows', 'slow'])).toBe('flows');
    expect(suggest('cat', ['car', 'can'])).toBe('car');
  });
});

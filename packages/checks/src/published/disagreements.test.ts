import { expect, test } from 'vitest';
import { disagreements } from './disagreements.js';
import { expectedValues } from './expected-values.js';

const tolerances = {
  close: { absolute: 0.5, because: 'made up for this test' },
  share: { relative: 0.1, because: 'made up for this test' },
};
const expected = expectedValues({
  tolerances,
  values: {
    room: { pressurePa: { value: -5, within: 'close' } },
    flow: { value: 2, within: 'share' },
  },
});

test('numbers within their tolerances agree', () => {
  expect(disagreements({ room: { pressurePa: -5.5 }, flow: 1.81 }, expected)).toEqual([]);
});

test('a number beyond its tolerance, a missing number and no number at all disagree', () => {
  expect(disagreements({ room: { pressurePa: 5 }, flow: 2.3 }, expected)).toHaveLength(2);
  expect(disagreements({ room: {} }, expected)).toEqual([
    'room, pressurePa: undefined, expected -5 within 0.5 (close)',
    'flow: undefined, expected 2 within 0.2 (share)',
  ]);
  expect(disagreements({ room: { pressurePa: NaN }, flow: NaN }, expected)).toHaveLength(2);
});

test('an expectation without a number or with an unknown tolerance is refused', () => {
  expect(() => expectedValues({ tolerances, values: { room: {} } })).toThrow('room: neither');
  expect(() =>
    expectedValues({ tolerances, values: { flow: { value: 2, within: 'near' } } }),
  ).toThrow('flow: no tolerance "near"');
});

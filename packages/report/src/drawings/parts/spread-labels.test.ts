import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadLabels } from './spread-labels.js';

describe('spreadLabels', () => {
  it('leaves labels that do not touch where they want to be', () => {
    expect(spreadLabels([80, 10, 40], { apart: 14, from: 0, to: 100 })).toEqual([80, 10, 40]);
  });

  it('moves two that touch apart around their middle', () => {
    expect(spreadLabels([50, 52], { apart: 14, from: 0, to: 100 })).toEqual([44, 58]);
  });

  it('keeps any labels apart, in order and in their range where there is room', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { minLength: 1, maxLength: 12 }),
        (wanted) => {
          const placed = spreadLabels(wanted, { apart: 15, from: 0, to: 200 });
          const order = wanted.map((_, index) => index);
          order.sort((a, b) => wanted[a]! - wanted[b]!);
          const sorted = order.map((index) => placed[index]!);
          for (let index = 1; index < sorted.length; index += 1) {
            // Means of several numbers carry a rounding error.
            expect(sorted[index]! - sorted[index - 1]!).toBeGreaterThan(15 - 1e-6);
          }
          expect(sorted[0]).toBeGreaterThan(-1e-6);
          expect(sorted.at(-1)).toBeLessThan(200 + 1e-6);
        },
      ),
      { seed: 7304, numRuns: 300 },
    );
  });
});

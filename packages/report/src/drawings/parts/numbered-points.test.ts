import { describe, expect, it } from 'vitest';
import { placedPoints } from './numbered-points.js';

const area = { x: 0, y: 0, width: 300, height: 200 };

describe('placedPoints', () => {
  it('leaves numbers on points that do not meet', () => {
    const placed = placedPoints(
      [
        [40, 40],
        [90, 40],
      ],
      area,
    );
    expect(placed.map(({ disc }) => disc)).toEqual([
      [40, 40],
      [90, 40],
    ]);
  });

  it('keeps the numbers of eight points at one place apart and within the area', () => {
    const placed = placedPoints(
      Array.from({ length: 8 }, () => [150, 190] as const),
      area,
    );
    for (const [index, { disc, at }] of placed.entries()) {
      expect(at).toEqual([150, 190]);
      if (index > 0) expect(disc[1]).toBeLessThanOrEqual(191.5);
      for (const other of placed.slice(0, index)) {
        expect(Math.hypot(disc[0] - other.disc[0], disc[1] - other.disc[1])).toBeGreaterThan(17);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { freePlace } from './free-place.js';

const box = (x: number) => ({ x, y: 0, width: 50, height: 12 });
/** Falls through the place at 100, from above it to below it. */
const curve = [
  [80, -40],
  [170, 50],
] as const;

describe('freePlace', () => {
  it('takes the preferred place where nothing crosses it', () => {
    expect(freePlace([box(0), box(200)], { curves: [curve], texts: [] })).toEqual(box(0));
  });

  it('takes the next one that is free where a curve crosses the first, between its points too', () => {
    expect(freePlace([box(100), box(200), box(0)], { curves: [curve], texts: [] })).toEqual(
      box(200),
    );
  });

  it('crosses a curve rather than another text', () => {
    const texts = [{ x: 210, y: 6, width: 5, height: 5 }];
    expect(freePlace([box(200), box(100)], { curves: [curve], texts })).toEqual(box(100));
  });

  it('takes the least covered where none is free', () => {
    const flat = [
      [190, 5],
      [260, 5],
    ] as const;
    expect(freePlace([box(200), box(100)], { curves: [curve, flat], texts: [] })).toEqual(box(100));
  });
});

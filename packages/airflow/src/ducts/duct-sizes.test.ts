import { describe, expect, it } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { flatOvalDuctSize } from './flat-oval-duct-size.js';
import { rectangularDuctSize } from './rectangular-duct-size.js';
import { roundDuctSize } from './round-duct-size.js';
import { nextStandardRoundSize, standardRoundSizes } from './standard-round-sizes.js';

describe('sizes of ducts', () => {
  it('a flat oval of equal axes is round', () => {
    const oval = flatOvalDuctSize({ majorAxisM: 0.2, minorAxisM: 0.2 });
    const round = roundDuctSize(0.2);
    expectNear(oval.areaM2, round.areaM2);
    expectNear(oval.hydraulicDiameterM, 0.2);
    expectNear(oval.equalFrictionDiameterM, 0.2, {
      relative: 0.02,
      because: 'the fit of the oval does not end exactly in the circle',
    });
  });

  it('a rectangle has four areas by its perimeter, and one equal friction whichever side is first', () => {
    const size = rectangularDuctSize({ widthM: 0.3, heightM: 0.1 });
    expectNear(size.hydraulicDiameterM, (4 * 0.03) / 0.8);
    expect(rectangularDuctSize({ widthM: 0.1, heightM: 0.3 })).toEqual(size);
  });

  it('refuses what is no duct', () => {
    expect(() => roundDuctSize(0)).toThrow('diameterM');
    expect(() => rectangularDuctSize({ widthM: 0.1, heightM: -1 })).toThrow('heightM');
    expect(() => flatOvalDuctSize({ majorAxisM: 0.1, minorAxisM: 0.2 })).toThrow('majorAxisM');
  });
});

describe('standard round sizes', () => {
  it('the next size is the least that is no narrower', () => {
    expectNear(nextStandardRoundSize(0.16)!, 7 * 0.0254);
    expectNear(nextStandardRoundSize(6 * 0.0254 + 1e-13)!, 6 * 0.0254);
    expect(nextStandardRoundSize(1)).toBeUndefined();
    expect([...standardRoundSizes].sort((a, b) => a - b)).toEqual(standardRoundSizes);
  });
});

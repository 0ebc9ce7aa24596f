import { describe, expect, it } from 'vitest';
import { judgingAssumptions, leastNearBandPa, nearBand } from './near-band.js';
import { RulesArgumentError } from './rules-argument-error.js';

describe('the near band', () => {
  const quantity = 'zone minus outdoors';

  it('is 1 Pa where nothing is wider, and the assumption says whose choice that is', () => {
    expect(nearBand({ quantity, enclosureRadiusPa: 1e-9 })).toBe(1);
    expect(nearBand({ quantity, enclosureRadiusPa: null, statedUncertaintyPa: 0 })).toBe(1);
    expect(judgingAssumptions).toHaveLength(1);
    expect(judgingAssumptions[0]?.source.status).toBe('our choice');
    expect(judgingAssumptions[0]?.value).toEqual({ si: leastNearBandPa, dimension: 'pressure' });
  });

  it('is the widest of bound and stated uncertainty', () => {
    expect(nearBand({ quantity, enclosureRadiusPa: 1.5, statedUncertaintyPa: 1.25 })).toBe(1.5);
    expect(nearBand({ quantity, enclosureRadiusPa: 1.5, statedUncertaintyPa: 2 })).toBe(2);
  });

  it('counts the bound twice for a change from baseline, the difference of two solves', () => {
    expect(nearBand({ quantity: 'change from baseline', enclosureRadiusPa: 1.5 })).toBe(3);
  });

  it.each([-1, NaN, Infinity])('refuses a stated uncertainty of %s', (statedUncertaintyPa) => {
    const attempt = () => nearBand({ quantity, enclosureRadiusPa: 0, statedUncertaintyPa });
    expect(attempt).toThrow(RulesArgumentError);
    expect(attempt).toThrow(expect.objectContaining({ code: 'rules.argument' }));
  });
});

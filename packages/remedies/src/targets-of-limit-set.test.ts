import { defaultLimitSet } from '@evendraft/rules';
import { describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';
import { targetsOfLimitSet } from './targets-of-limit-set.js';

describe('targets of a limit set', () => {
  it('are the limits of the appliances, less the reserve, and never above zero', () => {
    const house = inventedRow();
    const [plain] = targetsOfLimitSet(house, defaultLimitSet).targets;
    expect(plain).toMatchObject({
      quantity: 'change from baseline',
      limitPa: -2,
      side: 'not below',
      zone: house.appliances[0]!.zone,
    });
    expect(targetsOfLimitSet(house, defaultLimitSet, 0.5).targets[0]!.limitPa).toBe(-1.5);
    expect(targetsOfLimitSet(house, defaultLimitSet, 5).targets[0]!.limitPa).toBe(-0.01);
  });
});

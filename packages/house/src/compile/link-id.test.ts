import fc from 'fast-check';
import { expect, test } from 'vitest';
import { linkId } from './link-id.js';

const step = fc.string({ unit: fc.constantFrom('a', '/', '~', '0', '1', ' ', '@'), maxLength: 4 });

test('different lists of steps never share an id, whatever stands in them', () => {
  fc.assert(
    fc.property(
      fc.array(step, { minLength: 1 }),
      fc.array(step, { minLength: 1 }),
      (one, other) => {
        const same = JSON.stringify(one) === JSON.stringify(other);
        expect(linkId(...one) === linkId(...other)).toBe(same);
      },
    ),
    { seed: 1125, numRuns: 2000 },
  );
});

test('a speed named like the end of another id does not collide', () => {
  expect(linkId('device', 'hood at low', 'off')).not.toBe(linkId('device', 'hood', 'at low off'));
  expect(linkId('device', 'hood', 'high')).toBe('device/hood/high');
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { windIncidence } from './wind-incidence.js';

const seed = 1104;
const anyDeg = fc.double({ min: -720, max: 720, noNaN: true });

test.each([
  [0, 0, 0],
  [350, 20, 30],
  [20, 350, 30],
  [270, 90, 180],
  [-90, 180, 90],
  [725, 0, 5],
])(
  'wind from %s° on a face that looks to %s° meets it at %s°',
  (windFromDeg, faceAzimuthDeg, expected) => {
    expect(windIncidence({ windFromDeg, faceAzimuthDeg })).toBe(expected);
  },
);

test('opposite faces of a house share the half circle', () => {
  fc.assert(
    fc.property(anyDeg, anyDeg, (windFromDeg, faceAzimuthDeg) => {
      const front = windIncidence({ windFromDeg, faceAzimuthDeg });
      const back = windIncidence({ windFromDeg, faceAzimuthDeg: faceAzimuthDeg + 180 });
      expect(front).toBeGreaterThanOrEqual(0);
      expect(front).toBeLessThanOrEqual(180);
      expectNear(front + back, 180, { absolute: 1e-9 });
    }),
    { seed },
  );
});

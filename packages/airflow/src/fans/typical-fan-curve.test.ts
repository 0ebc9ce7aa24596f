import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { typicalFanCurve, type RatedFan } from './typical-fan-curve.js';
import { flowAt } from '../laws/flow-laws.js';
import type { FanPoint } from './fan-point.js';

const seed = 1107;
const hood: RatedFan = { ratedFlowM3PerS: 0.3, ratingPressurePa: 62.5, shutOffPressurePa: 224 };

/** Flow of the closed form Q = Q_r sqrt(1 − s/P_so) with the sign of what is under the root. */
const closedForm = (freeFlow: number, shutOff: number, rise: number) =>
  freeFlow * Math.sqrt(1 - rise / shutOff);

/** Flow of the fan law through the points, at a rise between them. */
const interpolate = (points: readonly FanPoint[], rise: number) =>
  flowAt({ kind: 'fanCurve', points, beyondShutOff: 'blocked' }, -rise).massFlowKgPerS / 1.2041;

test('a hood moves its rated flow without suction and nothing at its shut-off', () => {
  const points = typicalFanCurve(hood);
  expect(points[0]).toEqual({ pressureRisePa: 224, volumeFlowM3PerS: 0 });
  const free = points.find((point) => point.pressureRisePa === 0);
  expectNear(free?.volumeFlowM3PerS ?? Number.NaN, 0.3);
  expectNear(points.at(-1)?.volumeFlowM3PerS ?? Number.NaN, 1.25 * 0.3);
});

test('between the points the monotone cubic keeps to the closed form', () => {
  const points = typicalFanCurve(hood);
  for (let share = 0.0005; share < 1.25; share += 0.0007) {
    const rise = 224 * (1 - share * share);
    const expected = closedForm(0.3, 224, rise);
    const because = 'promised by the docstring';
    expectNear(interpolate(points, rise), expected, { absolute: 0.005 * 0.3, because });
    if (share > 0.01) expectNear(interpolate(points, rise), expected, { relative: 0.005, because });
  }
});

test('half the flow at a lower speed comes with a quarter of the shut-off pressure', () => {
  const low = typicalFanCurve({ ...hood, speedFlowM3PerS: 0.15 });
  expectNear(low[0]?.pressureRisePa ?? Number.NaN, 56);
  const free = low.find((point) => point.pressureRisePa === 0);
  expectNear(free?.volumeFlowM3PerS ?? Number.NaN, 0.15);
});

test('without its duct the fan has its rated flow at the rating pressure', () => {
  for (const point of typicalFanCurve({ ...hood, ductPressurePa: 0 })) {
    const expected = 0.3 * Math.sqrt((224 - point.pressureRisePa) / (224 - 62.5));
    expectNear(point.volumeFlowM3PerS, expected, { absolute: 1e-12 });
  }
});

test('every typical curve falls strictly and lies on fan less duct', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.005, max: 1, noNaN: true }),
      fc.double({ min: 20, max: 1000, noNaN: true }),
      fc.double({ min: 0, max: 0.95, noNaN: true }),
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 200, noNaN: true }),
      (ratedFlowM3PerS, shutOffPressurePa, ratingShare, speed, ductPressurePa) => {
        const ratingPressurePa = ratingShare * shutOffPressurePa;
        const points = typicalFanCurve({
          ratedFlowM3PerS,
          shutOffPressurePa,
          ratingPressurePa,
          speedFlowM3PerS: speed * ratedFlowM3PerS,
          ductPressurePa,
        });
        for (const [index, { pressureRisePa, volumeFlowM3PerS }] of points.entries()) {
          const load = (volumeFlowM3PerS / ratedFlowM3PerS) ** 2;
          const fan =
            speed ** 2 * shutOffPressurePa - (shutOffPressurePa - ratingPressurePa) * load;
          expectNear(pressureRisePa, fan - ductPressurePa * load, {
            absolute: 1e-9 * shutOffPressurePa,
            because: 'a difference of pressures up to the shut-off pressure, rounded',
          });
          const before = points[index - 1];
          if (before === undefined) continue;
          expect(pressureRisePa).toBeLessThan(before.pressureRisePa);
          expect(volumeFlowM3PerS).toBeGreaterThan(before.volumeFlowM3PerS);
        }
      },
    ),
    { seed },
  );
});

test.each([
  [{ ratingPressurePa: 224 }, 'ratingPressurePa'],
  [{ ratedFlowM3PerS: 0 }, 'ratedFlowM3PerS'],
  [{ speedFlowM3PerS: 0.4 }, 'speedFlowM3PerS'],
  [{ speedFlowM3PerS: 0 }, 'speedFlowM3PerS'],
  [{ shutOffPressurePa: Number.NaN }, 'shutOffPressurePa'],
  [{ ductPressurePa: -1 }, 'ductPressurePa'],
])('a fan that cannot be is refused: %o', (part, argument) => {
  expect(() => typicalFanCurve({ ...hood, ...part })).toThrow(
    expect.objectContaining({ argument }),
  );
});

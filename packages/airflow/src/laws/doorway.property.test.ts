import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { doorway } from './doorway.js';
import type { DoorwayDescription } from './flow-law-description.js';
import { flowAt } from './flow-laws.js';
import type { AirState } from './inlet-air.js';
import { inletAir } from './inlet-air.js';

const seed = 1121;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const doors = fc.record({
  kind: fc.constant('doorway' as const),
  widthM: between(0.3, 3),
  heightM: between(0.1, 4),
  dischargeCoefficient: between(0.3, 0.9),
});
/** Densities from equal to the last digit to those of a cold day, either way round. */
const airs = fc
  .tuple(between(0.9, 1.4), between(-16, -0.5), fc.boolean())
  .map(([density, decade, lighter]): { readonly from: AirState; readonly to: AirState } => {
    const other = density * (1 + (lighter ? -1 : 1) * 10 ** decade);
    return {
      from: { temperatureC: 20, densityKgPerM3: density },
      to: { temperatureC: 20, densityKgPerM3: other },
    };
  });
const differencesPa = fc
  .tuple(between(-9, 2), fc.boolean())
  .map(([decade, negative]) => (negative ? -1 : 1) * 10 ** decade);

test('both streams are the orifice law summed over the height', () => {
  fc.assert(
    fc.property(doors, airs, differencesPa, (door, air, x) => {
      const fall = (air.from.densityKgPerM3 - air.to.densityKgPerM3) * 9.80665 * door.heightM;
      // Near zero the law is a cubic, of which the sum over the bare root knows nothing.
      fc.pre(Math.abs(fall) > 1e-4 || Math.min(Math.abs(x), Math.abs(x - fall)) > 1e-5);
      const { forwardKgPerS, backwardKgPerS } = streams(door, x, air);
      const size = Math.max(forwardKgPerS, backwardKgPerS);
      const because = 'the midpoint sum errs at the kink of the root where dp is zero';
      const near = { absolute: 1e-4 * size, because };
      expectNear(forwardKgPerS, summed(door, x, { fall, density: air.from.densityKgPerM3 }), near);
      const turned = { fall: -fall, density: air.to.densityKgPerM3 };
      expectNear(backwardKgPerS, summed(door, -x, turned), near);
    }),
    { seed, numRuns: 300 },
  );
});

test('the net flow is the difference of the streams, and none is negative', () => {
  fc.assert(
    fc.property(doors, airs, differencesPa, (door, air, x) => {
      const { forwardKgPerS, backwardKgPerS } = streams(door, x, air);
      expect(forwardKgPerS).toBeGreaterThanOrEqual(0);
      expect(backwardKgPerS).toBeGreaterThanOrEqual(0);
      const net = flowAt(door, x, air).massFlowKgPerS;
      const size = forwardKgPerS + backwardKgPerS;
      expectNear(net, forwardKgPerS - backwardKgPerS, { absolute: 1e-15 * size });
    }),
    { seed, numRuns: 1000 },
  );
});

test('the net flow grows strictly with the pressure difference and its slope is the difference quotient', () => {
  fc.assert(
    fc.property(doors, airs, differencesPa, (door, air, x) => {
      const step = 1e-5 * Math.max(Math.abs(x), 1e-6);
      const [low, here, high] = [x - step, x, x + step].map((at) => flowAt(door, at, air));
      expect(high!.massFlowKgPerS).toBeGreaterThan(low!.massFlowKgPerS);
      expect(here!.slopeKgPerSPa).toBeGreaterThan(0);
      expect(here!.slopeKgPerSPa).toBeLessThan(Infinity);
      const { forwardKgPerS, backwardKgPerS } = streams(door, x, air);
      const quotient = (high!.massFlowKgPerS - low!.massFlowKgPerS) / (2 * step);
      const rounding = (1e-15 * (forwardKgPerS + backwardKgPerS)) / step;
      expectNear(quotient, here!.slopeKgPerSPa, {
        absolute: 0.01 * here!.slopeKgPerSPa + rounding,
        because: 'where a stream ends its slope goes with the root of the distance',
      });
    }),
    { seed, numRuns: 1000 },
  );
});

test('the slope does not jump where a stream ends', () => {
  fc.assert(
    fc.property(doors, airs, (door, air) => {
      const fall = (air.from.densityKgPerM3 - air.to.densityKgPerM3) * 9.80665 * door.heightM;
      fc.pre(Math.abs(fall) > 1e-4);
      for (const end of [0, fall]) {
        const step = 1e-12 * Math.abs(fall);
        const [before, after] = [end - step, end + step].map((x) => flowAt(door, x, air));
        expectNear(after!.slopeKgPerSPa, before!.slopeKgPerSPa, {
          relative: 1e-5,
          because: 'the slope of the stream that ends goes with the root of the distance, 1e-6',
        });
      }
    }),
    { seed },
  );
});

test('densities that become equal come to the flow at equal densities', () => {
  fc.assert(
    fc.property(doors, differencesPa, between(-15, -7), (door, x, decade) => {
      const one = { temperatureC: 20, densityKgPerM3: 1.2 };
      const other = { temperatureC: 20, densityKgPerM3: 1.2 * (1 + 10 ** decade) };
      const equal = flowAt(door, x, { from: one, to: one });
      const almost = flowAt(door, x, { from: one, to: other });
      // The flow moves at most as if the whole fall were added to the pressure difference.
      const moved = 1.2 * 10 ** decade * 9.80665 * door.heightM * 2 * equal.slopeKgPerSPa;
      const because = 'densities still differ';
      const absolute = 2 * moved + 10 ** decade * Math.abs(equal.massFlowKgPerS);
      expectNear(almost.massFlowKgPerS, equal.massFlowKgPerS, {
        absolute: absolute + 1e-14 * Math.abs(equal.massFlowKgPerS),
        because,
      });
    }),
    { seed, numRuns: 500 },
  );
});

test('half a door carries half the streams', () => {
  fc.assert(
    fc.property(doors, airs, differencesPa, (door, air, x) => {
      const whole = streams(door, x, air);
      const half = streams({ ...door, widthM: door.widthM / 2 }, x, air);
      expectNear(half.forwardKgPerS, whole.forwardKgPerS / 2);
      expectNear(half.backwardKgPerS, whole.backwardKgPerS / 2);
    }),
    { seed },
  );
});

function streams(
  door: DoorwayDescription,
  x: number,
  air: { readonly from: AirState; readonly to: AirState },
) {
  return doorway.streams!(door, x, { from: inletAir(air.from), to: inletAir(air.to) });
}

/** The orifice law at 4000 heights, where the difference presses the way of the stream. */
function summed(
  door: DoorwayDescription,
  sillPa: number,
  { fall, density }: { readonly fall: number; readonly density: number },
): number {
  const slices = 4000;
  let sum = 0;
  for (let k = 0; k < slices; k++) {
    const dp = sillPa - (fall * (k + 0.5)) / slices;
    if (dp > 0) sum += Math.sqrt(2 * density * dp);
  }
  return (door.dischargeCoefficient * door.widthM * door.heightM * sum) / slices;
}

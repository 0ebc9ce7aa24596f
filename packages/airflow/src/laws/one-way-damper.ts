import type { OneWayDamperDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import { inletCoefficient } from './internal/inlet-coefficient.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { power } from './internal/power.js';
import { powerProblems, rangeProblems } from './internal/range-problem.js';

const recordLength = 8;

/**
 * A flap that opens from → to above its cracking pressure, over a leak that works both ways [kg/s].
 * m = C max(0, dP − crack)^n + leak; within 1e-6 Pa above cracking a cubic of equal value and slope.
 */
export const oneWayDamper: FlowLaw<OneWayDamperDescription> = {
  kind: 'oneWayDamper',
  equation: 'm = C max(0, dP - crack)^n + sgn(dP) Cleak |dP|^nleak',
  validity:
    'slope zero below the cracking pressure unless a closed leakage is given; weight and inertia of the flap enter only as the cracking pressure',
  check: (description) => [
    ...powerProblems(description),
    ...rangeProblems({
      field: 'crackingPressurePa',
      value: description.crackingPressurePa,
      least: 0,
      most: 1e5,
      unit: 'Pa',
    }),
    ...(description.closedLeakage === undefined
      ? []
      : powerProblems(description.closedLeakage, 'closedLeakage.')),
  ],
  recordLength: () => recordLength,
  recordClass: () => 0,
  prepare(description, { from, to, scale, records, at }) {
    const leak = description.closedLeakage;
    records[at] = scale * inletCoefficient(description, from);
    records[at + 1] = description.exponent;
    records[at + 2] = nearZeroWidthPa ** description.exponent;
    records[at + 3] = description.crackingPressurePa;
    records[at + 4] = leak === undefined ? 0 : scale * inletCoefficient(leak, from);
    records[at + 5] = leak === undefined ? 0 : scale * inletCoefficient(leak, to);
    records[at + 6] = leak === undefined ? 1 : leak.exponent;
    records[at + 7] = nearZeroWidthPa ** records[at + 6]!;
  },
  block(group: LawGroup, state: LinkState): void {
    const { records, begin, end } = group;
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const x = pressureDifferencePa[link]!;
      let flow = 0;
      let slope = 0;

      const opening = x - records[at + 3]!;
      if (opening > 0) {
        const n = records[at + 1]!;
        if (opening > nearZeroWidthPa) {
          flow = records[at]! * power(opening, n);
          slope = (n * flow) / opening;
        } else {
          const s = opening / nearZeroWidthPa;
          const flowAtWidth = records[at]! * records[at + 2]!;
          flow = flowAtWidth * s * s * (3 - n + (n - 2) * s);
          slope = (flowAtWidth / nearZeroWidthPa) * s * (2 * (3 - n) + 3 * (n - 2) * s);
        }
      }

      const leak = x > 0 ? records[at + 4]! : records[at + 5]!;
      if (leak > 0) {
        const n = records[at + 6]!;
        const size = Math.abs(x);
        if (size > nearZeroWidthPa) {
          const leakFlow = leak * power(size, n);
          flow += x > 0 ? leakFlow : -leakFlow;
          slope += (n * leakFlow) / size;
        } else {
          const s = x / nearZeroWidthPa;
          const flowAtWidth = 0.5 * leak * records[at + 7]!;
          flow += flowAtWidth * s * (3 - n + (n - 1) * s * s);
          slope += (flowAtWidth / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
        }
      }
      massFlowKgPerS[link] = flow;
      slopeKgPerSPa[link] = slope;
    }
  },
  reach(description) {
    const leaks = description.closedLeakage !== undefined;
    return { leastKgPerS: leaks ? -Infinity : 0, mostKgPerS: Infinity, strict: leaks };
  },
};

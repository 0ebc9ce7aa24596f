import type { OneWayDamperDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import { addClosedLeak, closedLeakLength, prepareClosedLeak } from './internal/closed-leak.js';
import { inletCoefficient } from './internal/inlet-coefficient.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { power } from './internal/power.js';
import { powerProblems, rangeProblems } from './internal/range-problem.js';

const recordLength = 4 + closedLeakLength;

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
  prepare(description, preparation) {
    const { from, scale, records, at } = preparation;
    records[at] = scale * inletCoefficient(description, from);
    records[at + 1] = description.exponent;
    records[at + 2] = nearZeroWidthPa ** description.exponent;
    records[at + 3] = description.crackingPressurePa;
    prepareClosedLeak(description.closedLeakage, preparation, 4);
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

      massFlowKgPerS[link] = flow;
      slopeKgPerSPa[link] = slope;
      addClosedLeak(records, at + 4, state, link);
    }
  },
  reach(description) {
    const leaks = description.closedLeakage !== undefined;
    return { leastKgPerS: leaks ? -Infinity : 0, mostKgPerS: Infinity, strict: leaks };
  },
};

import type { GravityDamperDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import { addClosedLeak, closedLeakLength, prepareClosedLeak } from './internal/closed-leak.js';
import { powerProblems, rangeProblems } from './internal/range-problem.js';

const recordLength = 3 + closedLeakLength;

/** Least span between cracking and fully open: below it the blade is a switch, and its slope endless [Pa]. */
const leastSpanPa = 0.01;

/**
 * A blade that its weight holds shut and that opens from → to, over a leak that works both ways [kg/s].
 * m = o(dP) A sqrt(2 rho dP/K) + leak; o = s^2 (3 − 2 s) with s from 0 at cracking to 1 at fully open.
 * The growth of the opening in between is our choice: smooth, symmetric, without a parameter of its own.
 */
export const gravityDamper: FlowLaw<GravityDamperDescription> = {
  kind: 'gravityDamper',
  equation: 'm = o(dP) A sqrt(2 rho dP/K) + sgn(dP) Cleak |dP|^nleak',
  validity:
    'o from 0 at cracking to 1 at fully open, smooth; slope zero below cracking unless a closed leakage is given; the blade stands still, it does not flutter',
  check(description) {
    const { crackingPressurePa, closedLeakage } = description;
    const problems = [
      ...rangeProblems({
        field: 'areaM2',
        value: description.areaM2,
        least: 1e-8,
        most: 1e4,
        unit: 'm2',
      }),
      ...rangeProblems({
        field: 'openLossCoefficient',
        value: description.openLossCoefficient,
        least: 0.01,
        most: 1e6,
        unit: '(-)',
      }),
      ...rangeProblems({
        field: 'crackingPressurePa',
        value: crackingPressurePa,
        least: 0,
        most: 1e5,
        unit: 'Pa',
      }),
      ...(closedLeakage === undefined ? [] : powerProblems(closedLeakage, 'closedLeakage.')),
    ];
    if (problems.length > 0) return problems;
    return rangeProblems({
      field: 'fullyOpenPressurePa',
      value: description.fullyOpenPressurePa,
      least: crackingPressurePa + leastSpanPa,
      most: 2e5,
      unit: 'Pa',
    });
  },
  recordLength: () => recordLength,
  prepare(description, preparation) {
    const { from, scale, records, at } = preparation;
    const { areaM2, openLossCoefficient, crackingPressurePa } = description;
    records[at] = scale * areaM2 * Math.sqrt((2 * from.densityKgPerM3) / openLossCoefficient);
    records[at + 1] = crackingPressurePa;
    records[at + 2] = 1 / (description.fullyOpenPressurePa - crackingPressurePa);
    prepareClosedLeak(description.closedLeakage, preparation, 3);
  },
  block({ records, begin, end }: LawGroup, state: LinkState): void {
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const x = pressureDifferencePa[link]!;
      const above = x - records[at + 1]!;
      let flow = 0;
      let slope = 0;
      if (above > 0) {
        const perPa = records[at + 2]!;
        const s = Math.min(1, above * perPa);
        const opening = s * s * (3 - 2 * s);
        const root = records[at]! * Math.sqrt(x);
        flow = opening * root;
        slope = 6 * s * (1 - s) * perPa * root + flow / (2 * x);
      }
      massFlowKgPerS[link] = flow;
      slopeKgPerSPa[link] = slope;
      addClosedLeak(records, at + 3, state, link);
    }
  },
  reach({ closedLeakage }) {
    const leaks = closedLeakage !== undefined;
    return { leastKgPerS: leaks ? -Infinity : 0, mostKgPerS: Infinity, strict: leaks };
  },
};

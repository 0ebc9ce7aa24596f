import { referenceAir } from '../air/reference-air.js';
import type { QuadraticDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import type { InletAir } from './inlet-air.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { rangeProblems } from './internal/range-problem.js';

/** Numbers a direction: a and b in mass flow, flow at the width, local exponent there. */
const direction = 4;

/**
 * A duct or crack with a laminar and a turbulent part [kg/s].
 * dP = a Q + b Q|Q| at reference air, so m = 2 dP / (a' + sqrt(a'^2 + 4 b' dP)) with a' = a mu/(mu0 rho),
 * b' = b/(rho0 rho) of the air that enters.
 * Source: Etheridge and Sandberg, Building Ventilation, 1996, chapter 3, from memory.
 */
export const quadratic: FlowLaw<QuadraticDescription> = {
  kind: 'quadratic',
  equation: 'dP = a Q + b Q|Q|',
  validity:
    'a proportional to viscosity, b to density; cubic within 1e-6 Pa of zero; where the airs at its ends differ the slope jumps at zero',
  check(description) {
    const most = 1e15;
    const problems = [
      ...rangeProblems({
        field: 'linearPaSPerM3',
        value: description.linearPaSPerM3,
        least: 0,
        most,
        unit: 'Pa s/m3',
      }),
      ...rangeProblems({
        field: 'quadraticPaS2PerM6',
        value: description.quadraticPaS2PerM6,
        least: 0,
        most,
        unit: 'Pa s2/m6',
      }),
    ];
    if (problems.length > 0) return problems;
    const sum = description.linearPaSPerM3 + description.quadraticPaS2PerM6;
    return rangeProblems({
      field: 'linearPaSPerM3 + quadraticPaS2PerM6',
      value: sum,
      least: 1e-9,
      most: 2 * most,
      unit: 'in SI',
    });
  },
  recordLength: () => 2 * direction,
  prepare(description, { from, to, scale, records, at }) {
    prepareDirection(description, from, scale, records, at);
    prepareDirection(description, to, scale, records, at + direction);
  },
  block(group: LawGroup, state: LinkState): void {
    const { records, begin, end } = group;
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, first = 0; link < end; link++, first += 2 * direction) {
      const x = pressureDifferencePa[link]!;
      const size = Math.abs(x);
      const at = x > 0 ? first : first + direction;
      if (size > nearZeroWidthPa) {
        const a = records[at]!;
        const root = Math.sqrt(a * a + 4 * records[at + 1]! * size);
        massFlowKgPerS[link] = (2 * x) / (a + root);
        slopeKgPerSPa[link] = 1 / root;
      } else {
        const s = x / nearZeroWidthPa;
        const flowAtWidth = 0.5 * records[at + 2]!;
        const n = records[at + 3]!;
        massFlowKgPerS[link] = flowAtWidth * s * (3 - n + (n - 1) * s * s);
        slopeKgPerSPa[link] = (flowAtWidth / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
      }
    }
  },
  inverseBlock({ records, begin, end }: LawGroup, state: LinkState): void {
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, first = 0; link < end; link++, first += 2 * direction) {
      const flow = massFlowKgPerS[link]!;
      const at = flow > 0 ? first : first + direction;
      const size = Math.abs(flow);
      const resistance = records[at]! + records[at + 1]! * size;
      if (size > records[at + 2]!) {
        pressureDifferencePa[link] = flow * resistance;
        slopeKgPerSPa[link] = 1 / (resistance + records[at + 1]! * size);
      } else {
        slopeKgPerSPa[link] = records[at + 2]! / nearZeroWidthPa;
        pressureDifferencePa[link] = flow / slopeKgPerSPa[link]!;
      }
    }
  },
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

// eslint-disable-next-line max-params -- called for both directions of every link without allocating
function prepareDirection(
  description: QuadraticDescription,
  air: InletAir,
  scale: number,
  records: Float64Array,
  at: number,
): void {
  const density = air.densityKgPerM3;
  const a = (description.linearPaSPerM3 * Math.exp(air.logViscosityRatio)) / (density * scale);
  const b =
    description.quadraticPaS2PerM6 / (referenceAir.densityKgPerM3 * density * scale * scale);
  const root = Math.sqrt(a * a + 4 * b * nearZeroWidthPa);
  const flowAtWidth = (2 * nearZeroWidthPa) / (a + root);
  records[at] = a;
  records[at + 1] = b;
  records[at + 2] = flowAtWidth;
  records[at + 3] = nearZeroWidthPa / (root * flowAtWidth);
}

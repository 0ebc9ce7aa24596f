import { gravity } from '../air/gravity.js';
import type { DoorwayDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LawStreams, LinkState } from './flow-law.js';
import { rootMean } from './internal/root-mean.js';
import { rangeProblems } from './internal/range-problem.js';
import { nearZeroWidthPa } from './near-zero-width.js';

/** Numbers in a record: both coefficients, the fall of the difference from sill to head, the width near zero. */
const recordLength = 4;

/**
 * A tall opening through which air can flow both ways at once [kg/s].
 *
 * The orifice law over the height: dp(z) = x − (rho_from − rho_to) g z with x at the sill. A stream of density
 * rho carries Cd W H sqrt(2 rho) times the mean of sqrt(max(0, ±dp)) over the height, in closed form without a
 * division by the difference of densities, so that equal densities give the orifice of the whole area. Both
 * streams grow with x and are smooth where one of them ends.
 * Source: derived, the integral of the orifice law; Brown and Solvason, Int. J. Heat Mass Transfer 5 (1962)
 * 859-868, give its case without net flow (from memory).
 */
export const doorway: FlowLaw<DoorwayDescription> = {
  kind: 'doorway',
  equation: 'dm/dz = Cd W sgn(dp) sqrt(2 rho |dp|), dp = x - (rho1 - rho2) g z',
  validity:
    'still air on both sides, each of one density over the height of the opening; x is the difference at the sill; near zero, where it falls less than 1e-6 Pa over the height, a cubic as for an orifice; the slope jumps at zero only where it falls by nothing',
  check: (description) => [
    ...rangeProblems({
      field: 'widthM',
      value: description.widthM,
      least: 1e-4,
      most: 100,
      unit: 'm',
    }),
    ...rangeProblems({
      field: 'heightM',
      value: description.heightM,
      least: 1e-4,
      most: 100,
      unit: 'm',
    }),
    ...rangeProblems({
      field: 'dischargeCoefficient',
      value: description.dischargeCoefficient,
      least: 0.01,
      most: 2,
      unit: '(-)',
    }),
  ],
  recordLength: () => recordLength,
  prepare(description, { from, to, scale, records, at }) {
    const { widthM, heightM, dischargeCoefficient } = description;
    const area = scale * dischargeCoefficient * widthM * heightM;
    const fallPa = (from.densityKgPerM3 - to.densityKgPerM3) * gravity * heightM;
    records[at] = area * Math.sqrt(2 * from.densityKgPerM3);
    records[at + 1] = area * Math.sqrt(2 * to.densityKgPerM3);
    records[at + 2] = fallPa;
    // Where the difference falls enough over the height, the slope is finite without help.
    records[at + 3] = Math.max(0, nearZeroWidthPa - Math.abs(fallPa));
  },
  block({ records, begin, end }: LawGroup, state: LinkState): void {
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const sillPa = pressureDifferencePa[link]!;
      const headPa = sillPa - records[at + 2]!;
      const low = Math.min(sillPa, headPa);
      const high = Math.max(sillPa, headPa);
      const widthPa = records[at + 3]!;
      let flow = 0;
      let slope = 0;
      if (high > 0) {
        rootMean(low, high, widthPa, mean);
        flow = records[at]! * mean.value;
        slope = records[at]! * mean.slope;
      }
      if (low < 0) {
        rootMean(-high, -low, widthPa, mean);
        flow -= records[at + 1]! * mean.value;
        slope += records[at + 1]! * mean.slope;
      }
      // Equal densities and no difference: both streams end here, with one slope each.
      if (high === 0 && low === 0) {
        slope = (1.25 * Math.max(records[at]!, records[at + 1]!)) / Math.sqrt(widthPa);
      }
      massFlowKgPerS[link] = flow;
      slopeKgPerSPa[link] = slope;
    }
  },
  streams(description, sillPa, air): LawStreams {
    doorway.prepare(description, { ...air, scale: 1, records: record, at: 0 });
    const headPa = sillPa - record[2]!;
    const low = Math.min(sillPa, headPa);
    const high = Math.max(sillPa, headPa);
    const widthPa = record[3]!;
    const stream = (coefficient: number, from: number, to: number): number =>
      to > 0 ? coefficient * rootMean(from, to, widthPa, mean).value : 0;
    return {
      forwardKgPerS: stream(record[0]!, low, high),
      backwardKgPerS: stream(record[1]!, -high, -low),
    };
  },
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

const record = new Float64Array(recordLength);
const mean = { value: 0, slope: 0 };

import type { OrificeDescription } from './flow-law-description.js';
import type { FlowLaw } from './flow-law.js';
import { rangeProblems } from './internal/range-problem.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { powerLawBlock, powerLawInverseBlock, powerRecordLength } from './power-law.js';

/**
 * A sharp-edged opening [kg/s].
 * m = Cd A sqrt(2 rho dP) with the density of the air that enters: a power law of exponent 0.5, so it
 * shares the power law's block.
 * Source: ASHRAE Handbook Fundamentals, chapter 16, from memory.
 */
export const orifice: FlowLaw<OrificeDescription> = {
  kind: 'orifice',
  equation: 'm = Cd A sqrt(2 rho dP)',
  validity:
    'turbulent flow through a sharp edge; cubic within 1e-6 Pa of zero; where the airs at its ends differ the slope jumps at zero',
  check: (description) => [
    ...rangeProblems({
      field: 'areaM2',
      value: description.areaM2,
      least: 1e-12,
      most: 1e4,
      unit: 'm2',
    }),
    ...rangeProblems({
      field: 'dischargeCoefficient',
      value: description.dischargeCoefficient,
      least: 0.01,
      most: 2,
      unit: '(-)',
    }),
  ],
  recordLength: () => powerRecordLength,
  prepare(description, { from, to, scale, records, at }) {
    const area = scale * description.areaM2 * description.dischargeCoefficient;
    records[at] = area * Math.sqrt(2 * from.densityKgPerM3);
    records[at + 1] = area * Math.sqrt(2 * to.densityKgPerM3);
    records[at + 2] = 0.5;
    records[at + 3] = 1 / Math.sqrt(nearZeroWidthPa);
  },
  block: powerLawBlock,
  compiled: 'powerLaw',
  inverseBlock: powerLawInverseBlock,
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

import type { PowerLawDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import { inletCoefficient } from './internal/inlet-coefficient.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { highBits, powerFromHigh, roughPower } from './internal/power.js';
import { inversePowersAt, powersAt, powerTable } from './internal/power-table.js';
import { powerLawTallyBlock, powerLawTallyStartBlock } from './internal/power-tally.js';
import { powerProblems } from './internal/range-problem.js';

/** Numbers in a record: forward and backward coefficient, exponent, width^exponent. */
export const powerRecordLength = 4;

/**
 * A leak or crack between two airs [kg/s].
 * m = rho C (rho0/rho)^(1−n) (mu0/mu)^(2n−1) dP^n with the air that enters; odd cubic within 1e-6 Pa of zero.
 * Source: ASTM E779-19, section 9, from memory.
 */
export const powerLaw: FlowLaw<PowerLawDescription> = {
  kind: 'powerLaw',
  equation: 'm = rho C (rho0/rho)^(1-n) (mu0/mu)^(2n-1) dP^n',
  validity:
    'exponents 0.5 to 1; cubic within 1e-6 Pa of zero; where the airs at its ends differ the slope jumps at zero',
  check: (description) => powerProblems(description),
  recordLength: () => powerRecordLength,
  recordClass: (description) => description.exponent,
  prepare(description, { from, to, scale, records, at }) {
    const n = description.exponent;
    records[at] = scale * inletCoefficient(description, from);
    records[at + 1] = scale * inletCoefficient(description, to);
    records[at + 2] = n;
    records[at + 3] = nearZeroWidthPa ** n;
  },
  block: powerLawBlock,
  inverseBlock: powerLawInverseBlock,
  tallyBlock: powerLawTallyBlock,
  tallyStartBlock: powerLawTallyStartBlock,
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

/** Flows and slopes of power laws; the class of a group is the exponent of all its links, or 0 for any. */
export function powerLawBlock(group: LawGroup, state: LinkState): void {
  if (group.recordClass === 0.5) squareRootBlock(group, state);
  else if (group.recordClass === 0) generalBlock(group, state);
  else tableBlock(group, state);
}

function generalBlock({ records, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    const size = Math.abs(x);
    // The sign bit picks the coefficient: a branch on the sign would be guessed wrong half the time.
    const high = highBits(x);
    const coefficient = records[at + (high >>> 31)]!;
    const n = records[at + 2]!;
    if (size > nearZeroWidthPa) {
      const chord = coefficient * powerFromHigh(size, high & 0x7fffffff, n - 1);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = chord * n;
    } else {
      const s = x / nearZeroWidthPa;
      const flowAtWidth = 0.5 * coefficient * records[at + 3]!;
      massFlowKgPerS[link] = flowAtWidth * s * (3 - n + (n - 1) * s * s);
      slopeKgPerSPa[link] = (flowAtWidth / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
    }
  }
}

/** The same law at n = 0.5, where a root is cheaper than a power. */
function squareRootBlock({ records, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    const size = Math.abs(x);
    const coefficient = records[at + (highBits(x) >>> 31)]!;
    if (size > nearZeroWidthPa) {
      const chord = coefficient / Math.sqrt(size);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = 0.5 * chord;
    } else {
      const s = x / nearZeroWidthPa;
      const flowAtWidth = 0.25 * coefficient * records[at + 3]!;
      massFlowKgPerS[link] = flowAtWidth * s * (5 - s * s);
      slopeKgPerSPa[link] = (flowAtWidth / nearZeroWidthPa) * (5 - 3 * s * s);
    }
  }
}

/** The same law where all links share an exponent, whose table then replaces most of the power. */
function tableBlock({ records, recordClass, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const n = recordClass;
  const { numbers, binomials } = powerTable(n - 1);
  const [b1, b2, b3, b4, b5, b6] = binomials;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    const size = Math.abs(x);
    const high = highBits(x);
    const coefficient = records[at + (high >>> 31)]!;
    if (size > nearZeroWidthPa) {
      const field = (high >> 20) & 2047;
      const centre = (high >>> 12) & 254;
      const r = size * numbers[inversePowersAt + field]! * numbers[centre]! - 1;
      const series = 1 + r * (b1 + r * (b2 + r * (b3 + r * (b4 + r * (b5 + r * b6)))));
      const chord = coefficient * (numbers[powersAt + field]! * numbers[centre + 1]! * series);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = chord * n;
    } else {
      const s = x / nearZeroWidthPa;
      const flowAtWidth = 0.5 * coefficient * records[at + 3]!;
      massFlowKgPerS[link] = flowAtWidth * s * (3 - n + (n - 1) * s * s);
      slopeKgPerSPa[link] = (flowAtWidth / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
    }
  }
}

/** Pressure differences and slopes of power laws from their flows. */
export function powerLawInverseBlock(
  { records, recordClass, begin, end }: LawGroup,
  state: LinkState,
): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const flow = massFlowKgPerS[link]!;
    const coefficient = flow > 0 ? records[at]! : records[at + 1]!;
    const n = records[at + 2]!;
    const ratio = Math.abs(flow) / coefficient;
    if (ratio > records[at + 3]!) {
      const size = recordClass === 0.5 ? ratio * ratio : roughPower(ratio, 1 / n);
      pressureDifferencePa[link] = flow > 0 ? size : -size;
      slopeKgPerSPa[link] = (n * Math.abs(flow)) / size;
    } else {
      const slope = (coefficient * records[at + 3]!) / nearZeroWidthPa;
      pressureDifferencePa[link] = flow / slope;
      slopeKgPerSPa[link] = slope;
    }
  }
}

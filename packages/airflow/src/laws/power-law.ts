import type { PowerLawDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import type { InletAir } from './inlet-air.js';
import { inletCoefficient } from './internal/inlet-coefficient.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { cubicChord, cubicSlope } from './internal/near-zero.js';
import { highBits, power, powerFromHigh } from './internal/power.js';
import { powerProblems } from './internal/range-problem.js';

/** Numbers in a record: forward and backward coefficient, exponent n, width^(n−1). */
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
  prepare(description, { from, to, scale, records, at }) {
    const n = description.exponent;
    const forward = scale * inletCoefficient(description, from);
    records[at] = forward;
    records[at + 1] = sameAir(from, to) ? forward : scale * inletCoefficient(description, to);
    records[at + 2] = n;
    records[at + 3] = power(nearZeroWidthPa, n - 1);
  },
  block: powerLawBlock,
  compiled: 'powerLaw',
  inverseBlock: powerLawInverseBlock,
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

function sameAir(one: InletAir, other: InletAir): boolean {
  return (
    one.densityKgPerM3 === other.densityKgPerM3 &&
    one.logDensityRatio === other.logDensityRatio &&
    one.logViscosityRatio === other.logViscosityRatio
  );
}

/** Flows and slopes of power laws; where n is 0.5 by a root, which is cheaper than a power. */
export function powerLawBlock({ records, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    // The sign bit picks the coefficient: a branch on the sign would be guessed wrong half the time.
    const high = highBits(x);
    const coefficient = records[at + (high >>> 31)]!;
    const n = records[at + 2]!;
    const size = Math.abs(x);
    if (size > nearZeroWidthPa) {
      const chord =
        n === 0.5 ? coefficient / Math.sqrt(size) : coefficient * powerFromHigh(size, high, n - 1);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = chord * n;
    } else {
      const atWidth = coefficient * records[at + 3]!;
      massFlowKgPerS[link] = atWidth * cubicChord(n, x / nearZeroWidthPa) * x;
      slopeKgPerSPa[link] = atWidth * cubicSlope(n, x / nearZeroWidthPa);
    }
  }
}

/** Greatest slope of the inverse's tangent over n C: near no flow the law is taken as a line. */
const steepest = 2 ** 10;

/** Pressure differences and slopes at mass flows: g = n C (|m|/C)^(1−1/n) and n m/g. */
export function powerLawInverseBlock({ records, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const flow = massFlowKgPerS[link]!;
    const coefficient = records[at + (highBits(flow) >>> 31)]!;
    const n = records[at + 2]!;
    const size = Math.max(Math.abs(flow) / coefficient, 1e-300);
    const chord = coefficient * Math.min(power(size, 1 - 1 / n), steepest);
    pressureDifferencePa[link] = flow / chord;
    slopeKgPerSPa[link] = n * chord;
  }
}

import type { PowerLawDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import type { InletAir } from './inlet-air.js';
import { inletCoefficient } from './internal/inlet-coefficient.js';
import { nearZeroWidthPa } from './near-zero-width.js';
import { cubicChord, cubicSlope } from './internal/near-zero.js';
import { highBits, power, powerFromHigh } from './internal/power.js';
import { powerTable, tabledPower } from './internal/power-table.js';
import { powerLawTallyBlock, powerLawTallyStartBlock } from './internal/power-tally.js';
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
  recordClass: (description) => description.exponent,
  prepare(description, { from, to, scale, records, at }) {
    const n = description.exponent;
    const forward = scale * inletCoefficient(description, from);
    records[at] = forward;
    records[at + 1] = sameAir(from, to) ? forward : scale * inletCoefficient(description, to);
    records[at + 2] = n;
    records[at + 3] = power(nearZeroWidthPa, n - 1);
  },
  block: powerLawBlock,
  tallyBlock: powerLawTallyBlock,
  tallyStartBlock: powerLawTallyStartBlock,
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
};

function sameAir(one: InletAir, other: InletAir): boolean {
  return (
    one.densityKgPerM3 === other.densityKgPerM3 &&
    one.logDensityRatio === other.logDensityRatio &&
    one.logViscosityRatio === other.logViscosityRatio
  );
}

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
    // The sign bit picks the coefficient: a branch on the sign would be guessed wrong half the time.
    const high = highBits(x);
    const coefficient = records[at + (high >>> 31)]!;
    const n = records[at + 2]!;
    if (Math.abs(x) > nearZeroWidthPa) {
      const chord = coefficient * powerFromHigh(Math.abs(x), high, n - 1);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = chord * n;
    } else {
      const atWidth = coefficient * records[at + 3]!;
      massFlowKgPerS[link] = atWidth * cubicChord(n, x / nearZeroWidthPa) * x;
      slopeKgPerSPa[link] = atWidth * cubicSlope(n, x / nearZeroWidthPa);
    }
  }
}

/** The same law at n = 0.5, where a root is cheaper than a power. */
function squareRootBlock({ records, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    const coefficient = records[at + (highBits(x) >>> 31)]!;
    if (Math.abs(x) > nearZeroWidthPa) {
      const chord = coefficient / Math.sqrt(Math.abs(x));
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = 0.5 * chord;
    } else {
      const atWidth = coefficient * records[at + 3]!;
      massFlowKgPerS[link] = atWidth * cubicChord(0.5, x / nearZeroWidthPa) * x;
      slopeKgPerSPa[link] = atWidth * cubicSlope(0.5, x / nearZeroWidthPa);
    }
  }
}

/** The same law where all links share an exponent, whose table then replaces most of the power. */
function tableBlock({ records, recordClass: n, begin, end }: LawGroup, state: LinkState): void {
  const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
  const table = powerTable(n - 1);
  for (let link = begin, at = 0; link < end; link++, at += powerRecordLength) {
    const x = pressureDifferencePa[link]!;
    const high = highBits(x);
    const coefficient = records[at + (high >>> 31)]!;
    if (Math.abs(x) > nearZeroWidthPa) {
      const chord = coefficient * tabledPower(table, Math.abs(x), high);
      massFlowKgPerS[link] = chord * x;
      slopeKgPerSPa[link] = chord * n;
    } else {
      const atWidth = coefficient * records[at + 3]!;
      massFlowKgPerS[link] = atWidth * cubicChord(n, x / nearZeroWidthPa) * x;
      slopeKgPerSPa[link] = atWidth * cubicSlope(n, x / nearZeroWidthPa);
    }
  }
}

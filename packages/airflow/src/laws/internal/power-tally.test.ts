import { describe, expect, it } from 'vitest';
import type { ZoneGroup, ZoneTally } from '../flow-law.js';
import { powerLaw } from '../power-law.js';
import { powerLawTallyBlock, powerLawTallyStartBlock } from './power-tally.js';

const zones = 3;
const count = 60;
const interior = 35;

describe.each([
  ['of any exponents', 0, undefined],
  ['of exponent 0.5', 0.5, 0.5],
  ['of one exponent', 0.65, 0.65],
])('the loop that adds to the zones, for links %s', (_, recordClass, exponent) => {
  it('gives the very numbers of the block, and their sums', () => {
    const { group, tally } = someLinks(recordClass, exponent);
    powerLawTallyBlock(group, tally);
    const expected = someLinks(recordClass, exponent);
    readDifferences(expected);
    powerLaw.block(expected.group, expected.tally.state);
    addToZones(expected);
    expect(tally.state.massFlowKgPerS).toEqual(expected.tally.state.massFlowKgPerS);
    expect(tally.state.slopeKgPerSPa).toEqual(expected.tally.state.slopeKgPerSPa);
    for (const sum of ['residual', 'through', 'slopeSum'] as const) {
      for (let zone = 0; zone < zones; zone++) {
        // Two orders of adding up: equal to rounding, not to the bit.
        const error = tally[sum][zone]! - expected.tally[sum][zone]!;
        const size =
          sum === 'slopeSum' ? expected.tally[sum][zone]! : expected.tally.through[zone]!;
        expect(Math.abs(error)).toBeLessThanOrEqual(1e-14 * size);
      }
    }
  });

  it('starts from the tangents of the laws at the flows of their chords', () => {
    const { group, tally } = someLinks(recordClass, exponent);
    powerLawTallyStartBlock(group, tally);
    const expected = someLinks(recordClass, exponent);
    const { state, drivePa, pressurePa, from, to, chordFlow, chordSlope } = expected.tally;
    for (let link = 0; link < count; link++) {
      const x = pressurePa[from[link]!]! - pressurePa[to[link]!]! + drivePa[link]!;
      const [forward, backward, n] = expected.group.records.subarray(4 * link);
      const coefficient = x > 0 ? forward! : backward!;
      const power = Math.min((4 ** (n! - 1) * Math.abs(x)) ** (1 - 1 / n!), 1024);
      const slope = n! * coefficient * power;
      state.slopeKgPerSPa[link] = slope;
      state.massFlowKgPerS[link] =
        (1 - n!) * (chordFlow[link]! + chordSlope[link]! * x) + slope * x;
    }
    addToZones(expected);
    state.slopeKgPerSPa.forEach((slope, link) => {
      // The start takes a rough power, within 1e-5.
      expect(Math.abs(tally.state.slopeKgPerSPa[link]! / slope - 1)).toBeLessThan(1e-5);
    });
    for (let zone = 0; zone < zones; zone++) {
      const error = tally.residual[zone]! - expected.tally.residual[zone]!;
      expect(Math.abs(error)).toBeLessThan(1e-5 * expected.tally.through[zone]!);
      const slopes = expected.tally.slopeSum[zone]!;
      expect(Math.abs(tally.slopeSum[zone]! - slopes)).toBeLessThan(1e-5 * slopes);
    }
  });
});

interface Links {
  readonly group: ZoneGroup;
  readonly tally: ZoneTally;
}

/** Links of all directions and sizes, a few of them within the width near zero; the middle zone has no exterior one. */
function someLinks(recordClass: number, exponent: number | undefined): Links {
  const records = new Float64Array(4 * count);
  const numbers = (scale: number, shift: number): Float64Array =>
    Float64Array.from({ length: count }, (_, link) => scale * Math.sin(7 * link + shift));
  const sums = (): Float64Array => new Float64Array(zones + 1);
  const pressurePa = sums().map((_, zone) => (zone < zones ? 4 * Math.cos(zone) : 0));
  const zoneEnd = Int32Array.of(20, 20, interior, interior);
  const from = Int32Array.from({ length: count }, (_, link) =>
    link < 20 ? 0 : link < interior ? 2 : link % zones,
  );
  const to = Int32Array.from({ length: count }, (_, link) =>
    link < interior ? zones : (link + 1 + (link % 2)) % zones,
  );
  const drivePa = numbers(8, 1);
  for (let link = 0; link < count; link += 11) {
    drivePa[link] =
      pressurePa[to[link]!]! - pressurePa[from[link]!]! + 3e-7 * (link % 3 === 0 ? -1 : 1);
  }
  for (let link = 0; link < count; link++) {
    const air = (densityKgPerM3: number) => ({
      densityKgPerM3,
      logDensityRatio: 0.01,
      logViscosityRatio: 0.02,
    });
    const law = {
      kind: 'powerLaw',
      coefficientM3PerSPaN: 0.01 + 0.001 * link,
      exponent: exponent ?? 0.5 + (link % 40) / 80,
    } as const;
    powerLaw.prepare(law, { from: air(1.1), to: air(1.3), scale: 1, records, at: 4 * link });
  }
  return {
    group: { records, recordLength: 4, recordClass, zoneEnd, begin: 0, interior, end: count },
    tally: {
      pressurePa,
      ...{ residual: sums(), through: sums(), slopeSum: sums(), from, to, drivePa },
      chordSlope: numbers(0.001, 2).map((value) => 0.01 + value),
      chordFlow: numbers(0.0001, 3),
      state: {
        pressureDifferencePa: new Float64Array(count),
        massFlowKgPerS: new Float64Array(count),
        slopeKgPerSPa: new Float64Array(count),
      },
    },
  };
}

function readDifferences({ tally }: Links): void {
  const { pressurePa, from, to, drivePa, state } = tally;
  for (let link = 0; link < count; link++) {
    state.pressureDifferencePa[link] =
      pressurePa[from[link]!]! - pressurePa[to[link]!]! + drivePa[link]!;
  }
}

function addToZones({ tally }: Links): void {
  const { residual, through, slopeSum, from, to, state } = tally;
  for (let link = 0; link < count; link++) {
    for (const [zone, sign] of [
      [from[link]!, 1],
      [to[link]!, -1],
    ] as const) {
      residual[zone]! += sign * state.massFlowKgPerS[link]!;
      through[zone]! += Math.abs(state.massFlowKgPerS[link]!);
      slopeSum[zone]! += state.slopeKgPerSPa[link]!;
    }
  }
}

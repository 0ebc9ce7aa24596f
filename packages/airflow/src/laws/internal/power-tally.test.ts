import { describe, expect, it } from 'vitest';
import type { ZoneGroup, ZoneTally } from '../flow-law.js';
import { powerLaw } from '../power-law.js';
import { powerLawTallyBlock, powerLawTallyStartBlock } from './power-tally.js';

const zones = 3;
const count = 60;

describe.each([
  ['of any exponents', 0, undefined],
  ['of exponent 0.5', 0.5, 0.5],
  ['of one exponent', 0.65, 0.65],
])('the loop that adds to the zones, for links %s', (_, recordClass, exponent) => {
  it('gives the very numbers of the block and of adding afterwards', () => {
    const { group, tally } = someLinks(recordClass, exponent);
    powerLawTallyBlock(group, tally);
    const expected = someLinks(recordClass, exponent);
    readDifferences(expected);
    powerLaw.block(expected.group, expected.tally.state);
    addToRows(expected, { sizes: true });
    expect(tally.state.massFlowKgPerS).toEqual(expected.tally.state.massFlowKgPerS);
    expect(tally.state.slopeKgPerSPa).toEqual(expected.tally.state.slopeKgPerSPa);
    expect(tally.rows).toEqual(expected.tally.rows);
  });

  it('starts from the tangents that the inverse gives at the flows of the chords', () => {
    const { group, tally } = someLinks(recordClass, exponent);
    powerLawTallyStartBlock(group, tally);
    const expected = someLinks(recordClass, exponent);
    readDifferences(expected);
    const { state, chordFlow, chordSlope } = expected.tally;
    const differences = state.pressureDifferencePa.slice();
    differences.forEach((x, link) => {
      state.massFlowKgPerS[link] = chordFlow[link]! + chordSlope[link]! * x;
    });
    powerLaw.inverseBlock!(expected.group, state);
    differences.forEach((x, link) => {
      state.massFlowKgPerS[link]! +=
        state.slopeKgPerSPa[link]! * (x - state.pressureDifferencePa[link]!);
    });
    addToRows(expected, { sizes: false });
    tally.rows.forEach((value, k) => {
      const exact = expected.tally.rows[k]!;
      // At exponent 0.5 neither needs a power; else each takes another rough one, within 1e-4.
      const tolerance = recordClass === 0.5 ? 1e-12 : 1e-3;
      expect(Math.abs(value - exact)).toBeLessThanOrEqual(tolerance * (1 + Math.abs(exact)));
    });
  });
});

interface Links {
  readonly group: ZoneGroup;
  readonly tally: ZoneTally;
}

/** Links of all directions and sizes, a few of them within the width near zero. */
function someLinks(recordClass: number, exponent: number | undefined): Links {
  const records = new Float64Array(4 * count);
  const numbers = (scale: number, shift: number): Float64Array =>
    Float64Array.from({ length: count }, (_, link) => scale * Math.sin(7 * link + shift));
  const interior = 35;
  const row = (link: number): number => 8 * (link % zones) + 4 * (link % 2);
  const rows = new Float64Array(8 * zones + 4);
  for (let zone = 0; zone < zones; zone++) {
    rows[8 * zone + 3] = 4 * Math.cos(zone);
    rows[8 * zone + 7] = -4 * Math.cos(zone);
  }
  const firstRow = Int32Array.from({ length: count }, (_, link) => row(link));
  const secondRow = Int32Array.from({ length: count }, (_, link) =>
    link < interior ? 8 * zones : (row(link) + 12) % (8 * zones),
  );
  const drivePa = numbers(8, 1);
  for (let link = 0; link < count; link += 11) {
    const second = link < interior ? 0 : rows[secondRow[link]! + 3]!;
    drivePa[link] = -rows[firstRow[link]! + 3]! - second + 3e-7 * (link % 3 === 0 ? -1 : 1);
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
    group: { records, recordLength: 4, recordClass, begin: 0, interior, end: count },
    tally: {
      rows,
      firstRow,
      secondRow,
      drivePa,
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

function readDifferences({ group, tally }: Links): void {
  const { rows, firstRow, secondRow, drivePa, state } = tally;
  for (let link = 0; link < count; link++) {
    const second = link < group.interior ? 0 : rows[secondRow[link]! + 3]!;
    state.pressureDifferencePa[link] = rows[firstRow[link]! + 3]! + drivePa[link]! + second;
  }
}

function addToRows({ group, tally }: Links, { sizes }: { readonly sizes: boolean }): void {
  const { rows, firstRow, secondRow, state } = tally;
  for (let link = 0; link < count; link++) {
    const ends = link < group.interior ? [firstRow[link]!] : [firstRow[link]!, secondRow[link]!];
    for (const row of ends) {
      rows[row]! += state.massFlowKgPerS[link]!;
      if (sizes) rows[row + 1]! += Math.abs(state.massFlowKgPerS[link]!);
      rows[row + 2]! += state.slopeKgPerSPa[link]!;
    }
  }
}

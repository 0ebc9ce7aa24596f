import { flowLaws } from '@evendraft/airflow';
import { expect, it, vi } from 'vitest';
import { inOneMemory } from './arena.js';
import { createLoopMemory } from './loops.js';
import { networkRecordLength, writeNetworkRecord } from './network-record.js';

const { powerLaw } = flowLaws;
const count = 400;

it('the compiled power law gives the very numbers of the block of the law', () => {
  const { state, records, loops, record } = powerLaws();
  const expected = {
    pressureDifferencePa: state.pressureDifferencePa.slice(),
    massFlowKgPerS: new Float64Array(count),
    slopeKgPerSPa: new Float64Array(count),
  };
  powerLaw.block({ records, recordLength: 4, begin: 0, end: count }, expected);
  loops.powerLaw(record.byteOffset, records.byteOffset, 0, count);
  expect([...state.massFlowKgPerS]).toEqual([...expected.massFlowKgPerS]);
  expect([...state.slopeKgPerSPa]).toEqual([...expected.slopeKgPerSPa]);
  expect(state.massFlowKgPerS.some((flow) => flow > 0)).toBe(true);
});

it('the compiled inverse gives the tangents of the inverse of the law, roughly', () => {
  const { state, records, loops, record } = powerLaws();
  for (let k = 0; k < count; k++) {
    state.massFlowKgPerS[k] = (k % 2 ? 1 : -1) * 10 ** (k / 40 - 8);
  }
  const expected = {
    pressureDifferencePa: new Float64Array(count),
    massFlowKgPerS: state.massFlowKgPerS.slice(),
    slopeKgPerSPa: new Float64Array(count),
  };
  powerLaw.inverseBlock!({ records, recordLength: 4, begin: 0, end: count }, expected);
  loops.powerLawInverse(record.byteOffset, records.byteOffset, 0, count);
  for (let k = 0; k < count; k++) {
    // The start takes a power within 1e-6.
    expect(state.slopeKgPerSPa[k]! / expected.slopeKgPerSPa[k]!).toBeCloseTo(1, 5);
    expect(state.pressureDifferencePa[k]! / expected.pressureDifferencePa[k]!).toBeCloseTo(1, 5);
    // And the law carries that flow there: beyond where the start takes a line.
    if (Math.abs(expected.massFlowKgPerS[k]!) < 1e-4) continue;
    const at = {
      pressureDifferencePa: expected.pressureDifferencePa.slice(k, k + 1),
      massFlowKgPerS: new Float64Array(1),
      slopeKgPerSPa: new Float64Array(1),
    };
    const one = { records: records.slice(4 * k, 4 * k + 4), recordLength: 4, begin: 0, end: 1 };
    powerLaw.block(one, at);
    expect(at.massFlowKgPerS[0]! / expected.massFlowKgPerS[k]!).toBeCloseTo(1, 9);
    expect(at.slopeKgPerSPa[0]! / expected.slopeKgPerSPa[k]!).toBeCloseTo(1, 9);
  }
});

it('what does not fit the memory that networks share has one of its own', () => {
  const large = inOneMemory(0, (arena) => [arena.floats(3e6), arena.ints(3)] as const);
  expect(large[0].length).toBe(3e6);
  expect(large[1].buffer).toBe(large[0].buffer);
  const small = inOneMemory(0, (arena) => arena.floats(3));
  expect(small.buffer).not.toBe(large[0].buffer);
});

it('says what to allow where the platform runs no WebAssembly', () => {
  vi.stubGlobal('WebAssembly', undefined);
  try {
    expect(() => createLoopMemory(1)).toThrow(/content security policy/);
  } finally {
    vi.unstubAllGlobals();
  }
});

/** Power laws of all exponents, both airs differing, and pressure differences of either sign down to the cubic. */
function powerLaws() {
  return inOneMemory(0, (arena) => {
    const records = arena.floats(4 * count);
    for (let k = 0; k < count; k++) {
      const exponent = k % 5 === 0 ? 0.5 : 0.5 + (k % 41) / 80;
      const air = (densityKgPerM3: number) => ({
        densityKgPerM3,
        logDensityRatio: 0.01 * densityKgPerM3,
        logViscosityRatio: 0.02,
      });
      powerLaw.prepare(
        { kind: 'powerLaw', coefficientM3PerSPaN: 0.001 * (1 + (k % 7)), exponent },
        { from: air(1.1), to: air(1.3), scale: 1, records, at: 4 * k },
      );
    }
    const state = {
      pressureDifferencePa: arena.floats(count),
      massFlowKgPerS: arena.floats(count),
      slopeKgPerSPa: arena.floats(count),
    };
    for (let k = 0; k < count; k++) {
      state.pressureDifferencePa[k] = k === 0 ? 0 : (k % 3 ? 1 : -1) * 10 ** (k / 40 - 7);
    }
    const none = arena.floats(0);
    const noInts = arena.ints(0);
    const record = arena.ints(networkRecordLength);
    writeNetworkRecord(record, 0, {
      links: {
        ...{ from: noInts, to: noInts, zoneEnd: noInts, zoneLink: noInts, drivePa: none, state },
        ...{ otherKgPerS: none, chordSlope: none, chordFlow: none },
      },
      ...{ pressure: none, trial: none, step: none, bend: none },
      ...{ residual: none, through: none, slopeSum: none },
      ...{ interiorLink: noInts, interiorEntry: noInts },
    });
    return { records, state, record, loops: arena.loops };
  });
}

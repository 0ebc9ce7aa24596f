import type { FlowLawDescription } from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import type { BuiltNetwork } from './built-network.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import { linkReading, pressureAt } from './readings.js';
import { solveNetwork } from './solve-network.js';

const reference = { temperatureC: 20, densityKgPerM3: 1.2041 };
const leak = (litresPerS: number, exponent: number): FlowLawDescription => ({
  kind: 'powerLaw',
  coefficientM3PerSPaN: litresPerS / 1000,
  exponent,
});
const exhaust = (litresPerS: number): FlowLawDescription => ({
  kind: 'fixedFlow',
  volumeFlowM3PerS: litresPerS / 1000,
});

describe('analytic networks', () => {
  // Derived in closed form; the regularisation near zero moves nothing here.
  it.each([
    [50, 1],
    [100, 2.904845712],
    [200, 8.438128612],
    [300, 15.74547511],
  ])('an exhaust of %d L/s on a leak of 50 L/(s Pa^0.65) pulls %d Pa', (flow, suctionPa) => {
    const balance = solved(
      built(
        ['house'],
        [
          ['leak', 'house', 'out', leak(50, 0.65)],
          ['fan', 'house', 'out', exhaust(flow)],
        ],
      ),
    );
    expect(Math.abs(balance.pressuresPa[0]! + suctionPa)).toBeLessThan(1e-8);
  });

  it('two openings in series share 10 Pa as their coefficients say', () => {
    const network = built(
      ['between'],
      [
        ['first', 'wind', 'between', leak(10, 0.65)],
        ['second', 'between', 'out', leak(20, 0.65)],
      ],
      10,
    );
    const balance = solved(network);
    expect(Math.abs(10 - balance.pressuresPa[0]! - 7.439079355)).toBeLessThan(1e-8);
    const { volumeFlowM3PerS } = linkReading(network, balance, 'first');
    expect(Math.abs(volumeFlowM3PerS - 0.03685424125)).toBeLessThan(1e-11);
  });

  it('two rooms with a door, exhaust in one', () => {
    const network = built(
      ['A', 'B'],
      [
        ['leak A', 'out', 'A', leak(10, 0.5)],
        ['door', 'A', 'B', leak(30, 0.5)],
        ['leak B', 'out', 'B', leak(15, 0.5)],
        ['fan', 'B', 'out', exhaust(80)],
      ],
    );
    const balance = solved(network);
    expect(Math.abs(balance.pressuresPa[0]! + 9.606324333)).toBeLessThan(1e-8);
    expect(Math.abs(balance.pressuresPa[1]! + 10.6736937)).toBeLessThan(1e-8);
    const { volumeFlowM3PerS } = linkReading(network, balance, 'leak B');
    expect(Math.abs(volumeFlowM3PerS - 0.04900592906)).toBeLessThan(1e-10);
  });

  it('a cross wind of 10.5 and −4.5 Pa', () => {
    const balance = solved(
      built(
        ['house'],
        [
          ['windward', 'wind', 'house', leak(8, 0.6)],
          ['leeward', 'house', 'lee', leak(12, 0.6)],
        ],
        10.5,
        -4.5,
      ),
    );
    expect(Math.abs(balance.pressuresPa[0]! - 0.558073349)).toBeLessThan(1e-8);
    expect(Math.abs(balance.links.volumeFlowM3PerS[0]! - 0.0317374712)).toBeLessThan(1e-10);
  });

  it('a balanced bridge carries exactly nothing', () => {
    const balance = solved(
      built(
        ['left', 'right'],
        [
          ['1', 'wind', 'left', leak(10, 0.5)],
          ['2', 'left', 'out', leak(20, 0.5)],
          ['3', 'wind', 'right', leak(5, 0.5)],
          ['4', 'right', 'out', leak(10, 0.5)],
          ['bridge', 'left', 'right', leak(30, 0.5)],
        ],
        20,
      ),
    );
    expect(Math.abs(balance.links.massFlowKgPerS[4]!)).toBeLessThan(1e-10);
    expect(balance.proof.regularisationPa).toBeGreaterThan(0);
    expect(balance.proof.regularisationPa).toBeLessThan(1e-6);
  });

  it('two openings five metres apart in a warm room on a cold day', () => {
    // Densities of dry air at 20 and −10 °C, 101,325 Pa; derived in closed form from the orifice law.
    const inside = { temperatureC: 20, densityKgPerM3: 101325 / (287.055 * 293.15) };
    const outside = { temperatureC: -10, densityKgPerM3: 101325 / (287.055 * 263.15) };
    const opening = (id: string, heightM: number, areaM2: number): LinkDescription => ({
      id,
      origin: id,
      from: 'out',
      to: 'room',
      fromHeightM: heightM,
      toHeightM: heightM,
      law: { kind: 'orifice', areaM2, dischargeCoefficient: 0.6 },
    });
    const network = buildOf({
      outdoorAir: outside,
      zones: [{ id: 'room', origin: 'room', heightM: 0, air: inside }],
      boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air: outside }],
      links: [opening('low', 0, 0.02), opening('high', 5, 0.04)],
    });
    const balance = solved(network);
    expect(Math.abs(balance.links.massFlowKgPerS[0]! - 0.04509774978)).toBeLessThan(1e-10);
    expect(Math.abs(balance.links.pressureDifferencePa[0]! - 5.26464553)).toBeLessThan(1e-7);
    expect(Math.abs(balance.links.volumeFlowM3PerS[0]! - 0.0336207)).toBeLessThan(1e-7);
    expect(Math.abs(-balance.links.volumeFlowM3PerS[1]! - 0.03745357)).toBeLessThan(1e-8);
    const neutral = pressureAt(network, balance, { zoneId: 'room', heightM: 3.910830392 });
    expect(Math.abs(neutral)).toBeLessThan(1e-7);
  });

  it('a link between heights adds its own column', () => {
    // A tight flue of 5 m full of 100 °C air: closed form, (1.2041 − 0.946) g 5 m.
    const network = buildOf({
      outdoorAir: reference,
      zones: [{ id: 'room', origin: 'room', heightM: 0, air: reference }],
      boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air: reference }],
      links: [
        {
          id: 'flue',
          origin: 'flue',
          from: 'room',
          to: 'out',
          fromHeightM: 0,
          toHeightM: 5,
          columnAir: { temperatureC: 100, densityKgPerM3: 0.946 },
          law: leak(5, 0.5),
        },
      ],
    });
    const balance = solved(network);
    expect(balance.pressuresPa[0]!).toBeCloseTo(-(1.2041 - 0.946) * 9.80665 * 5, 9);
  });
});

describe('a solve that has no answer', () => {
  it('names the zone that has only a fan, and says what to add', () => {
    const result = solveNetwork(built(['tight'], [['fan', 'tight', 'out', exhaust(10)]]));
    expect(result).toMatchObject({ status: 'infeasible', zones: ['tight'] });
    if (result.status !== 'solved') expect(result.hint).toContain('an inlet');
    expect('pressuresPa' in result).toBe(false);
  });

  it('names the zone that nothing ties to outdoors', () => {
    const network = built(['house', 'void'], [['leak', 'house', 'out', leak(10, 0.65)]]);
    expect(solveNetwork(network)).toMatchObject({ status: 'not-unique', zones: ['void'] });
  });

  it('names the zone between two flaps that the wind holds shut', () => {
    const flap: FlowLawDescription = {
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.01,
      exponent: 0.5,
      crackingPressurePa: 1,
    };
    const flaps = (windPa: number): BuiltNetwork =>
      built(
        ['box'],
        [
          ['in', 'wind', 'box', flap],
          ['out', 'box', 'out', flap],
        ],
        windPa,
      );
    expect(solveNetwork(flaps(-5))).toMatchObject({ status: 'not-unique', zones: ['box'] });
    expect(Math.abs(solved(flaps(12)).pressuresPa[0]! - 6)).toBeLessThan(1e-9);
  });

  it('sees a removed link as absent', () => {
    const network = built(
      ['house', 'closet'],
      [
        ['leak', 'house', 'out', leak(10, 0.65)],
        ['door', 'house', 'closet', leak(50, 0.5)],
      ],
    );
    expect(solved(network).pressuresPa.every((pressure) => pressure === 0)).toBe(true);
    expect(solveNetwork(network, { linkScale: Float64Array.of(1, 0) })).toMatchObject({
      status: 'not-unique',
      zones: ['closet'],
    });
  });

  it('says which number of a scenario is wrong', () => {
    const network = built(['house'], [['leak', 'house', 'out', leak(10, 0.65)]]);
    const result = solveNetwork(network, { linkScale: Float64Array.of(-1) });
    expect(result).toMatchObject({ status: 'invalid-scenario' });
    if (result.status !== 'solved') expect(result.hint).toContain('linkScale[0] is -1');
    // So small a factor would leave flows that no double can hold: not a link, and not nothing either.
    const tiny = solveNetwork(network, { linkScale: Float64Array.of(1e-300) });
    expect(tiny).toMatchObject({ status: 'invalid-scenario' });
  });

  it('returns the last iterate and the worst zone when steps run out', () => {
    const network = built(
      ['house'],
      [
        ['leak', 'house', 'out', leak(1, 0.5)],
        ['fan', 'house', 'out', exhaust(100)],
      ],
    );
    const result = solveNetwork(network, {}, { maximumIterations: 1, start: Float64Array.of(5) });
    expect(result).toMatchObject({ status: 'not-converged', worstZone: 'house', iterations: 1 });
    if (result.status !== 'solved') expect(result.lastIteratePa).toHaveLength(1);
  });
});

describe('the proof', () => {
  it('encloses every solution within 10 nanopascals, names the worst zone, and is exact on request', () => {
    const { proof } = solved(
      built(
        ['house'],
        [
          ['leak', 'house', 'out', leak(50, 0.65)],
          ['fan', 'house', 'out', exhaust(200)],
        ],
      ),
    );
    expect(proof.enclosed).toBe(true);
    expect(proof.enclosureRadiusPa).toBeLessThan(1e-8);
    expect(proof.unique).toBe(true);
    expect(proof.worstZone).toBe('house');
    expect(proof.regularisationPa).toBe(0);
    expect(proof.largestRelativeResidual).toBeLessThan(1e-9);
  });

  it.each([0, 3])('holds rounding against no dead end, in wind of %d Pa', (windPa) => {
    const { proof } = solved(
      built(
        ['house', 'closet', 'duct'],
        [
          ['windward', 'house', 'wind', leak(7, 0.65)],
          ['leeward', 'house', 'lee', leak(13, 0.61)],
          ['door', 'house', 'closet', leak(0.3, 0.5)],
          ['mouth', 'closet', 'duct', leak(171, 0.57)],
        ],
        windPa,
        windPa / 7,
      ),
    );
    expect(proof.largestRelativeResidual).toBeLessThanOrEqual(1e-9);
    expect(proof.enclosed).toBe(true);
  });
});

type Row = [id: string, from: string, to: string, law: FlowLawDescription];

function built(zones: string[], rows: Row[], windPa = 0, leePa = 0): BuiltNetwork {
  const boundary = (id: string, pressurePa: number) => ({
    id,
    origin: id,
    heightM: 0,
    pressurePa,
    air: reference,
  });
  return buildOf({
    outdoorAir: reference,
    zones: zones.map((id) => ({ id, origin: id, heightM: 0, air: reference })),
    boundaries: [boundary('out', 0), boundary('wind', windPa), boundary('lee', leePa)],
    links: rows.map(([id, from, to, law]) => ({
      id,
      origin: id,
      from,
      to,
      fromHeightM: 0,
      toHeightM: 0,
      law,
    })),
  });
}

function buildOf(description: NetworkDescription): BuiltNetwork {
  const result = buildNetwork(description);
  if (result.status === 'rejected') throw new Error(JSON.stringify(result.issues));
  return result.network;
}

function solved(network: BuiltNetwork) {
  const result = solveNetwork(network);
  if (result.status !== 'solved') throw new Error(result.hint);
  return result;
}

import type { Scenario } from '@evendraft/network';
import { buildNetwork, checkNetwork, solveNetwork } from '@evendraft/network';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const monstrous = fc.oneof(
  fc.double(),
  fc.constantFrom(NaN, Infinity, -Infinity, 1e308, -1e308, 5e-324, -0, 1e-12, 1e4),
  fc.constantFrom(undefined, null, '1', {}, []) as fc.Arbitrary<never>,
);
/** Mostly one of the sane values, now and then anything. */
const mostly = <Value>(...sane: Value[]): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 40, arbitrary: fc.constantFrom(...sane) },
    { weight: 1, arbitrary: monstrous },
  );
const zoneIds = ['a', 'b', 'c'];
const boundaryIds = ['out', 'wind'];
const end = fc.constantFrom(...zoneIds, ...boundaryIds);
const air = fc.record({
  temperatureC: mostly(20, -15, 35),
  densityKgPerM3: mostly(1.2, 1.4, 1.15),
});
const coefficient = mostly(1e-12, 1e-6, 0.01, 10, 1e4);
const exponent = mostly(0.5, 0.65, 1);
const law = fc.oneof(
  fc.record({ kind: fc.constant('powerLaw'), coefficientM3PerSPaN: coefficient, exponent }),
  fc.record({
    kind: fc.constant('orifice'),
    areaM2: mostly(1e-12, 0.01, 1e4),
    dischargeCoefficient: mostly(0.6, 1),
  }),
  fc.record({
    kind: fc.constant('quadratic'),
    linearPaSPerM3: mostly(0, 1, 1e15),
    quadraticPaS2PerM6: mostly(0, 100, 1e15),
  }),
  fc.record({
    kind: fc.constant('duct'),
    sections: fc.array(
      fc.record({
        lengthM: mostly(0, 5, 1e5),
        hydraulicDiameterM: mostly(1e-4, 0.15, 100),
        areaM2: mostly(1e-8, 0.018, 1e4),
        roughnessM: mostly(0, 1e-5, 1e-4),
        frictionMultiplier: mostly(1, 3, 100),
        lossCoefficient: mostly(0, 2, 1e6),
      }),
      { maxLength: 3 },
    ),
  }),
  fc.record({
    kind: fc.constant('gravityDamper'),
    areaM2: mostly(1e-8, 0.02, 1e4),
    openLossCoefficient: mostly(0.01, 2, 1e6),
    crackingPressurePa: mostly(0, 2.5, 1e5),
    fullyOpenPressurePa: mostly(0.01, 15, 2e5),
  }),
  fc.record({ kind: fc.constant('fixedFlow'), volumeFlowM3PerS: mostly(0, 0.1, -1, 1e6) }),
  fc.record({
    kind: fc.constant('fanCurve'),
    points: fc.uniqueArray(
      fc.record({ pressureRisePa: mostly(200, 100, 50, 0), volumeFlowM3PerS: mostly(0, 0.1, 0.2) }),
      { maxLength: 4, selector: (point) => point.pressureRisePa },
    ),
    beyondShutOff: fc.constantFrom('blocked', 'extended'),
    risingPart: fc.constantFrom('envelope', 'envelope', 'reject'),
  }),
  fc.record({
    kind: fc.constant('oneWayDamper'),
    coefficientM3PerSPaN: coefficient,
    exponent,
    crackingPressurePa: mostly(0, 5, 1e5),
  }),
);
const leak = fc.constant({ kind: 'powerLaw', coefficientM3PerSPaN: 0.01, exponent: 0.65 });
const link = fc.record({
  id: fc.uuid(),
  origin: fc.constant('link'),
  from: end,
  to: end,
  fromHeightM: mostly(0, 2),
  toHeightM: mostly(0, 2),
  columnAir: air,
  law: fc.oneof({ weight: 3, arbitrary: leak }, { weight: 2, arbitrary: law }),
});
const description = fc.record({
  outdoorAir: air,
  zones: fc.tuple(
    ...zoneIds.map((id) =>
      fc.record({ id: fc.constant(id), origin: fc.constant(id), heightM: mostly(0, 3), air }),
    ),
  ),
  boundaries: fc.tuple(
    ...boundaryIds.map((id) =>
      fc.record({
        id: fc.constant(id),
        origin: fc.constant(id),
        heightM: fc.constant(0),
        pressurePa: mostly(0, -8, 50),
        air,
      }),
    ),
  ),
  links: fc.uniqueArray(
    link.filter(({ from, to }) => from !== to),
    { minLength: 1, maxLength: 9, selector: ({ id }) => id },
  ),
});
const numbers = (length: number): fc.Arbitrary<Float64Array> =>
  fc
    .array(mostly(0, 1, 0.5, 3), { minLength: length, maxLength: length })
    .map((list) => Float64Array.from(list as number[]));
const scenario = fc.record(
  { boundaryPressuresPa: numbers(2), linkScale: numbers(4), linkOffsetPa: numbers(4) },
  { requiredKeys: [] },
);

const codes =
  /^(NotANetwork|NetworkEmpty|NetworkTooLarge|DuplicateId|UnknownEnd|LinkToItself|ValueOutOfRange|ColumnAirMissing|LawParameterOutOfRange|UnknownLaw|FixedFlowNeedsOneFlow|FanCurveTooShort|FanPointsShareARise|RisingFanCurve|DuctWithoutSections|DuctWithoutResistance)$/;

/** How many descriptions each property tries; more on demand by FUZZ_RUNS. */
const numRuns = Number(process.env['FUZZ_RUNS'] ?? 5000);

describe('raw input', () => {
  it('of any shape gives issues with known codes or a network, and never throws', () => {
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        const result = buildNetwork(anything as never);
        if (result.status === 'rejected') {
          for (const issue of result.issues) expect(issue.code).toMatch(codes);
        }
      }),
      { seed: 3, numRuns },
    );
  });

  it('of the right shape with wrong numbers gives named outcomes and never a NaN', () => {
    const seen = new Map<string, number>();
    const count = (what: string): void => void seen.set(what, (seen.get(what) ?? 0) + 1);
    fc.assert(
      fc.property(description, scenario, (raw, overrides) => {
        const built = buildNetwork(raw as never);
        if (built.status === 'rejected') {
          expect(built.issues.length).toBeGreaterThan(0);
          for (const issue of built.issues) expect(issue.code).toMatch(codes);
          count('rejected');
          return;
        }
        for (const use of [{}, overrides as Scenario]) {
          const result = solveNetwork(built.network, use);
          count(result.status);
          if (result.status === 'solved') {
            for (const array of [result.pressuresPa, ...Object.values(result.links)]) {
              expect((array as Float64Array).every(Number.isFinite)).toBe(true);
            }
            expect(Number.isFinite(result.proof.largestRelativeResidual)).toBe(true);
          } else {
            expect(result.hint).not.toBe('');
            expect('pressuresPa' in result).toBe(false);
            expect(result.lastIteratePa?.every(Number.isFinite) ?? true).toBe(true);
          }
          expect(checkNetwork(built.network, use).verdict).toMatch(
            /^(unique|not-unique|infeasible|invalid-scenario|undecided)$/,
          );
        }
      }),
      { seed: 5, numRuns },
    );
    // The fuzz reaches every kind of outcome, or it would prove little.
    for (const outcome of ['rejected', 'solved', 'infeasible', 'not-unique', 'invalid-scenario']) {
      expect(seen.get(outcome) ?? 0, outcome).toBeGreaterThan(20);
    }
  });
});

import type { AirState, DuctSection, FlowLawDescription } from '@evendraft/airflow';
import {
  flowAt,
  flowLawOf,
  flowLaws,
  frictionFactor,
  nearZeroWidthPa,
  referenceAir,
} from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';

/** What one law claims; a new law is one more row. */
interface LawRow {
  readonly name: string;
  readonly law: FlowLawDescription;
  /** Carries nothing at no pressure difference. */
  readonly zeroAtZero: boolean;
  /** Answers alike both ways when the air is the same at both ends. */
  readonly odd: boolean;
  /** Pressure differences at which its pieces meet [Pa]. */
  readonly joinsPa: readonly number[];
  /** Joins where the slope jumps [Pa]. */
  readonly jumpsPa?: readonly number[];
}

const width = nearZeroWidthPa;
const fanPoints = [
  { pressureRisePa: 120, volumeFlowM3PerS: 0 },
  { pressureRisePa: 90, volumeFlowM3PerS: 0.1 },
  { pressureRisePa: 40, volumeFlowM3PerS: 0.18 },
  { pressureRisePa: 0, volumeFlowM3PerS: 0.2 },
];

const roundDuct: DuctSection = {
  lengthM: 8,
  hydraulicDiameterM: 0.15,
  areaM2: (Math.PI / 4) * 0.15 ** 2,
  roughnessM: 9e-5,
  frictionMultiplier: 1,
  lossCoefficient: 2.5,
};
const smoothDuct: DuctSection = {
  ...roundDuct,
  hydraulicDiameterM: 0.1,
  areaM2: (Math.PI / 4) * 0.1 ** 2,
  roughnessM: 0,
  lossCoefficient: 0,
};

const rows: readonly LawRow[] = [
  ...[0.5, 0.65, 1].map((exponent): LawRow => ({
    name: `power law of exponent ${exponent}`,
    law: { kind: 'powerLaw', coefficientM3PerSPaN: 0.02, exponent },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width],
  })),
  {
    name: 'orifice',
    law: { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width],
  },
  ...[
    [40, 2000],
    [0, 2000],
    [40, 0],
  ].map(([linearPaSPerM3, quadraticPaS2PerM6]): LawRow => ({
    name: `quadratic with a = ${linearPaSPerM3}, b = ${quadraticPaS2PerM6}`,
    law: {
      kind: 'quadratic',
      linearPaSPerM3: linearPaSPerM3!,
      quadraticPaS2PerM6: quadraticPaS2PerM6!,
    },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width],
  })),
  {
    name: 'duct of sheet metal with fittings',
    law: { kind: 'duct', sections: [roundDuct] },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width, ...ductJoinsPa(roundDuct)],
  },
  {
    name: 'duct, smooth and without fittings',
    law: { kind: 'duct', sections: [smoothDuct] },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width, ...ductJoinsPa(smoothDuct)],
  },
  {
    name: 'duct of fittings alone',
    law: { kind: 'duct', sections: [{ ...roundDuct, lengthM: 0 }] },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width],
  },
  {
    name: 'duct of three sections, one flexible and rough',
    law: {
      kind: 'duct',
      sections: [
        roundDuct,
        { ...smoothDuct, roughnessM: 0.003, frictionMultiplier: 3 },
        { ...roundDuct, hydraulicDiameterM: 0.12, areaM2: 0.02 },
      ],
    },
    zeroAtZero: true,
    odd: true,
    joinsPa: [-width, width],
  },
  {
    name: 'fixed flow',
    law: { kind: 'fixedFlow', volumeFlowM3PerS: 0.05 },
    zeroAtZero: false,
    odd: false,
    joinsPa: [],
  },
  {
    name: 'fan curve, extended beyond shut-off',
    law: { kind: 'fanCurve', points: fanPoints, beyondShutOff: 'extended' },
    zeroAtZero: false,
    odd: false,
    joinsPa: [-120, -90, -40, 0],
  },
  {
    name: 'fan curve, blocked beyond shut-off',
    law: { kind: 'fanCurve', points: fanPoints, beyondShutOff: 'blocked' },
    zeroAtZero: false,
    odd: false,
    joinsPa: [-120, -90, -40, 0],
    jumpsPa: [-120],
  },
  {
    name: 'fan curve of straight lines',
    law: {
      kind: 'fanCurve',
      points: fanPoints,
      beyondShutOff: 'extended',
      interpolation: 'linear',
    },
    zeroAtZero: false,
    odd: false,
    joinsPa: [-120, -90, -40, 0],
    jumpsPa: [-90, -40],
  },
  ...[undefined, { coefficientM3PerSPaN: 1e-4, exponent: 0.5 }].map((closedLeakage): LawRow => ({
    name: `gravity damper, ${closedLeakage === undefined ? 'tight' : 'leaky'}`,
    law: {
      kind: 'gravityDamper',
      areaM2: 0.02,
      openLossCoefficient: 1.8,
      crackingPressurePa: 2.5,
      fullyOpenPressurePa: 15,
      ...(closedLeakage === undefined ? {} : { closedLeakage }),
    },
    zeroAtZero: true,
    odd: false,
    joinsPa: closedLeakage === undefined ? [2.5, 15] : [-width, width, 2.5, 15],
  })),
  {
    name: 'one-way damper, tight',
    law: {
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.02,
      exponent: 0.5,
      crackingPressurePa: 5,
    },
    zeroAtZero: true,
    odd: false,
    joinsPa: [5, 5 + width],
  },
  {
    name: 'one-way damper, leaky',
    law: {
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.02,
      exponent: 0.6,
      crackingPressurePa: 5,
      closedLeakage: { coefficientM3PerSPaN: 1e-4, exponent: 0.65 },
    },
    zeroAtZero: true,
    odd: false,
    joinsPa: [-width, width, 5, 5 + width],
  },
  {
    name: 'doorway',
    law: { kind: 'doorway', widthM: 0.9, heightM: 2, dischargeCoefficient: 0.6 },
    // Unlike airs exchange, and balance only at another difference.
    zeroAtZero: false,
    odd: true,
    joinsPa: [-width, width],
  },
];

const differencesPa = [-300, -119, -50, -7, -1, -1e-3, -4e-7, 3e-7, 1e-3, 1, 4, 6, 50, 300];
const cold: AirState = { temperatureC: -20, densityKgPerM3: 1.395 };
const warm: AirState = { temperatureC: 24, densityKgPerM3: 1.188 };
const airs = { alike: { from: warm, to: warm }, unlike: { from: warm, to: cold } };

it('every law of the table has a row', () => {
  expect(new Set(rows.map((row) => row.law.kind))).toEqual(new Set(Object.keys(flowLaws)));
});

describe.each(rows.map((row) => [row.name, row] as const))('%s', (_, row) => {
  const { law } = row;

  it('has a description free of problems', () => {
    expect(flowLawOf(law).check(law)).toEqual([]);
    expect(flowLawOf(law).kind).toBe(law.kind);
  });

  it.each(Object.entries(airs))('never falls with the pressure difference, airs %s', (__, air) => {
    const flows = differencesPa.map((x) => flowAt(law, x, air).massFlowKgPerS);
    for (let k = 1; k < flows.length; k++) expect(flows[k]).toBeGreaterThanOrEqual(flows[k - 1]!);
  });

  it.each(Object.entries(airs))('has the slope of its finite difference, airs %s', (__, air) => {
    for (const x of differencesPa) {
      const step = 1e-4 * Math.max(Math.abs(x), width);
      const above = flowAt(law, x + step, air).massFlowKgPerS;
      const below = flowAt(law, x - step, air).massFlowKgPerS;
      const slope = flowAt(law, x, air).slopeKgPerSPa;
      expect(Number.isFinite(slope)).toBe(true);
      // A central difference over 1e-4 of x errs by about that squared, and by rounding over the step.
      const tolerance = 1e-6 * slope + (4e-16 * Math.abs(above)) / step;
      expect(Math.abs((above - below) / (2 * step) - slope)).toBeLessThanOrEqual(tolerance);
    }
  });

  it('has a finite slope at zero', () => {
    const { slopeKgPerSPa } = flowAt(law, 0);
    expect(slopeKgPerSPa).toBeGreaterThanOrEqual(0);
    expect(slopeKgPerSPa).toBeLessThan(Infinity);
  });

  it(`is ${row.zeroAtZero ? '' : 'not '}zero at zero`, () => {
    expect(flowAt(law, 0, airs.unlike).massFlowKgPerS === 0).toBe(row.zeroAtZero);
  });

  it(`is ${row.odd ? '' : 'not '}odd where the airs are alike`, () => {
    const odd = differencesPa.every((x) => {
      const forward = flowAt(law, x).massFlowKgPerS;
      return Math.abs(forward + flowAt(law, -x).massFlowKgPerS) <= 1e-14 * Math.abs(forward);
    });
    expect(odd).toBe(row.odd);
  });

  it('joins its pieces without a step, and without a kink but where it says so', () => {
    for (const join of row.joinsPa) {
      // Far less than the width, far more than the spacing of doubles at the join.
      const near = 1e-6 * width;
      const left = flowAt(law, join - near);
      const right = flowAt(law, join + near);
      const scale = Math.max(left.slopeKgPerSPa, right.slopeKgPerSPa);
      const size = Math.abs(right.massFlowKgPerS) + scale * width;
      expect(Math.abs(right.massFlowKgPerS - left.massFlowKgPerS)).toBeLessThan(
        4 * scale * near + 1e-11 * size,
      );
      const kink = Math.abs(right.slopeKgPerSPa - left.slopeKgPerSPa);
      // At a flap the slope grows from zero within the width: compare with the slope at its far end.
      const reference = Math.max(scale, flowAt(law, join + width).slopeKgPerSPa);
      const jumps = row.jumpsPa?.includes(join) ?? false;
      expect(kink > 1e-4 * reference, `kink at ${join} Pa`).toBe(jumps);
    }
  });

  it('has a reach that holds its flows', () => {
    const reach = flowLawOf(law).reach(law, inlet, inlet);
    for (const x of [-1e5, ...differencesPa, 1e5]) {
      const flow = flowAt(law, x).massFlowKgPerS;
      expect(flow).toBeGreaterThanOrEqual(reach.leastKgPerS - 1e-12);
      expect(flow).toBeLessThanOrEqual(reach.mostKgPerS + 1e-12);
    }
  });
});

const inlet = { densityKgPerM3: 1.2041, logDensityRatio: 0, logViscosityRatio: 0 };

/** Pressure differences at which a section's flow leaves the laminar and enters the turbulent range [Pa]. */
function ductJoinsPa(section: DuctSection): number[] {
  const { lengthM, hydraulicDiameterM, roughnessM, frictionMultiplier, lossCoefficient } = section;
  return [2000, 4000].flatMap((reynolds) => {
    const friction = frictionFactor(reynolds, roughnessM / hydraulicDiameterM);
    const factor = (friction * frictionMultiplier * lengthM) / hydraulicDiameterM + lossCoefficient;
    const flux = (reynolds * referenceAir.viscosityPaS) / hydraulicDiameterM;
    const lossPa = (factor * flux * flux) / (2 * referenceAir.densityKgPerM3);
    return [-lossPa, lossPa];
  });
}

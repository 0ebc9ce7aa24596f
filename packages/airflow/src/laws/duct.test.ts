import { describe, expect, it } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { referenceAir } from '../air/reference-air.js';
import type { DuctDescription, DuctSection } from './flow-law-description.js';
import { checkFlowLaw, flowAt, flowLawWarnings } from './flow-laws.js';

const section: DuctSection = {
  lengthM: 10,
  hydraulicDiameterM: 0.2,
  areaM2: Math.PI / 100,
  roughnessM: 0,
  frictionMultiplier: 1,
  lossCoefficient: 0,
};
const ductOf = (...changes: readonly Partial<DuctSection>[]): DuctDescription => ({
  kind: 'duct',
  sections: changes.map((change) => ({ ...section, ...change })),
});
const { densityKgPerM3: density, viscosityPaS: viscosity } = referenceAir;

describe('duct', () => {
  it('is Poiseuille flow while it is laminar', () => {
    // m = rho pi D^4 dP/(128 mu L); at 0.002 Pa the Reynolds number is about 1200.
    const flow = (density * Math.PI * 0.2 ** 4 * 0.002) / (128 * viscosity * 10);
    expect((4 * flow) / (Math.PI * 0.2 * viscosity)).toBeLessThan(2000);
    expectNear(flowAt(ductOf({}), 0.002).massFlowKgPerS, flow);
  });

  it('is, without friction, an opening whose loss is a share of its velocity pressure', () => {
    const flow = (Math.PI / 100) * Math.sqrt((2 * density * 40) / 2.5);
    expectNear(flowAt(ductOf({ lengthM: 0, lossCoefficient: 2.5 }), 40).massFlowKgPerS, flow);
  });

  it('has a Colebrook flow that can be written down for friction alone', () => {
    // y = Re sqrt f is known from the loss, so that Colebrook gives Re in closed form.
    const y = Math.sqrt((2 * density * 30 * 0.2 ** 3) / (10 * viscosity ** 2));
    const reynolds = -2 * y * Math.log10(0.0015 / 0.2 / 3.7 + 2.51 / y);
    const flow = (reynolds * viscosity * (Math.PI / 100)) / 0.2;
    expectNear(flowAt(ductOf({ roughnessM: 0.0015 }), 30).massFlowKgPerS, flow);
  });

  it('passes less than either of its sections alone', () => {
    const narrow = { hydraulicDiameterM: 0.15, areaM2: (Math.PI / 4) * 0.0225 };
    const together = flowAt(ductOf({}, narrow), 30).massFlowKgPerS;
    expect(together).toBeLessThan(flowAt(ductOf(narrow), 30).massFlowKgPerS);
    expect(together).toBeLessThan(flowAt(ductOf({}), 30).massFlowKgPerS);
  });

  it('loses three times as much where the friction is multiplied by three', () => {
    const flow = flowAt(ductOf({}), 30);
    expectNear(flowAt(ductOf({ frictionMultiplier: 3 }), 90).massFlowKgPerS, flow.massFlowKgPerS);
  });

  it('carries the air that enters: cold air is heavier and thinner', () => {
    const warm = { temperatureC: 24, densityKgPerM3: 1.188 };
    const cold = { temperatureC: -20, densityKgPerM3: 1.395 };
    const air = { from: warm, to: cold };
    const out = flowAt(ductOf({ lossCoefficient: 3 }), 20, air).massFlowKgPerS;
    const back = flowAt(ductOf({ lossCoefficient: 3 }), -20, air).massFlowKgPerS;
    expect(-back / out).toBeGreaterThan(Math.sqrt(1.395 / 1.188));
    expect(-back / out).toBeLessThan(1.395 / 1.188);
  });

  it.each([
    ['a length below zero', { lengthM: -1 }, 'sections.0.lengthM'],
    ['a diameter of zero', { hydraulicDiameterM: 0 }, 'sections.0.hydraulicDiameterM'],
    ['an area of zero', { areaM2: 0 }, 'sections.0.areaM2'],
    ['a negative roughness', { roughnessM: -1e-5 }, 'sections.0.roughnessM'],
    ['a roughness as wide as the duct', { roughnessM: 0.2 }, 'sections.0.roughnessM'],
    ['a loss coefficient below zero', { lossCoefficient: -0.1 }, 'sections.0.lossCoefficient'],
    [
      'a friction multiplier below one',
      { frictionMultiplier: 0.5 },
      'sections.0.frictionMultiplier',
    ],
    ['a length that is not a number', { lengthM: NaN }, 'sections.0.lengthM'],
  ])('refuses %s', (_, change, field) => {
    expect(checkFlowLaw(ductOf(change))).toMatchObject([
      { code: 'LawParameterOutOfRange', severity: 'error', field },
    ]);
  });

  it('refuses a duct without sections, or with nothing in them that holds air back', () => {
    expect(checkFlowLaw(ductOf())).toMatchObject([{ code: 'DuctWithoutSections' }]);
    expect(checkFlowLaw({ kind: 'duct' } as unknown as DuctDescription)).toMatchObject([
      { code: 'DuctWithoutSections' },
    ]);
    expect(checkFlowLaw(ductOf({ lengthM: 0 }))).toMatchObject([{ code: 'DuctWithoutResistance' }]);
  });

  it('warns, with the section, of a flow or a wall beyond its law', () => {
    const duct = ductOf({}, { hydraulicDiameterM: 0.05, areaM2: 0.002, roughnessM: 0.003 });
    const air = { temperatureC: 20, densityKgPerM3: density };
    expect(flowLawWarnings(duct, 0.1, air)).toMatchObject([
      { code: 'RoughnessBeyondLaw', field: 'sections.1.roughnessM', found: 0.06, most: 0.05 },
    ]);
    // 0.3 kg/s in 0.002 m2 of 1.2041 kg/m3 is 124.6 m/s.
    expect(flowLawWarnings(duct, -0.3, air)).toMatchObject([
      { code: 'VelocityBeyondLaw', field: 'sections.1', unit: 'm/s' },
      { code: 'RoughnessBeyondLaw' },
    ]);
    const wide = ductOf({ hydraulicDiameterM: 40, areaM2: 1200 });
    expect(flowLawWarnings(wide, 1200 * density * 60, air)).toMatchObject([
      { code: 'ReynoldsBeyondLaw', field: 'sections.0' },
    ]);
    expect(flowLawWarnings({ kind: 'fixedFlow', massFlowKgPerS: 9 }, 9, air)).toEqual([]);
  });
});

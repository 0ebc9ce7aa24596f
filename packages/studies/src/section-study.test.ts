import { roomDensity, tightHall } from '../test-data/section-house.js';
import { describe, expect, it } from 'vitest';
import { sectionStudy } from './section-study.js';

describe('the house in section', () => {
  it('balances: what leaves a zone enters it, by volume where all air is alike', () => {
    const { network, question } = tightHall(20);
    const study = sectionStudy(network, question({ hood: 'on' }))!;
    for (const zone of ['hall', 'utility']) {
      const out = study.flows
        .flatMap((flow) => [
          ...(flow.zone === zone ? [flow.volumeFlowM3PerS] : []),
          ...(flow.otherZone === zone ? [-flow.volumeFlowM3PerS] : []),
        ])
        .reduce((sum, flow) => sum + flow, 0);
      // The solver ends where the residual is 1e-9 of the flow; flows that are not drawn are below 1e-6.
      expect(Math.abs(out)).toBeLessThan(1e-5);
    }
    const of = (kind: string): readonly number[] =>
      study.flows.filter(({ role }) => role.kind === kind).map((flow) => flow.volumeFlowM3PerS);
    expect(of('device')).toEqual([expect.closeTo(0.2, 9)]);
    expect(of('make-up')[0]).toBeLessThan(0);
  });

  it('names each path once, with the zone that it leads to', () => {
    const { network, question } = tightHall(20);
    const between = sectionStudy(network, question({ hood: 'on' }))!.flows.filter(
      ({ otherZone }) => otherZone !== undefined,
    );
    expect(between.map(({ role, zone, otherZone }) => [role.kind, zone, otherZone])).toEqual([
      ['opening', 'hall', 'utility'],
      ['door', 'hall', 'utility'],
    ]);
  });

  it('has the neutral level where the two columns of air weigh the same', () => {
    const { network, question } = tightHall(-15);
    const study = sectionStudy(network, question({}))!;
    expect(study.neutralLevels).toHaveLength(2);
    for (const { zone, heightM } of study.neutralLevels) {
      const { pressurePa } = study.pressures.find((each) => each.zone === zone)!;
      // p + (rho_out − rho_in) g h = 0.
      const [inside, outside] = [roomDensity(network), question({}).weather.outdoorAir];
      const difference = (outside.densityKgPerM3 - inside) * 9.80665;
      expect(pressurePa + difference * heightM).toBeCloseTo(0, 6);
    }
  });
});

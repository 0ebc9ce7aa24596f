import { describe, expect, it } from 'vitest';
import { appliance, house, study } from '../test-data/invented-study.js';
import { cautions } from './cautions.js';
import { judge } from './judge.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

function cautionsAt(changePa: number, of = house()): readonly string[] {
  const worstCase = study(of, { changePa });
  return cautions(judge({ house: of, worstCase, limitSet: ventTypeTable }), of);
}

describe('the cautions', () => {
  it('begin with what to do at once', () => {
    expect(cautionsAt(0)[0]).toMatch(
      /^At once, if a carbon monoxide alarm sounds or an appliance spills: stop the appliance, open doors and windows, leave, and call/,
    );
  });

  it('say that this is screening, which test decides, who decides, and what a pressure cannot prove', () => {
    const text = cautionsAt(0).join('\n');
    expect(text).toContain('screening of risk by computation, not a test');
    expect(text).toMatch(
      /combustion-safety test of each appliance.*spillage observed and carbon monoxide measured/,
    );
    expect(text).toContain('Local code and the licensed trade decide');
    expect(text).toMatch(/A pressure limit that is met.*never proves/);
    expect(text).toContain('several have dropped single-pressure limits');
    expect(text).toContain('Have carbon monoxide alarms');
  });

  it('name each appliance beyond its limit once, and none that is not', () => {
    const of = house({ appliances: [appliance(), appliance({ id: 'boiler', kind: 'boiler' })] });
    // −5 Pa is beyond the water heater's −2 Pa and at the boiler's −5 Pa.
    expect(cautionsAt(-5, of)[1]).toMatch(/^Until tested on site, .*: water heater\.$/);
    expect(cautionsAt(0, of).join()).not.toContain('Until tested on site');
  });

  it('name an appliance whose solved flue spills, though its suction be within the limit', () => {
    const of = house();
    const findings = judge({
      house: of,
      worstCase: study(of, { changePa: 0 }),
      limitSet: ventTypeTable,
    });
    expect(
      cautions(findings, of, [{ appliance: 'water heater', withNothingRunning: false }])[1],
    ).toMatch(/^Until tested on site, .*: water heater\.$/);
  });

  it('forbid one whose flue spills with nothing running, with exhaust or without', () => {
    const of = house();
    const findings = judge({
      house: of,
      worstCase: study(of, { changePa: 0 }),
      limitSet: ventTypeTable,
    });
    const told = cautions(findings, of, [{ appliance: 'water heater', withNothingRunning: true }]);
    expect(told[1]).toMatch(/do not use these, with exhaust or without: water heater/);
    expect(told.join(' ')).not.toContain('while any exhaust runs');
  });

  it('do not let the worst state stand for the only one', () => {
    expect(cautionsAt(-5)[1]).toContain('while any exhaust runs');
    expect(cautionsAt(-5)[2]).toMatch(
      /only its worst state.*may be beyond.*assess the house again/,
    );
    expect(cautionsAt(0).join()).not.toContain('worst state');
  });

  it('are the general ones where nothing burns fuel', () => {
    for (const appliances of [[], [appliance({ vent: 'electric' })]]) {
      const said = cautionsAt(0, house({ appliances }));
      expect(said).toHaveLength(3);
      expect(said.join()).toContain('No fuel-burning appliance was described');
    }
  });

  it('never sound like a clearance, whatever was found', () => {
    for (const changePa of [2, 0, -2, -30]) {
      expect(cautionsAt(changePa).join()).not.toMatch(/\b(ok|pass(es|ed)?|safe(ly)?|fine)\b/i);
    }
  });
});

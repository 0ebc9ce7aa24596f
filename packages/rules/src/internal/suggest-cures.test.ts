import type { House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { appliance, device, house, study } from '../../test-data/invented-study.js';
import { suggestCures } from './suggest-cures.js';

/** Cures of the first appliance where this runs in its worst situation. */
function cures(running: Readonly<Record<string, string>>, of: House = house()): readonly string[] {
  const [one] = of.appliances;
  const worst = study(of, { running }).appliances[0]?.largestFall;
  if (one === undefined || worst === undefined) throw new Error('the house has no appliance');
  return suggestCures({ house: of, appliance: one, worst });
}

describe('the cures', () => {
  it('come in the usual order and name what runs, the strongest first', () => {
    expect(cures({ dryer: 'on', hood: 'high' })).toEqual([
      'Replace the dryer with a condensing or heat-pump dryer, which exhausts no air.',
      'Remove, replace or reduce exhaust: the hood at high.',
      'Cap the speed of the hood below high: it also has low and medium.',
      'Interlock the hood and the dryer so that they cannot run together.',
      'Bring in make-up air that opens or starts with the hood and the dryer, into the same room or one joined to it by permanent openings.',
      'Seal the basement from the rest of the house and give it combustion air of its own from outdoors.',
      'Change the water heater to sealed combustion or to electric.',
    ]);
  });

  it('do not name what does not run, nor a speed where it runs at its lowest', () => {
    const text = cures({ hood: 'low' }).join('\n');
    expect(text).not.toContain('dryer');
    expect(text).not.toContain('Cap the speed');
    expect(text).toContain(
      'Interlock the hood so that it cannot run while the water heater fires.',
    );
  });

  it('say the kind of a device whose name does not', () => {
    const of = house({
      devices: [device({ id: 'Ida', kind: 'bath fan', speeds: { on: 0.04 } })],
    });
    expect(cures({ Ida: 'on' }, of)[0]).toBe(
      'Remove, replace or reduce exhaust: the Ida (bath fan).',
    );
  });

  it('count exhaust that follows what runs, at the speed of the same name or its fastest', () => {
    const follower = (id: string, driver: string, speeds: Record<string, number>) =>
      device({ id, kind: 'exhaust fan', speeds, interlock: { driver } });
    const of = house({
      devices: [
        follower('last fan', 'first fan', { boost: 0.02 }),
        follower('first fan', 'hood', { low: 0.01, high: 0.03 }),
        device({ id: 'hood', kind: 'hood', speeds: { low: 0.1, high: 0.4 } }),
      ],
    });
    expect(cures({ hood: 'low' }, of)[0]).toBe(
      'Remove, replace or reduce exhaust: the hood at low, the last fan (exhaust fan) and the first fan (exhaust fan) at low.',
    );
  });

  it('do not ask to interlock what already follows what runs', () => {
    const of = house({
      devices: [
        device({ id: 'hood', kind: 'hood', speeds: { on: 0.2 } }),
        device({
          id: 'booster',
          kind: 'exhaust fan',
          speeds: { on: 0.1 },
          interlock: { driver: 'hood' },
        }),
      ],
    });
    expect(cures({ hood: 'on' }, of)).toContain(
      'Interlock the hood so that it cannot run while the water heater fires.',
    );
  });

  it('leave out a follower whose driver runs at another speed', () => {
    const of = house({
      devices: [
        device({ id: 'hood', kind: 'hood', speeds: { low: 0.1, high: 0.4 } }),
        device({
          id: 'booster',
          kind: 'exhaust fan',
          speeds: { on: 0.1 },
          interlock: { driver: 'hood', speeds: ['high'] },
        }),
      ],
    });
    expect(cures({ hood: 'low' }, of).join()).not.toContain('booster');
    expect(cures({ hood: 'high' }, of).join()).toContain('booster');
  });

  it('ask nothing of supply fans and of dryers that exhaust nothing', () => {
    const of = house({
      devices: [
        device({ id: 'helper', kind: 'supply fan', direction: 'supply', speeds: { on: 0.1 } }),
        device({ id: 'dry', kind: 'condensing dryer', speeds: {} }),
      ],
    });
    expect(cures({ helper: 'on', dry: 'on' }, of)[0]).toMatch(/^No exhaust runs in this situation/);
  });

  it('name a ventilator that takes out more than it brings in', () => {
    const ventilator = {
      id: 'ventilator',
      origin: 'ventilators.ventilator',
      supplyZone: 'living room',
      exhaustZone: 'basement',
      supplyFlowM3PerS: 0.04,
      exhaustFlowM3PerS: 0.05,
      continuous: true,
    };
    const of = house({ ventilators: [ventilator] });
    const sentence = 'Balance the ventilator, which takes out more air than it brings in.';
    expect(cures({ ventilator: 'on' }, of)).toContain(sentence);
    expect(cures({ hood: 'low' }, of)).not.toContain(sentence);
    const balanced = house({ ventilators: [{ ...ventilator, supplyFlowM3PerS: 0.05 }] });
    expect(cures({ ventilator: 'on' }, balanced)).not.toContain(sentence);
  });

  it('ask for more make-up air where there is some already', () => {
    const of = house({
      makeUpOpenings: [
        {
          id: 'make-up',
          origin: 'makeUp',
          zone: 'basement',
          to: { kind: 'outdoors' },
          heightM: 1,
          openLaw: { kind: 'orifice', areaM2: 0.02, dischargeCoefficient: 0.6 },
          duringTest: 'closed',
          interlock: { driver: 'hood' },
        },
      ],
    });
    expect(cures({ hood: 'high' }, of).join('\n')).toContain('Bring in more make-up air');
  });

  it('end with what fits the appliance and its room', () => {
    const last = (given: Parameters<typeof appliance>[0]) =>
      cures({ hood: 'low' }, house({ appliances: [appliance(given)] })).slice(-2);
    expect(last({ zone: 'living room' })[0]).toBe(
      'Enclose the water heater in a room sealed from the rest of the house, with combustion air of its own from outdoors.',
    );
    expect(last({ id: 'hearth', kind: 'fireplace', vent: 'open hearth' })).toEqual([
      expect.stringMatching(/^Bring in make-up air/),
      'Change the hearth to a sealed appliance that takes its combustion air straight from outdoors.',
    ]);
    expect(last({ vent: 'direct vent' })[1]).toBe(
      'Have the air intake and the vent of the water heater checked for tightness.',
    );
  });
});

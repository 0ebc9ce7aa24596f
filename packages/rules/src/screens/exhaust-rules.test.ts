import { describe, expect, it } from 'vitest';
import { appliance, device, house, study } from '../../test-data/invented-study.js';
import {
  fullHouse,
  screen,
  screenedHouse,
  si,
  valueOf,
  verdicts,
} from '../../test-data/screened.js';

describe('net exhaust of the two largest fans', () => {
  it('is 750 cfm against 300 cfm for 2,000 ft², worked by hand', () => {
    const [finding] = screen('two-largest-fans', screenedHouse());
    expect(valueOf(finding, 'net exhaust')).toBeCloseTo(si.cfm(750), 12);
    expect(valueOf(finding, 'allowed')).toBeCloseTo(si.cfm(300), 12);
    expect(valueOf(finding, 'excess')).toBeCloseTo(si.cfm(450), 12);
    expect(finding?.verdict).toBe('beyond the limit');
  });

  it('takes off supply that starts with them, and exactly the limit is near it', () => {
    const supply = device({
      id: 'make-up fan',
      kind: 'supply fan',
      direction: 'supply',
      speeds: { on: si.cfm(450) },
      interlock: { driver: 'hood' },
    });
    const plain = screenedHouse();
    expect(verdicts('two-largest-fans', { ...plain, devices: [...plain.devices, supply] })).toEqual(
      ['near the limit'],
    );
  });

  it('is not meant for a house with sealed or electric appliances', () => {
    const sealed = screenedHouse({ appliances: [appliance({ vent: 'sealed combustion' })] });
    expect(screen('two-largest-fans', sealed)[0]?.applies).toBe('no');
  });
});

describe('make-up air above 400 cfm', () => {
  const rule = 'exhaust-over-400-cfm';

  it('is asked for beside a drawing vent, for each exhaust by itself', () => {
    expect(verdicts(rule, screenedHouse())).toEqual([
      'hood: beyond the limit',
      'dryer: within the limit',
      'bath fan: within the limit',
    ]);
  });

  it('begins above 400 cfm: exactly 400 is near and asks for none', () => {
    const at = (cfm: number) =>
      screenedHouse({
        devices: [device({ id: 'hood', kind: 'hood', speeds: { on: si.cfm(cfm) } })],
      });
    expect(verdicts(rule, at(381))).toEqual(['hood: near the limit']);
    expect(verdicts(rule, at(379))).toEqual(['hood: within the limit']);
    expect(verdicts(rule, at(400))).toEqual(['hood: near the limit']);
    expect(verdicts(rule, at(401))).toEqual(['hood: beyond the limit']);
  });

  it.each([
    'direct vent',
    'sealed combustion',
    'power vented',
    'induced draft',
    'electric',
  ] as const)('is not asked for with a %s appliance, though the older form asks', (vent) => {
    const of = screenedHouse({ appliances: [appliance({ vent })] });
    expect(screen(rule, of).map(({ applies }) => applies)).toEqual(['no']);
    expect(verdicts('hood-over-400-cfm-older', of)).toEqual(['hood: beyond the limit']);
  });

  it('is not asked for where the appliance stands in a garage', () => {
    const plain = screenedHouse();
    const of = {
      ...plain,
      zones: plain.zones.map((zone) =>
        zone.id === 'basement' ? { ...zone, kind: 'garage' as const } : zone,
      ),
    };
    expect(screen(rule, of)[0]?.applies).toBe('no');
  });

  it('is met by a supply fan of about the same flow, and by an opening only as far as it brings in', () => {
    const { house: of, facts } = fullHouse();
    const withFan = (cfm: number) => ({
      ...of,
      makeUpOpenings: [],
      devices: [
        ...of.devices,
        device({
          id: 'make-up fan',
          kind: 'supply fan' as const,
          direction: 'supply' as const,
          speeds: { on: si.cfm(cfm) },
          interlock: { driver: 'hood' },
        }),
      ],
    });
    expect(verdicts(rule, withFan(700))[0]).toBe('hood: within the limit');
    expect(verdicts(rule, withFan(550))[0]).toBe('hood: near the limit');
    expect(verdicts(rule, withFan(500))[0]).toBe('hood: beyond the limit');
    expect(screen(rule, of, { facts })[0]?.give).toEqual([
      'what kitchen make-up brings in: run the worst case',
    ]);
    const typed = study(of);
    const worstCase = {
      ...typed,
      situations: typed.situations.map((one) => ({
        ...one,
        devices: [
          {
            device: 'hood',
            speed: 'high',
            ratedFlowM3PerS: si.cfm(600),
            deliveredFlowM3PerS: si.cfm(500),
            interlocked: false,
          },
        ],
        makeUp: [{ opening: 'kitchen make-up', damper: 'open' as const, flowM3PerS: si.cfm(590) }],
      })),
    };
    expect(verdicts(rule, of, { worstCase })[0]).toBe('hood: near the limit');
  });

  it('is only for what is above 400 or 600 cfm in a local amendment', () => {
    const [drawing] = screen('hood-make-up-local-amendment', screenedHouse());
    expect(valueOf(drawing, 'wanted')).toBeCloseTo(si.cfm(200), 12);
    const sealed = screenedHouse({ appliances: [appliance({ vent: 'direct vent' })] });
    expect(verdicts('hood-make-up-local-amendment', sealed)).toEqual(['hood: near the limit']);
  });
});

describe('dryers', () => {
  it('ask for make-up air above 200 cfm', () => {
    const at = (cfm: number) =>
      screenedHouse({
        devices: [device({ id: 'dryer', kind: 'dryer', speeds: { on: si.cfm(cfm) } })],
      });
    expect(verdicts('dryer-over-200-cfm', at(150))).toEqual(['dryer: within the limit']);
    expect(verdicts('dryer-over-200-cfm', at(225))).toEqual(['dryer: beyond the limit']);
    expect(screen('dryer-over-200-cfm', house({ devices: [] }))[0]?.applies).toBe('no');
  });

  it('in a closet have an opening of 100 in² or more, stated or described', () => {
    const { house: of } = fullHouse();
    const facts = (in2: number) => ({ devices: { dryer: { closetOpeningAreaM2: si.in2(in2) } } });
    const rule = 'dryer-closet-opening';
    expect(verdicts(rule, of, { facts: facts(110) })).toEqual(['dryer: within the limit']);
    expect(verdicts(rule, of, { facts: facts(100) })).toEqual(['dryer: near the limit']);
    expect(verdicts(rule, of, { facts: facts(90) })).toEqual(['dryer: beyond the limit']);
    expect(screen(rule, of)[0]?.give).toHaveLength(1);
    expect(screen(rule, screenedHouse())[0]?.applies).toBe('no');
    const louvre = {
      ...of,
      openings: [
        {
          id: 'louvre',
          origin: 'openings.louvre',
          zone: 'laundry closet',
          to: { kind: 'zone' as const, zone: 'living room' },
          heightM: 1,
          law: { kind: 'orifice' as const, areaM2: si.in2(120), dischargeCoefficient: 0.6 },
          duringTest: 'open' as const,
        },
      ],
    };
    expect(verdicts(rule, louvre)).toEqual(['dryer: within the limit']);
  });

  it('have 35 ft of duct less 5 ft for each mitered right angle of 4 in.', () => {
    const { house: of, facts } = fullHouse();
    const [finding] = screen('dryer-duct-length', of, { facts });
    expect(valueOf(finding, 'allowed')).toBeCloseTo(si.ft(25), 12);
    expect(finding?.verdict).toBe('within the limit');
    const longer = { devices: { dryer: { ...facts.devices?.['dryer'], ductLengthM: si.ft(27) } } };
    expect(verdicts('dryer-duct-length', of, { facts: longer })).toEqual([
      'dryer: beyond the limit',
    ]);
  });

  it('have 14 ft in California, less 2 ft for each right angle beyond two', () => {
    const { house: of } = fullHouse();
    const ductFittings = Array.from({ length: 4 }, () => '4 in. mitered 90' as const);
    const facts = { devices: { dryer: { ductLengthM: si.ft(8), ductFittings } } };
    const [finding] = screen('dryer-duct-length-california', of, { facts });
    expect(valueOf(finding, 'allowed')).toBeCloseTo(si.ft(10), 12);
    expect(finding?.verdict).toBe('within the limit');
  });
});

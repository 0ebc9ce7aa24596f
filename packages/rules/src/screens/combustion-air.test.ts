import type { House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { appliance, house } from '../../test-data/invented-study.js';
import { screen, si, valueOf, verdicts } from '../../test-data/screened.js';
import { freeAreaOf } from './louvre-free-area.js';

/** A basement of a stated volume with a furnace of 100,000 Btu/h and a water heater of 40,000 Btu/h. */
function basement(volumeFt3: number, fanAssisted = true) {
  const plain = house({
    appliances: [
      appliance({
        id: 'furnace',
        kind: 'furnace',
        vent: fanAssisted ? 'fan assisted' : 'natural draft',
        inputW: si.btuPerHour(100000),
      }),
      appliance({ inputW: si.btuPerHour(40000) }),
    ],
    devices: [],
  });
  return {
    ...plain,
    zones: plain.zones.map((zone) =>
      zone.id === 'basement' ? { ...zone, volumeM3: si.ft3(volumeFt3) } : zone,
    ),
  };
}

const known = (perHour: number) => ({ facts: { naturalAirChangePerS: perHour / 3600 } });
const openings = (...areasIn2: number[]) => ({
  facts: {
    zones: {
      basement: {
        combustionOpenings: areasIn2.map((in2) => ({
          to: 'outdoors' as const,
          areaM2: si.in2(in2),
        })),
      },
    },
    appliances: {
      furnace: { ventConnectorAreaM2: si.in2(28) },
      'water heater': { ventConnectorAreaM2: si.in2(13) },
    },
  },
});

describe('combustion air from indoors', () => {
  it('is 50 ft³ for each 1,000 Btu/h, in the volume of the room alone', () => {
    const [finding] = screen('combustion-air-volume', basement(3600));
    expect(valueOf(finding, 'required volume')).toBeCloseTo(si.ft3(7000), 9);
    expect(finding?.verdict).toBe('beyond the limit');
    expect(verdicts('combustion-air-volume', basement(7000))).toEqual(['basement: near the limit']);
    expect(verdicts('combustion-air-volume', basement(8000))).toEqual([
      'basement: within the limit',
    ]);
  });

  it('counts rooms that permanent openings join, and no room behind a door', () => {
    const of = basement(3600);
    const joined = {
      ...of,
      openings: [
        {
          id: 'grille',
          origin: 'openings.grille',
          zone: 'living room',
          to: { kind: 'zone' as const, zone: 'basement' },
          heightM: 1,
          law: { kind: 'orifice' as const, areaM2: si.in2(200), dischargeCoefficient: 0.6 },
          duringTest: 'open' as const,
        },
      ],
    };
    const volume = valueOf(screen('combustion-air-volume', joined)[0], 'volume');
    expect(volume).toBeCloseTo(si.ft3(3600) + 180, 9);
  });

  it('may not use the standard method where the air change is known to be below 0.40', () => {
    expect(screen('combustion-air-volume', basement(8000), known(0.39))[0]?.applies).toBe('no');
    expect(screen('combustion-air-volume', basement(8000), known(0.4))[0]?.applies).toBe('yes');
  });

  it('by the known rate is 21 and 15 ft³ over the air change, which counts up to 0.60', () => {
    // By hand, 0.5 an hour: 21 × 40/0.5 + 15 × 100/0.5 = 1,680 + 3,000 = 4,680 ft³.
    const [half] = screen('combustion-air-known-rate', basement(5000), known(0.5));
    expect(valueOf(half, 'required volume')).toBeCloseTo(si.ft3(4680), 9);
    // At 0.9 as at 0.6: 21 × 40/0.6 + 15 × 100/0.6 = 1,400 + 2,500 = 3,900 ft³.
    const [fast] = screen('combustion-air-known-rate', basement(5000), known(0.9));
    expect(valueOf(fast, 'required volume')).toBeCloseTo(si.ft3(3900), 9);
    // Without a fan: 21 × 140/0.5 = 5,880 ft³.
    const [plain] = screen('combustion-air-known-rate', basement(5000, false), known(0.5));
    expect(valueOf(plain, 'required volume')).toBeCloseTo(si.ft3(5880), 9);
    expect(screen('combustion-air-known-rate', basement(5000))[0]?.give).toHaveLength(1);
  });

  it('asks for inputs, and is not meant for sealed appliances', () => {
    const unstated = house({ appliances: [appliance()] });
    expect(screen('combustion-air-volume', unstated)[0]?.give).toEqual([
      'the input of the water heater',
    ]);
    const sealed = house({ appliances: [appliance({ vent: 'sealed combustion' })] });
    expect(screen('combustion-air-volume', sealed)[0]?.applies).toBe('no');
  });

  it('through two openings of 1 in² for each 1,000 Btu/h, or 2 in² to another storey', () => {
    const to = (
      where: 'room on the same storey' | 'room on another storey',
      ...areasIn2: number[]
    ) => ({
      facts: {
        zones: {
          basement: {
            combustionOpenings: areasIn2.map((in2) => ({ to: where, areaM2: si.in2(in2) })),
          },
        },
      },
    });
    const rule = 'combustion-air-indoor-openings';
    expect(verdicts(rule, basement(1), to('room on the same storey', 300))).toEqual([
      'basement: beyond the limit',
    ]);
    expect(verdicts(rule, basement(1), to('room on the same storey', 160, 150))).toEqual([
      'basement: within the limit',
    ]);
    expect(verdicts(rule, basement(1), to('room on another storey', 280))).toEqual([
      'basement: near the limit',
    ]);
    expect(verdicts(rule, basement(1), to('room on another storey', 200))).toEqual([
      'basement: beyond the limit',
    ]);
  });
});

describe('combustion air from outdoors', () => {
  const rule = 'combustion-air-outdoor-openings';

  it('through one opening is 1 in² for each 3,000 Btu/h, and no less than the connectors', () => {
    const [finding] = screen(rule, basement(1), openings(60));
    expect(valueOf(finding, 'by input')).toBeCloseTo(si.in2(140 / 3), 12);
    expect(valueOf(finding, 'by vent connectors')).toBeCloseTo(si.in2(41), 12);
    expect(finding?.verdict).toBe('within the limit');
    expect(verdicts(rule, basement(1), openings(40))).toEqual(['basement: beyond the limit']);
  });

  it('through two openings is 1 in² for each 4,000 Btu/h, the smaller one counts', () => {
    expect(verdicts(rule, basement(1), openings(60, 37))).toEqual(['basement: within the limit']);
    expect(verdicts(rule, basement(1), openings(60, 30))).toEqual(['basement: beyond the limit']);
  });

  it('lacks connectors only where they could change the verdict', () => {
    const { facts } = openings(60);
    const without = { facts: { zones: facts.zones } };
    expect(screen(rule, basement(1), without)[0]?.verdict).toBe('not judged');
    const small = { facts: { zones: openings(20).facts.zones } };
    expect(screen(rule, basement(1), small)[0]?.verdict).toBe('beyond the limit');
  });

  it('counts the free area of a louvre: a quarter of wood, three quarters of metal', () => {
    const louvre = (cover: 'none' | 'wood louvre' | 'metal louvre') =>
      freeAreaOf({ to: 'outdoors', areaM2: 0.04, cover });
    expect(louvre('none')).toBe(0.04);
    expect(louvre('wood louvre')).toBe(0.01);
    expect(louvre('metal louvre')).toBe(0.03);
    expect(
      freeAreaOf({ to: 'outdoors', areaM2: 0.04, cover: 'wood louvre', freeAreaM2: 0.02 }),
    ).toBe(0.02);
  });

  it('by a fan is 0.35 cfm for each 1,000 Btu/h and the exhaust of the room', () => {
    const supply = (cfm: number) => ({
      facts: { zones: { basement: { combustionSupplyM3PerS: si.cfm(cfm) } } },
    });
    const [finding] = screen('combustion-air-mechanical', basement(1), supply(60));
    // 0.35 × 140 = 49 cfm.
    expect(valueOf(finding, 'least supply')).toBeCloseTo(si.cfm(49), 12);
    expect(finding?.verdict).toBe('within the limit');
    expect(verdicts('combustion-air-mechanical', basement(1), supply(40))).toEqual([
      'basement: beyond the limit',
    ]);
  });
});

/** Openings of the basement for combustion air as a house file describes them. Invented. */
function airOpening(
  id: string,
  to: House['openings'][number]['to'],
  law: House['openings'][number]['law'],
): House['openings'][number] {
  const combustionAir = id.endsWith('low') ? ('low' as const) : ('high' as const);
  const heightM = combustionAir === 'low' ? 0.2 : 2;
  return {
    ...{ id, origin: `combustionAir.${id}`, zone: 'basement', to, heightM, combustionAir, law },
    duringTest: 'open',
  };
}

function holeOf(in2: number) {
  return { kind: 'orifice', areaM2: si.in2(in2), dischargeCoefficient: 0.6 } as const;
}

describe('openings for combustion air that the house file describes', () => {
  const rule = 'combustion-air-outdoor-openings';
  const two = (lowIn2: number, to: House['openings'][number]['to'] = { kind: 'outdoors' }) => ({
    ...basement(3600),
    openings: [airOpening('air high', to, holeOf(60)), airOpening('air low', to, holeOf(lowIn2))],
  });

  it('are judged as those of the facts are, which come before them', () => {
    // 140,000 Btu/h asks for 35 in² each.
    expect(verdicts(rule, two(38))).toEqual(['basement: within the limit']);
    expect(verdicts(rule, two(30))).toEqual(['basement: beyond the limit']);
    expect(verdicts(rule, two(30), openings(60, 37))).toEqual(['basement: within the limit']);
    // 75 cm² each of two up to 50 kW; 38 in² are 245 cm².
    expect(verdicts('german-opening', two(38))).toEqual(['basement: within the limit']);
  });

  it('take the place of the volume of the room', () => {
    expect(screen('combustion-air-volume', two(38))[0]?.applies).toBe('no');
    expect(screen('combustion-air-volume', basement(3600))[0]?.applies).toBe('yes');
  });

  it('count by the narrowest part, through a duct that lies by twice the area', () => {
    const section = {
      lengthM: 4,
      hydraulicDiameterM: 0.2,
      areaM2: si.in2(50),
      roughnessM: 0.0001,
      frictionMultiplier: 1,
      lossCoefficient: 1,
    };
    const ducted = {
      ...basement(3600),
      openings: ['air high', 'air low'].map((id) =>
        airOpening(id, { kind: 'outdoors' }, { kind: 'duct', sections: [section] }),
      ),
    };
    const [finding] = screen(rule, ducted);
    expect(valueOf(finding, 'opening to outdoors')).toBeCloseTo(si.in2(50), 12);
    // 1 in² for each 2,000 Btu/h.
    expect(valueOf(finding, 'each of two')).toBeCloseTo(si.in2(70), 12);
    expect(finding?.verdict).toBe('beyond the limit');
  });

  it('are not judged where their size is not known, nor into a neighbour', () => {
    const byFlow = { kind: 'powerLaw', coefficientM3PerSPaN: 0.01, exponent: 0.5 } as const;
    const unsized = {
      ...two(38),
      openings: [airOpening('air high', { kind: 'outdoors' }, byFlow)],
    };
    expect(screen(rule, unsized)[0]?.give).toEqual([
      'its openings to outdoors for combustion air, if it has any',
    ]);
    const beside = two(38, { kind: 'surrounding', surrounding: 'shop' });
    expect(screen(rule, beside)[0]?.verdict).toBe('not judged');
  });

  it('into the attic count as outdoors, and lend the room none of the volume of the attic', () => {
    const withAttic = (of: House): House => ({
      ...of,
      zones: [...of.zones, { ...of.zones[0]!, id: 'attic', kind: 'attic', volumeM3: 300 }],
    });
    expect(verdicts(rule, withAttic(two(38, { kind: 'zone', zone: 'attic' })))).toEqual([
      'basement: within the limit',
    ]);
    const [high] = two(38, { kind: 'zone', zone: 'attic' }).openings;
    const { combustionAir: _, ...plain } = high!;
    const hatch = withAttic({ ...basement(3600), openings: [plain] });
    expect(valueOf(screen('combustion-air-volume', hatch)[0], 'volume')).toBeCloseTo(
      si.ft3(3600),
      9,
    );
    expect(screen('combustion-air-indoor-openings', hatch)[0]?.verdict).toBe('not judged');
  });
});

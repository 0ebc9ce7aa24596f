import { describe, expect, it } from 'vitest';
import { appliance, device, house } from '../../test-data/invented-study.js';
import {
  fullHouse,
  screen,
  screenedHouse,
  si,
  valueOf,
  verdicts,
} from '../../test-data/screened.js';

const full = fullHouse();

describe('make-up air', () => {
  it('enters the room of its exhaust or one joined to it by openings as large', () => {
    const rule = 'make-up-outlet-room';
    const at = (zone: string, grilleM2?: number) => ({
      ...full.house,
      makeUpOpenings: full.house.makeUpOpenings.map((one) => ({ ...one, zone })),
      openings:
        grilleM2 === undefined
          ? []
          : [
              {
                id: 'grille',
                origin: 'openings.grille',
                zone: 'basement',
                to: { kind: 'zone' as const, zone: 'living room' },
                heightM: 1,
                law: { kind: 'orifice' as const, areaM2: grilleM2, dischargeCoefficient: 0.6 },
                duringTest: 'open' as const,
              },
            ],
    });
    // The hood stands in the basement of this house; its make-up opening has 0.05 m².
    expect(verdicts(rule, at('basement'))).toEqual(['kitchen make-up: within the limit']);
    expect(verdicts(rule, at('living room'))).toEqual(['kitchen make-up: beyond the limit']);
    expect(verdicts(rule, at('living room', 0.04))).toEqual(['kitchen make-up: beyond the limit']);
    expect(verdicts(rule, at('living room', 0.06))).toEqual(['kitchen make-up: within the limit']);
  });

  it('has a gravity damper that opens at 0.01 in. w.c., which is 2.49 Pa and not 3', () => {
    const rule = 'passive-damper-rating';
    const rated = (designPressurePa: number) => ({
      facts: { makeUp: { 'kitchen make-up': { damper: 'gravity' as const, designPressurePa } } },
    });
    expect(verdicts(rule, full.house, rated(2.3))).toEqual(['kitchen make-up: within the limit']);
    expect(verdicts(rule, full.house, rated(2.49))).toEqual(['kitchen make-up: near the limit']);
    expect(verdicts(rule, full.house, rated(3))).toEqual(['kitchen make-up: beyond the limit']);
    const electric = { facts: { makeUp: { 'kitchen make-up': { damper: 'electric' as const } } } };
    expect(screen(rule, full.house, electric)[0]?.applies).toBe('no');
    expect(screen(rule, full.house)[0]?.applies).toBe('unknown');
  });

  it('is taken in 10 ft from sources, or 3 ft below them', () => {
    const near = (distanceFt: number, aboveFt: number) => ({
      facts: {
        intakes: {
          'kitchen make-up': [
            { name: 'flue', distanceM: si.ft(distanceFt), aboveIntakeM: si.ft(aboveFt) },
          ],
        },
      },
    });
    const at = (distanceFt: number, aboveFt: number) =>
      screen('intake-separation', full.house, near(distanceFt, aboveFt))[0]?.verdict;
    expect(at(12, 0)).toBe('within the limit');
    expect(at(5, 4)).toBe('within the limit');
    expect(at(5, 2)).toBe('beyond the limit');
    expect(at(5, -4)).toBe('beyond the limit');
  });
});

describe('vents', () => {
  it('stand 10 ft from a return inlet', () => {
    expect(verdicts('return-near-draft-hood', full.house, { facts: full.facts })).toEqual([
      'water heater: beyond the limit',
      'stove: within the limit',
    ]);
  });

  it('left alone have a flue of no more than 7 times the draft-hood outlet', () => {
    const [finding] = screen('orphaned-flue-area', full.house, { facts: full.facts });
    expect(valueOf(finding, 'largest flue')).toBeCloseTo(si.in2(49), 12);
    expect(finding?.verdict).toBe('beyond the limit');
    const shared = screenedHouse({
      appliances: [
        appliance({ sharesVentWith: ['furnace'] }),
        appliance({ id: 'furnace', kind: 'furnace' }),
      ],
    });
    expect(screen('orphaned-flue-area', shared)[0]?.applies).toBe('no');
    // Without facts the flue that the house file describes stands for them: 64 in² over 12.6 in².
    const [heater] = full.house.appliances;
    const section = { areaM2: si.in2(64) } as const;
    const flue = { chimney: [section], connector: [{ areaM2: si.in2(12.6) }] };
    const described = {
      ...full.house,
      appliances: [
        { ...heater!, flue: flue as unknown as NonNullable<typeof heater>['flue'] & object },
      ],
    };
    const [derived] = screen('orphaned-flue-area', described);
    expect(derived?.arithmetic.find(({ label }) => label === 'ratio')?.value).toBe('5.1');
    expect(derived?.verdict).toBe('within the limit');
  });

  it('are warmer at the top than the dew point of their gas', () => {
    const at = (flueExitTemperatureC: number) =>
      verdicts('flue-exit-dew-point', screenedHouse(), {
        facts: { appliances: { 'water heater': { flueExitTemperatureC, flueDewPointC: 50 } } },
      });
    expect(at(60)).toEqual(['water heater: within the limit']);
    expect(at(52)).toEqual(['water heater: near the limit']);
    expect(at(40)).toEqual(['water heater: beyond the limit']);
  });

  it('of hearths take air by rules of thumb that no limit is for', () => {
    const [finding] = screen('hearth-air', full.house);
    expect(finding?.subject).toBe('stove');
    expect(finding?.arithmetic).toHaveLength(2);
    expect(finding?.verdict).toBe('not judged');
  });
});

describe('alarms', () => {
  it('are asked for, and a room without one is named beyond', () => {
    expect(verdicts('co-alarms', full.house, { facts: full.facts })).toEqual(['beyond the limit']);
    expect(screen('co-alarms', full.house)[0]?.give).toHaveLength(2);
    expect(screen('co-alarms', house({ appliances: [] }))[0]?.applies).toBe('no');
  });
});

describe('Canadian rules', () => {
  it('ask for supply with all exhaust beside a drawing vent, else above 75 L/s', () => {
    expect(verdicts('canada-make-up-interlock', screenedHouse())).toEqual([
      'hood: beyond the limit',
      'dryer: beyond the limit',
      'bath fan: beyond the limit',
    ]);
    const sealed = screenedHouse({ appliances: [] });
    // 150 cfm are 70.8 L/s.
    expect(verdicts('canada-make-up-interlock', sealed)).toEqual(['hood: beyond the limit']);
  });

  it('ask for a venting test by exhaust, year and fireplace', () => {
    const of = (litresPerS: number, fireplace = false) =>
      house({
        appliances: fireplace
          ? [appliance({ kind: 'fireplace', vent: 'open hearth', fuel: 'wood' })]
          : [appliance()],
        devices: [device({ id: 'fan', kind: 'exhaust fan', speeds: { on: litresPerS / 1000 } })],
      });
    const at = (litresPerS: number, builtInYear?: number) =>
      screen('canada-venting-test', of(litresPerS), {
        facts: builtInYear === undefined ? {} : { builtInYear },
      })[0]?.verdict;
    expect(at(100, 2001)).toBe('beyond the limit');
    expect(at(60, 2001)).toBe('within the limit');
    expect(at(100, 1980)).toBe('beyond the limit');
    expect(at(100, 1960)).toBe('within the limit');
    expect(at(140, 1960)).toBe('beyond the limit');
    expect(at(100)).toBe('beyond the limit');
    const stuccoed = { facts: { stuccoed: true, builtInYear: 1960 } };
    expect(screen('canada-venting-test', of(100), stuccoed)[0]?.verdict).toBe('beyond the limit');
    expect(screen('canada-venting-test', of(10, true))[0]?.verdict).toBe('beyond the limit');
  });

  it('give solid fuel an opening of half its flue collar', () => {
    const [finding] = screen('hearth-opening-canada', full.house, { facts: full.facts });
    expect(valueOf(finding, 'least')).toBeCloseTo(si.in2(14), 12);
    expect(finding?.verdict).toBe('beyond the limit');
  });

  it('limit the whole house only where a study was run', () => {
    expect(screen('canada-house-limits', screenedHouse())[0]?.give).toEqual([
      'a pressure: run the worst case',
    ]);
  });
});

describe('British rules', () => {
  it('vent a room with open-flued gas above 7 kW by 5 cm² a kW', () => {
    const of = screenedHouse({ appliances: [appliance({ inputW: 12000 })] });
    const vent = (cm2: number) => ({
      facts: {
        zones: {
          basement: { combustionOpenings: [{ to: 'outdoors' as const, areaM2: cm2 / 10000 }] },
        },
      },
    });
    const rule = 'british-vent-for-open-flue';
    expect(valueOf(screen(rule, of, vent(30))[0], 'vent')).toBeCloseTo(0.0025, 12);
    expect(verdicts(rule, of, vent(30))).toEqual(['basement: within the limit']);
    expect(verdicts(rule, of, vent(20))).toEqual(['basement: beyond the limit']);
    const small = screenedHouse({ appliances: [appliance({ inputW: 6000 })] });
    expect(screen(rule, small)[0]?.applies).toBe('no');
  });
});

describe('German rules', () => {
  const of = screenedHouse({ appliances: [appliance({ inputW: 24000 })] });

  it('ask for 4 m³ a kW in a room that opens to outdoors', () => {
    const facts = (opensToOutdoors: boolean) => ({
      facts: { zones: { basement: { opensToOutdoors } } },
    });
    // 24 kW: 96 m³; the basement has 180 m³.
    expect(verdicts('german-room-volume', of, facts(true))).toEqual(['basement: within the limit']);
    expect(verdicts('german-room-volume', of, facts(false))).toEqual([
      'basement: beyond the limit',
    ]);
    const large = screenedHouse({ appliances: [appliance({ inputW: 40000 })] });
    expect(screen('german-room-volume', large)[0]?.applies).toBe('no');
  });

  it('ask for 1.6 m³/h a kW at 4 Pa, from the tested leakage', () => {
    const [finding] = screen('german-combustion-air', of);
    // 24 × 1.6 = 38.4 m³/h; 0.15 m³/s × (4/50)^0.65 = 0.02905 m³/s = 104.6 m³/h, by hand.
    expect(valueOf(finding, 'wanted')).toBeCloseTo(38.4 / 3600, 12);
    expect(Math.abs(Number(valueOf(finding, 'leakage at 4 Pa')) - 0.02905)).toBeLessThan(0.00001);
    expect(finding?.verdict).toBe('within the limit');
  });

  it('are met by one opening of 150 cm² or two of 75 cm²', () => {
    const built = (...cm2: number[]) => ({
      facts: {
        zones: {
          basement: {
            combustionOpenings: cm2.map((one) => ({
              to: 'outdoors' as const,
              areaM2: one / 10000,
            })),
          },
        },
      },
    });
    expect(verdicts('german-opening', of, built(160))).toEqual(['basement: within the limit']);
    expect(verdicts('german-opening', of, built(80, 80))).toEqual(['basement: within the limit']);
    expect(verdicts('german-opening', of, built(140))).toEqual(['basement: beyond the limit']);
    expect(verdicts('german-opening', of, built())).toEqual(['basement: beyond the limit']);
  });
});

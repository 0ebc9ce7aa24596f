import { compileHouse, type House } from '@evendraft/house';
import type { AirFacts } from '@evendraft/rules';
import { motorizedMakeUp, poweredMakeUp } from '@evendraft/studies';
import { beforeAll, describe, expect, it } from 'vitest';
import { inventedRow } from '../../test-data/invented-row.js';
import { airStudy, type AirStudy } from './air-study.js';
import { judgeAir } from './judge-air.js';

const zonedFile = {
  exhaust: { hood: { zone: 'main', low: '200 cfm', high: '600 cfm' } },
  appliances: { 'water heater': { vent: 'electric', zone: 'basement' } },
  zones: {
    main: { kind: 'living', area: '1000 ft2', floorHeight: '0 ft', height: '8 ft' },
    basement: { kind: 'basement', area: '1000 ft2', floorHeight: '-8 ft', height: '8 ft' },
    garage: { kind: 'garage', area: '400 ft2', floorHeight: '0 ft', height: '8 ft' },
  },
  doors: {
    stair: { between: ['main', 'basement'] },
    'garage door': { between: ['main', 'garage'], positions: ['shut'] },
  },
  openings: { 'garage gaps': { zone: 'garage', area: '200 in2' } },
  weather: [{ name: 'cold', outdoorTemperature: '-10 C' }],
};
const zoned = inventedRow(zonedFile);

async function judged(house: House, facts: AirFacts = {}) {
  const result = compileHouse(house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const study: AirStudy = await airStudy(result.compiled);
  return { study, findings: judgeAir(result.compiled, study, facts) };
}

const si = (of: { readonly value: string | { readonly si: number } } | undefined): number =>
  typeof of?.value === 'object' ? of.value.si : Number.NaN;

describe('the air of a house beside its appliances', () => {
  let all: Awaited<ReturnType<typeof judged>>;
  beforeAll(async () => {
    all = await judged(zoned);
  }, 60_000);
  const of = (rule: string) => all.findings.filter((finding) => finding.rule === rule);
  const number = (rule: string, label: string) =>
    si(of(rule)[0]?.arithmetic.find((line) => line.label === label));

  it('judges suction on the ground by the lowest pressure of the basement', () => {
    const basement = all.study.range.zones.find(({ zone }) => zone === 'basement')!;
    expect(of('soil-gas-suction').map(({ subject }) => subject)).toEqual(['basement']);
    expect(number('soil-gas-suction', 'pressure')).toBe(basement.lowest.pressurePa);
    expect(of('soil-gas-suction')[0]!.verdict).toBe('beyond the limit');
  });

  it('judges the wall of the garage by the deepest difference', () => {
    const [finding] = of('garage-wall');
    expect(finding!.subject).toBe('main');
    expect(number('garage-wall', 'pressure')).toBeLessThan(0);
    expect(finding!.verdict).toBe('beyond the limit');
  });

  it('judges doors both ways where the swing is not given, and one way where it is', async () => {
    const garageDoor = of('door-open').filter(({ subject }) => subject === 'garage door');
    expect(garageDoor).toHaveLength(2);
    const swung = await judged(zoned, { doors: { 'garage door': { opensInto: 'garage' } } });
    const [only, ...more] = swung.findings.filter(
      ({ rule, subject }) => rule === 'door-open' && subject === 'garage door',
    );
    // The garage stands higher, so that the door that swings into it is held shut and never flies open.
    expect(si(only!.arithmetic.find(({ label }) => label === 'pressure'))).toBeGreaterThan(0);
    expect(only!.notes.join(' ')).toContain('it sticks');
    expect(more.every(({ notes }) => notes.join(' ').includes('flies open'))).toBe(true);
  });

  it('asks for the climate, and judges powered make-up air that pushes in a very cold one', async () => {
    expect(of('net-flow-by-climate')[0]).toMatchObject({
      applies: 'unknown',
      verdict: 'not judged',
      give: ['the climate: hot and humid, very cold, or other'],
    });
    const pushed = poweredMakeUp(zoned, { zone: 'main', follows: 'hood', shortfall: 0 });
    const house = pushed.houseWith(0.5);
    const cold = await judged(house, { climate: 'very cold' });
    const net = cold.findings.find(({ rule }) => rule === 'net-flow-by-climate')!;
    expect(net.verdict).toBe('beyond the limit');
    expect(si(net.arithmetic.find(({ label }) => label === 'net exhaust'))).toBeLessThan(-0.1);
    const humid = await judged(zoned, { climate: 'hot and humid' });
    expect(humid.findings.find(({ rule }) => rule === 'net-flow-by-climate')!.verdict).toBe(
      'beyond the limit',
    );
  });

  it('judges the outlet of a fan by its face, its distance and its temperature', async () => {
    const fed = inventedRow({
      ...zonedFile,
      supply: {
        tempered: {
          kind: 'supply fan',
          zone: 'main',
          flow: '300 cfm',
          interlock: 'hood',
          faceArea: '1 ft2',
          diffuser: { kind: 'grille', distanceToHood: '9.4 ft', airTemperature: '55 F' },
        },
      },
    });
    const { findings } = await judged(fed);
    const own = findings.filter(({ subject }) => subject === 'tempered');
    const jet = own.find(({ rule }) => rule === 'make-up-jet-at-hood')!;
    // 300 cfm through 1 ft² is 300 fpm; a grille's jet has 4.7/9.4 of it left at 9.4 ft, 150 fpm or 0.762 m/s.
    const arriving = si(jet.arithmetic.find(({ label }) => label === 'velocity at the hood'));
    expect(arriving / 0.762).toBeCloseTo(1, 1);
    expect(jet.verdict).toBe('beyond the limit');
    expect(own.find(({ rule }) => rule === 'velocity-at-a-diffuser')!.verdict).toBe(
      'within the limit',
    );
    expect(own.find(({ rule }) => rule === 'velocity-at-the-hood')).toBeUndefined();
    expect(own.find(({ rule }) => rule === 'diffuser-temperature')!.verdict).toBe(
      'within the limit',
    );
    // Within 12 ft and not turned away.
    expect(own.find(({ rule }) => rule === 'diffuser-direction')!.verdict).toBe('beyond the limit');
    const own50 = await judged(fed, { largestVelocitiesMPerS: { 'at the hood': 1 } });
    const replaced = own50.findings.find(({ rule }) => rule === 'make-up-jet-at-hood')!;
    expect(replaced.verdict).toBe('within the limit');
    expect(replaced.source.document).toBe('given by the caller');
  });

  it('judges the velocity of make-up air at the hood and in its duct, and the flow of the hood', async () => {
    const duct = { zone: 'main', run: { lengthM: 3, elbows: 2 } };
    const fed = motorizedMakeUp(zoned, { ...duct, opensWith: { driver: 'hood' } }).houseWith(0.2);
    const { findings } = await judged(fed, {
      hoods: { hood: { widthM: 0.9, place: 'at a wall', burnerInputW: 12_000 } },
    });
    const speed = (rule: string) =>
      si(
        findings
          .find((finding) => finding.rule === rule)
          ?.arithmetic.find(({ label }) => label === 'velocity'),
      );
    expect(speed('velocity-at-the-hood')).toBeGreaterThan(0.38);
    // Damper and duct have one area.
    expect(speed('velocity-in-a-quiet-duct')).toBeCloseTo(speed('velocity-at-the-hood'), 9);
    const flow = findings.filter(({ rule }) => rule.startsWith('hood-flow-by'));
    expect(flow.map(({ verdict }) => verdict)).toEqual([
      expect.stringContaining('the limit'),
      expect.stringContaining('the limit'),
      'not judged',
    ]);
  });
});

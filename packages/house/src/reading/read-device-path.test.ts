import { solveNetwork, linkReading } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from '../compile-house.js';
import type { Device, House } from '../house.js';
import { parseHouse } from '../parse-house.js';

const file = {
  evendraft: 1,
  name: 'Synthetic',
  floorArea: '200 m2',
  ceilingHeight: '2.5 m',
  airtightness: '2000 L/s at 50 Pa',
  indoorTemperature: '20 C',
  weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
};

function read(parts: object): House {
  const result = parseHouse({ ...file, ...parts });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

function device(given: object): Device {
  return read({ exhaust: { hood: given } }).devices[0]!;
}

/** Flow of the hood and suction of the house in still weather. */
function run(given: object, speed = 'on') {
  const house = read({ exhaust: { hood: given } });
  const result = compileHouse(house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const { compiled } = result;
  const { scenario } = houseScenario(compiled, {
    state: { running: { hood: speed }, doors: {} },
    weather: houseWeather(house, house.weathers[0]!),
    airtightnessCase: 0,
  });
  const balance = solveNetwork(compiled.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  const { volumeFlowM3PerS } = linkReading(compiled.network, balance, `device/hood/${speed}`);
  return { flow: volumeFlowM3PerS, suctionPa: -(balance.pressuresPa[0] ?? Number.NaN) };
}

const bare = { flow: '300 L/s', ratingPressure: '60 Pa', shutOffPressure: '200 Pa' };

/** Loss of 12 m of 250 mm duct of 0.09 mm roughness with K = 3, by a plain Colebrook iteration. */
function ductLoss(flow: number): number {
  const speed = flow / ((Math.PI / 4) * 0.25 ** 2);
  const reynolds = (1.2041 * speed * 0.25) / 1.8134e-5;
  let root = 8;
  for (let i = 0; i < 50; i += 1) {
    root = -2 * Math.log10(0.00009 / 0.25 / 3.7 + (2.51 * root) / reynolds);
  }
  return (12 / 0.25 / root ** 2 + 3) * 0.5 * 1.2041 * speed ** 2;
}

const duct = {
  diameter: '250 mm',
  length: '12 m',
  roughness: '0.09 mm',
  fittings: { any: { loss: 1.5, count: 2 } },
  entry: 'none',
  exit: 'none',
};

describe('a fan with its duct', () => {
  it.each(['in hood', 'remote'])(
    '%s: meets fan, duct and house at the operating point found by hand',
    (blower) => {
      const { flow, suctionPa } = run({ ...bare, blower, duct, damper: 'none' });
      // The fan's rise, P_so - (P_so - P_r) (Q / Q_r)^2, is what the duct and the house take.
      const rise = 200 - (200 - 60) * (flow / 0.3) ** 2;
      // The monotone cubic between the points of the curve keeps within 0.5 % of the free flow.
      expect(Math.abs(rise - ductLoss(flow) - suctionPa)).toBeLessThan(0.5);
      expect(flow).toBeGreaterThan(0.2);
      expect(flow).toBeLessThan(0.3);
    },
  );

  it('sits inline between two ducts, each of which takes its part', () => {
    const half = { ...duct, length: '6 m', fittings: { any: { loss: 1.5 } } };
    const inline = { ...bare, blower: 'inline', inletDuct: half, duct: half, damper: 'none' };
    const whole = run({ ...bare, blower: 'remote', duct, damper: 'none' });
    expect(run(inline).flow).toBeCloseTo(whole.flow, 9);
  });

  it('moves less at its lower speeds by the fan laws, against the same duct', () => {
    const speeds = { low: '100 L/s', high: '300 L/s' };
    const three = { ...bare, flow: undefined, speeds, duct, damper: 'none' };
    const low = run(three, 'low').flow;
    const rise = 200 / 9 - (200 - 60) * (low / 0.3) ** 2;
    expect(Math.abs(rise - ductLoss(low) - run(three, 'low').suctionPa)).toBeLessThan(0.1);
    // Friction falls a little less than the square, so the flow a little more than the speed.
    expect(run(three, 'high').flow / low).toBeGreaterThan(3);
    expect(run(three, 'high').flow / low).toBeLessThan(3.1);
  });

  it('is a point of the bare fan with a duct, and of the installed device without one', () => {
    const assumed = (given: object): readonly string[] =>
      read({ exhaust: { hood: given } }).assumptions.map(({ what }) => what);
    expect(assumed({ ...bare, duct })).toContain('rated flow');
    expect(assumed({ ...bare, duct })).not.toContain('duct');
    expect(assumed(bare)).toContain('duct');
    expect(run(bare).flow).toBeGreaterThan(run({ ...bare, duct, damper: 'none' }).flow);
  });

  it('loses what its lint screen and damper take, and gains what a booster fan gives', () => {
    const alone = run({ ...bare, duct, damper: 'none' }).flow;
    const damper = { kind: 'motorized', loss: 1.8 };
    expect(run({ ...bare, duct, damper }).flow).toBeLessThan(alone);
    expect(run({ ...bare, duct, damper: 'none', lintScreen: '40 Pa' }).flow).toBeLessThan(alone);
    expect(run({ ...bare, duct, damper: 'none', boosterFan: '300 L/s' }).flow).toBeGreaterThan(
      alone,
    );
  });

  it('holds a constant flow against its duct within its range, and not beyond', () => {
    const held = (upTo: string) =>
      run({ flow: '300 L/s', constantFlow: { upTo }, duct, damper: 'none' });
    expect(held('200 Pa').flow).toBeCloseTo(0.3, 6);
    expect(held('40 Pa').flow).toBeLessThan(0.29);
  });
});

describe('the parts of a device', () => {
  it('stand in the order in which air passes them', () => {
    const names = ({ path }: Device): readonly (readonly string[])[] =>
      [path?.before ?? [], path?.after ?? []].map((parts) => parts.map(({ name }) => name));
    expect(names(device({ ...bare, duct }))).toEqual([[], ['damper', 'duct']]);
    expect(names(device({ ...bare, blower: 'remote', duct, lintScreen: '20 Pa' }))).toEqual([
      ['duct', 'lint screen'],
      ['damper'],
    ]);
    expect(
      names(device({ ...bare, blower: 'inline', inletDuct: duct, duct, boosterFan: '90 L/s' })),
    ).toEqual([['inlet duct'], ['damper', 'duct', 'booster fan']]);
  });

  it('have a damper that the air opens, that keeps its leakage in the test unless that is given', () => {
    const damper = (given: object) =>
      device({ ...bare, duct, ...given }).path?.after.find(({ name }) => name === 'damper');
    expect(damper({})).toMatchObject({
      law: { kind: 'gravityDamper', crackingPressurePa: 2.5 },
      closed: 'inside the tested leakage',
    });
    expect(damper({ closedLeakage: '3 cfm at 50 Pa' })).not.toHaveProperty('closed');
    expect(damper({ damper: { kind: 'motorized', leakageClass: 'AMCA 1' } })).toMatchObject({
      law: { kind: 'orifice' },
      // 4 cfm/ft2 at 1 in. w.c. through a round damper of 250 mm, in m3/(s Pa^0.5).
      closed: { kind: 'powerLaw', coefficientM3PerSPaN: expect.closeTo(6.32e-5, 7) as number },
    });
    expect(damper({ damper: { kind: 'gravity', stuck: 'open' } })).toMatchObject({
      law: { kind: 'orifice' },
    });
    expect(damper({ damper: 'none' })).toBeUndefined();
  });

  it('list every number that a table gave, with its source', () => {
    const { assumptions } = read({
      exhaust: {
        hood: {
          ...bare,
          duct: {
            diameter: '150 mm',
            length: '5 m',
            flexible: { compression: '15 %' },
            fittings: { 'elbow 90': 2, 'Mitred elbow 45': 1, 'smooth 8 in 90 deg': 1 },
            cap: 'roof jack',
            screen: '50 %',
          },
        },
      },
    });
    const told = (what: string) => assumptions.find((each) => each.what === what);
    expect(told('material')?.value).toBe('flexible, fully extended');
    expect(told('factor on its friction for lying compressed')?.source.status).toBe('memory');
    expect(told('loss of one elbow 90')).toMatchObject({
      origin: 'exhaust.hood.duct.fittings.elbow 90',
      value: { si: 0.14 },
      source: { status: 'our choice' },
    });
    expect(told('loss of one Mitred elbow 45')?.value).toMatchObject({ si: 0.34 });
    expect(told('equivalent length of one smooth 8 in 90 deg')?.source.status).toBe('found');
    expect(told('loss of its screen')?.value).toMatchObject({ si: 1.7 });
    expect(told('loss of its cap')?.source.status).toBe('our choice');
    expect(told('place of its fan')?.value).toBe('in the unit');
  });
});

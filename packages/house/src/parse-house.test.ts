import { runInNewContext } from 'node:vm';
import { flowAt } from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';
import type { House } from './house.js';
import { parseHouse } from './parse-house.js';

const short = {
  evendraft: 1,
  name: 'Larch Close 2',
  floorArea: '1650 ft2',
  airtightness: '420 cfm at 50 Pa',
};

function house(more: Readonly<Record<string, unknown>> = {}): House {
  const result = parseHouse({ ...short, ...more });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

function codes(more: Readonly<Record<string, unknown>>): readonly string[] {
  const result = parseHouse({ ...short, ...more });
  return (result.ok ? result.warnings : result.issues).map(({ code }) => code);
}

function assumed(read: House, origin: string): readonly string[] {
  return read.assumptions.filter((each) => each.origin === origin).map(({ what }) => what);
}

/** To twelve decimals, so that a comparison does not hang on the last bit. */
function rounded(share: number): number {
  return Number(share.toFixed(12));
}

/** A cubic foot per minute is 0.3048³/60 m³/s, by the definition of the foot. */
const cfm = 0.3048 ** 3 / 60;

describe('the short form', () => {
  it('is one living zone of the floor area and the assumed ceiling height', () => {
    const { zones, floorAreaM2, volumeM3 } = house();
    expect(zones).toHaveLength(1);
    expect(floorAreaM2).toBeCloseTo(1650 * 0.3048 ** 2, 9);
    expect(volumeM3).toBeCloseTo(1650 * 0.3048 ** 2 * 2.5, 9);
    expect(zones[0]).toMatchObject({ id: 'house', kind: 'living', floorHeightM: 0, heightM: 2.5 });
  });

  it('is as high as its volume over its floor area, times its storeys', () => {
    const [zone] = house({ floorArea: '200 m2', volume: '520 m3', storeys: 2 }).zones;
    expect(zone?.heightM).toBeCloseTo(5.2, 12);
  });

  it('lists everything that it had to assume, each with a source', () => {
    const read = house();
    expect(read.assumptions.map(({ origin, what }) => `${origin}: ${what}`)).toEqual([
      'altitude: altitude',
      'indoorTemperature: indoor temperature',
      'frontFaces: where the front looks',
      'plan: length of the front over length of the sides',
      'storeys: number of storeys',
      'ceilingHeight: height from floor to ceiling',
      'volume: volume inside the tested envelope',
      'airtightness: flow exponent of the envelope',
      'airtightness: air of the tested flow',
      'airtightness: direction of the test',
      'airtightness: guarding of the test',
      'airtightness: where the leakage lies',
      'weather: weathers studied',
      'wind: how the wind presses on the house',
    ]);
    for (const { source } of read.assumptions) expect(source.document).not.toBe('');
  });

  it('assumes nothing that the user gave', () => {
    const read = house({
      altitude: '0 ft',
      indoorTemperature: '68 F',
      frontFaces: 'S',
      plan: { front: '12 m', side: '8 m' },
      storeys: 1,
      ceilingHeight: '8 ft',
      airtightness: {
        result: '420 cfm at 50 Pa',
        exponent: 0.62,
        direction: 'depressurized',
        guarded: false,
      },
      zones: { house: { kind: 'living', floorHeight: '0 m', leakage: { walls: '100 %' } } },
      weather: [{ name: 'still', outdoorTemperature: '68 F', wind: 'calm' }],
    });
    expect(read.assumptions.map(({ origin, what }) => `${origin}: ${what}`)).toEqual([
      'zones.house: floor area',
      'airtightness: air of the tested flow',
    ]);
    expect(read).toMatchObject({ frontFacesDeg: 180, sideRatio: 1.5 });
  });

  it('may come from another frame or context, but never as an instance of a class', () => {
    const foreign: unknown = runInNewContext(`(${JSON.stringify(short)})`);
    expect(parseHouse(foreign).ok).toBe(true);
    const dated = parseHouse({ ...short, airtightness: new Date(0) });
    expect(dated.ok).toBe(false);
    expect(parseHouse(new Map(Object.entries(short))).ok).toBe(false);
  });

  it('spreads the leakage over walls, ceiling and floor', () => {
    const shares = house().leakShares.map(({ surface, share }) => [surface, rounded(share)]);
    expect(shares).toEqual([
      ['walls', 0.65],
      ['ceiling', 0.2],
      ['floor', 0.15],
    ]);
  });

  it('has the same digest whatever the order of its keys, and the given one if there is one', () => {
    const { name, ...rest } = short;
    const one = parseHouse(short);
    const other = parseHouse({ ...rest, name });
    expect(one.ok && other.ok && one.house.digest === other.house.digest).toBe(true);
    const given = parseHouse(short, { digest: 'sha256:given' });
    expect(given.ok && given.house.digest).toBe('sha256:given');
  });

  it('reports by path, without a position', () => {
    const result = parseHouse({ ...short, floorArea: '1650' });
    expect(result.ok ? [] : result.issues).toMatchObject([
      { code: 'quantity.unit-missing', path: ['floorArea'] },
    ]);
    expect(result.ok ? {} : result.issues[0]).not.toHaveProperty('position');
  });

  it('takes a key that is undefined as absent, and an empty section as none', () => {
    expect(codes({ volume: undefined, exhaust: null, zones: null, weather: [] })).toEqual([]);
  });
});

describe('airtightness', () => {
  const cases = (airtightness: unknown, more: Readonly<Record<string, unknown>> = {}) =>
    house({ airtightness, ...more }).airtightness.cases;

  it.each(['310 cfm at 50 Pa', '310 CFM50', '310 cfm @ 50 Pa', '310 cfm 50', '310 cfm at 50Pa'])(
    'reads %s as a flow at 50 Pa',
    (text) => {
      const [test] = cases(text);
      expect(test).toMatchObject({ name: 'tested', pressurePa: 50 });
      expect(test?.volumeFlowM3PerS).toBeCloseTo(310 * cfm, 12);
    },
  );

  it('reads air changes at 50 Pa with the volume', () => {
    const [test] = cases('1.2 ACH50', { volume: '500 m3' });
    expect(test?.volumeFlowM3PerS).toBeCloseTo((1.2 * 500) / 3600, 12);
    expect(test?.pressurePa).toBe(50);
  });

  it('reads a leakage area at 4 Pa as the flow of a hole with a discharge coefficient of one', () => {
    const [test] = cases('55 in2 at 4 Pa');
    // Q = A sqrt(2 dP / rho), rho = 1.2041 kg/m3.
    expect(test?.volumeFlowM3PerS).toBeCloseTo(55 * 0.0254 ** 2 * Math.sqrt(8 / 1.2041), 9);
    expect(test?.pressurePa).toBe(4);
  });

  it('reads a leakage area at 10 Pa with a discharge coefficient of 0.611', () => {
    const [test] = cases('100 cm2 at 10 Pa');
    expect(test?.volumeFlowM3PerS).toBeCloseTo(0.611 * 0.01 * Math.sqrt(20 / 1.2041), 9);
    expect(test?.pressurePa).toBe(10);
  });

  it.each([
    '0.8 to 3 ACH50 (planned)',
    '0.8 to 3 ACH50',
    '0.8-3 ACH50 planned',
    '0.8 – 3 ACH50',
    '0.8 ACH50 to 3 ACH50 (planned)',
  ])('reads %s as both ends of a plan, the tight end first', (text) => {
    const both = cases(text, { volume: '500 m3' });
    expect(both.map(({ name }) => name)).toEqual(['tight end', 'loose end']);
    expect(both[0]?.volumeFlowM3PerS).toBeCloseTo((0.8 * 500) / 3600, 12);
    expect(both[1]?.volumeFlowM3PerS).toBeCloseTo((3 * 500) / 3600, 12);
  });

  it.each(['200 to 400 cfm at 50 Pa', '200 cfm to 400 cfm at 50 Pa', '200-400 cfm50'])(
    'reads %s as a range of flows',
    (text) => {
      const both = cases(text);
      expect(both.map(({ pressurePa }) => pressurePa)).toEqual([50, 50]);
      expect(both[0]?.volumeFlowM3PerS).toBeCloseTo(200 * cfm, 12);
      expect(both[1]?.volumeFlowM3PerS).toBeCloseTo(400 * cfm, 12);
    },
  );

  it('reads one planned value', () => {
    expect(cases('420 cfm at 50 Pa (planned)').map(({ name }) => name)).toEqual(['planned']);
  });

  it('lists how zones outside the envelope are taken to have stood during the test', () => {
    const zones = { main: { kind: 'living', area: '150 m2' }, attic: { area: '150 m2' } };
    const openings = { vents: { zone: 'attic', to: 'roof', area: '300 in2' } };
    const taken = 'zones outside the tested envelope during the test';
    expect(assumed(house({ zones, openings }), 'airtightness')).toContain(taken);
    expect(assumed(house(), 'airtightness')).not.toContain(taken);
  });

  it('passes the preparation of the test on to what it names', () => {
    const read = house({
      airtightness: { result: '420 cfm at 50 Pa', preparation: { hood: 'taped', vent: 'closed' } },
      exhaust: { hood: { flow: '200 cfm', closedLeakage: '5 cm2 at 4 Pa' } },
      openings: { vent: { to: 'left', area: '10 in2' } },
    });
    expect(read.devices[0]?.duringTest).toBe('sealed');
    expect(read.openings[0]?.duringTest).toBe('closed');
  });
});

describe('leakage shares', () => {
  it('lead to faces, zones and surroundings as written', () => {
    const read = house({
      zones: {
        main: {
          leakage: {
            walls: { front: '30 %', back: '20 %' },
            ceiling: ['10 %', '15 % to attic'],
            floor: { share: '25 %', to: 'shop' },
          },
        },
        attic: {},
      },
      surroundings: { shop: { pressure: '2 Pa', temperature: '60 F' } },
      openings: { vents: { zone: 'attic', to: 'roof', area: '300 in2' } },
    });
    expect(read.leakShares.map(({ surface, to, share }) => [surface, to, rounded(share)])).toEqual([
      ['walls', { kind: 'face', face: 'front' }, 0.3],
      ['walls', { kind: 'face', face: 'back' }, 0.2],
      ['ceiling', { kind: 'outdoors' }, 0.1],
      ['ceiling', { kind: 'zone', zone: 'attic' }, 0.15],
      ['floor', { kind: 'surrounding', surrounding: 'shop' }, 0.25],
    ]);
  });

  it('that were rounded to whole percents are stretched to make one', () => {
    const third = { leakage: { walls: '33.3 %' }, area: '51 m2' };
    const { leakShares } = house({ zones: { main: third, upstairs: third, basement: third } });
    const sum = leakShares.reduce((total, { share }) => total + share, 0);
    expect(sum).toBeCloseTo(1, 12);
  });

  it('go by volume, the ceiling to the attic and the floor to the crawl space, when none are given', () => {
    const { leakShares } = house({
      zones: {
        'ground floor': { area: '100 m2', height: '2.5 m' },
        'upper floor': { area: '100 m2', height: '2.5 m', floorHeight: '2.8 m' },
        attic: {},
        'crawl space': {},
      },
      openings: {
        vents: { zone: 'attic', to: 'roof', area: '300 in2' },
        grilles: { zone: 'crawl space', to: 'left', area: '100 in2' },
      },
      doors: { stairs: { between: ['ground floor', 'upper floor'] } },
    });
    expect(
      leakShares.map(({ zone, surface, to, share }) => [zone, surface, to.kind, rounded(share)]),
    ).toEqual([
      ['ground floor', 'walls', 'outdoors', 0.325],
      ['upper floor', 'walls', 'outdoors', 0.325],
      ['upper floor', 'ceiling', 'zone', 0.2],
      ['ground floor', 'floor', 'zone', 0.15],
    ]);
  });
});

describe('openings', () => {
  const law = (opening: Readonly<Record<string, unknown>>) =>
    house({
      airtightness: '2000 cfm at 50 Pa',
      openings: { vent: { to: 'left', height: '1 m', duringTest: 'sealed', ...opening } },
    }).openings[0]?.law;

  it('may be written as an area, a diameter, a flow, a leakage area or a coefficient', () => {
    expect(law({ area: '0.02 m2' })).toEqual({
      kind: 'orifice',
      areaM2: 0.02,
      dischargeCoefficient: 0.6,
    });
    expect(law({ diameter: '200 mm', dischargeCoefficient: 0.61 })).toEqual({
      kind: 'orifice',
      areaM2: Math.PI * 0.1 ** 2,
      dischargeCoefficient: 0.61,
    });
    expect(law({ flow: '40 L/s at 16 Pa', exponent: 0.5 })).toEqual({
      kind: 'powerLaw',
      coefficientM3PerSPaN: 0.01,
      exponent: 0.5,
    });
    expect(law({ coefficient: '12 L/s/Pa^n', exponent: 0.7 })).toEqual({
      kind: 'powerLaw',
      coefficientM3PerSPaN: 0.012,
      exponent: 0.7,
    });
    const leak = law({ leakageArea: '100 cm2 at 4 Pa', exponent: 0.5 });
    expect(leak).toMatchObject({ kind: 'powerLaw', exponent: 0.5 });
    // Q = A sqrt(2 dP / rho) at the exponent of a hole.
    expect(leak?.kind === 'powerLaw' && leak.coefficientM3PerSPaN).toBeCloseTo(
      0.01 * Math.sqrt(2 / 1.2041),
      12,
    );
  });

  it('let air only in where they are said to, from the pressure at which they open', () => {
    expect(law({ flow: '40 L/s at 16 Pa', exponent: 0.5, opensAt: '3 Pa' })).toEqual({
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.01,
      exponent: 0.5,
      crackingPressurePa: 3,
    });
    expect(law({ area: '100 cm2', oneWay: true })).toMatchObject({
      kind: 'oneWayDamper',
      exponent: 0.5,
      crackingPressurePa: 2.5,
    });
  });

  it('pass as much through a one-way opening as through the same hole, at reference air', () => {
    const hole = law({ area: '100 cm2' });
    const flap = law({ area: '100 cm2', opensAt: '0 Pa' });
    if (!hole || !flap) throw new Error('no law');
    const flow = flowAt(hole, 20).massFlowKgPerS;
    // The reference air of the laws has its density to five digits.
    expect(flowAt(flap, 20).massFlowKgPerS / flow).toBeCloseTo(1, 4);
  });
});

describe('doors', () => {
  const door = (more: Readonly<Record<string, unknown>>) =>
    house({
      zones: { main: { area: '100 m2' }, bedroom: { area: '50 m2' } },
      doors: { door: { between: ['main', 'bedroom'], ...more } },
    }).doors[0];

  it('have 12 in2 under them when nothing is given, and are studied open and shut', () => {
    expect(door({})).toMatchObject({
      positions: ['open', 'shut'],
      baselinePosition: 'open',
      open: { kind: 'doorway', widthM: 0.9, heightM: 2 },
    });
    const shut = door({})?.shut;
    expect(shut?.kind === 'orifice' && shut.areaM2).toBeCloseTo(12 * 0.0254 ** 2, 12);
  });

  it('have their grille besides the gap', () => {
    const read = door({ undercut: { gap: '10 mm', width: '0.8 m' }, grille: '120 cm2' });
    expect(read?.shut.kind === 'orifice' && read.shut.areaM2).toBeCloseTo(0.008, 12);
    const [grille] = read?.parts ?? [];
    expect(grille).toMatchObject({ name: 'grille', heightM: 1, when: 'shut' });
    expect(grille?.law.kind === 'orifice' && grille.law.areaM2).toBeCloseTo(0.012, 12);
  });

  it('that are always shut are shut in the baseline', () => {
    expect(door({ positions: 'closed' })).toMatchObject({
      positions: ['shut'],
      baselinePosition: 'shut',
    });
  });
});

describe('devices', () => {
  const device = (item: unknown, name = 'hood') => house({ exhaust: { [name]: item } }).devices[0];

  it('of a bare flow are a rated point on a typical curve, never a constant flow', () => {
    const hood = device('600 cfm');
    const [speed] = hood?.speeds ?? [];
    expect(speed?.name).toBe('on');
    expect(speed?.law.kind).toBe('fanCurve');
    if (!speed) throw new Error('no speed');
    // Between rooms of one pressure it moves its rated flow; at its shut-off pressure nothing.
    expect(flowAt(speed.law, 0).massFlowKgPerS / 1.2041).toBeCloseTo(600 * cfm, 9);
    expect(flowAt(speed.law, -224).massFlowKgPerS).toBeCloseTo(0, 9);
    expect(flowAt(speed.law, -500).massFlowKgPerS).toBe(0);
    expect(assumed(house({ exhaust: { hood: '600 cfm' } }), 'exhaust.hood')).toEqual([
      'kind',
      'where it ends',
      'height above the floor',
      'rating pressure',
      'shut-off pressure',
      'duct',
      'backdraft damper while it runs',
      'leakage of its closed damper',
    ]);
  });

  it.each([
    { low: '250 cfm', high: '900 cfm' },
    { speeds: { low: '250 cfm', high: '900 cfm' } },
    { low: '250 cfm', high: '900 cfm', zone: 'house' },
    { speeds: { low: '250 cfm', high: { flow: '900 cfm' } }, kind: 'hood' },
  ])('may be written with speeds as %j', (item) => {
    const speeds = device(item)?.speeds.map(({ name, ratedFlowM3PerS }) => [name, ratedFlowM3PerS]);
    expect(speeds?.map(([name]) => name)).toEqual(['low', 'high']);
    expect(speeds?.[0]?.[1]).toBeCloseTo(250 * cfm, 12);
    expect(speeds?.[1]?.[1]).toBeCloseTo(900 * cfm, 12);
  });

  it('at low speed have a shut-off pressure lower by the square of the speed', () => {
    const [low] = device({ low: '300 cfm', high: '600 cfm' })?.speeds ?? [];
    if (low?.law.kind !== 'fanCurve') throw new Error('no curve');
    expect(Math.max(...low.law.points.map((point) => point.pressureRisePa))).toBeCloseTo(56, 9);
  });

  it('keep their flow as constant only by a declared control, within its range', () => {
    const fan = device({ kind: 'bath fan', flow: '50 L/s', constantFlow: { upTo: '100 Pa' } }, 'a');
    const [speed] = fan?.speeds ?? [];
    if (!speed) throw new Error('no speed');
    for (const suctionPa of [0, 40, 99]) {
      expect(flowAt(speed.law, -suctionPa).massFlowKgPerS / 1.2041).toBeCloseTo(0.05, 12);
    }
    expect(flowAt(speed.law, -130).massFlowKgPerS).toBe(0);
    const endless = device({ kind: 'bath fan', flow: '50 L/s', constantFlow: true }, 'a');
    expect(endless?.speeds[0]?.law).toEqual({ kind: 'fixedFlow', volumeFlowM3PerS: 0.05 });
  });

  it('with a curve move what the curve says between rooms of one pressure', () => {
    const curve = [
      ['0 cfm', '200 Pa'],
      ['400 cfm', '100 Pa'],
      ['600 cfm', '0 Pa'],
    ];
    expect(device({ curve })?.speeds[0]?.ratedFlowM3PerS).toBeCloseTo(600 * cfm, 9);
  });

  it('that only dry by condensing have no speed', () => {
    expect(device(null, 'condensing dryer')).toMatchObject({
      kind: 'condensing dryer',
      speeds: [],
    });
  });

  it('follow others by interlock, make-up openings too', () => {
    const read = house({
      exhaust: { hood: { low: '250 cfm', high: '900 cfm' } },
      supply: { 'make-up fan': { flow: '300 cfm', interlock: { device: 'hood', speeds: 'high' } } },
      makeUp: { inlet: { opensWith: 'hood', diameter: '8 in' } },
    });
    expect(read.devices[1]?.interlock).toEqual({ driver: 'hood', speeds: ['high'] });
    expect(read.makeUpOpenings[0]?.interlock).toEqual({ driver: 'hood' });
  });
});

describe('appliances', () => {
  it('share a vent both ways, whoever says so, and with all others on it', () => {
    const vent = 'natural draft';
    const { appliances } = house({
      appliances: {
        'water heater': { vent, sharesVentWith: 'furnace' },
        furnace: { vent },
        boiler: { vent, sharesVentWith: ['furnace'] },
        fireplace: { vent: 'open hearth' },
      },
    });
    expect(appliances.map(({ id, sharesVentWith }) => [id, sharesVentWith])).toEqual([
      ['water heater', ['furnace', 'boiler']],
      ['furnace', ['water heater', 'boiler']],
      ['boiler', ['water heater', 'furnace']],
      ['fireplace', []],
    ]);
  });

  it.each(['natural draft', 'Natural-Draft', 'atmospheric', 'natural draught'])(
    'take %s for natural draft',
    (vent) => {
      const [heater] = house({ appliances: { 'water heater': { vent } } }).appliances;
      expect(heater?.vent).toBe('natural draft');
    },
  );
});

describe('weather', () => {
  it('is four days of our choice when none is given', () => {
    const { weathers } = house({ frontFaces: 'E', indoorTemperature: '21 C' });
    expect(
      weathers.map((each) => [
        each.name,
        each.outdoorTemperatureC,
        each.windSpeedMPerS,
        each.windFromDeg,
      ]),
    ).toEqual([
      ['still', 21, 0, 90],
      ['cold', -10, 0, 90],
      ['hot', 35, 0, 90],
      ['windy', 10, 7, 90],
    ]);
  });

  it.each([
    ['5 m/s from NW', 315],
    ['5 m/s from 45 deg', 45],
    ['5 m/s from back', 270],
    [{ speed: '5 m/s', from: 'left' }, 0],
  ])('reads the wind %j against a front that looks east', (wind, from) => {
    const weather = [{ name: 'windy', outdoorTemperature: '10 C', wind }];
    const [read] = house({ frontFaces: 'E', weather }).weathers;
    expect(read).toMatchObject({ windSpeedMPerS: 5, windFromDeg: from });
  });
});

describe('data of a wrong kind', () => {
  it('are named for what they are', () => {
    expect(codes({ floorArea: new Date(0) })).toEqual(['value.wrong-shape']);
    expect(codes({ floorArea: NaN })).toEqual(['quantity.not-finite']);
    expect(codes({ airtightness: Infinity })).toEqual(['quantity.not-finite']);
    expect(codes({ exhaust: new Map() })).toEqual(['value.wrong-shape']);
  });

  it('stop the reading at a version that is not known', () => {
    expect(codes({ evendraft: 2, nonsense: 1 })).toEqual(['version.unknown']);
  });
});

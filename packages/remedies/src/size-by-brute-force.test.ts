import { compileHouse, houseWeather, type House } from '@evendraft/house';
import {
  balanceStudy,
  makeUpDuct,
  motorizedMakeUp,
  poweredMakeUp,
  sizeRemedy,
  type PressureTarget,
  type Remedy,
} from '@evendraft/studies';
import { describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';

/** Every setting of a few devices, by name: written out here, so that nothing of the searched code is used. */
function settings(
  devices: Readonly<Record<string, readonly string[]>>,
): readonly Readonly<Record<string, string>>[] {
  let all: Record<string, string>[] = [{}];
  for (const [device, speeds] of Object.entries(devices)) {
    all = all.flatMap((one) => [one, ...speeds.map((speed) => ({ ...one, [device]: speed }))]);
  }
  return all;
}

/** Least margin of a target in a house over all settings, doors and weathers, one balance after the other. */
function leastMargin(
  house: House,
  of: {
    readonly target: PressureTarget;
    readonly devices: Readonly<Record<string, readonly string[]>>;
    readonly doors: readonly Readonly<Record<string, 'open' | 'shut'>>[];
  },
): number {
  const result = compileHouse(house);
  if (!result.ok) throw new Error('the house compiles');
  const margins = house.weathers.flatMap((weather) =>
    of.doors.flatMap((doors) => {
      const outdoors = houseWeather(house, weather);
      return settings(of.devices).map((running) => {
        const state = { running, doors };
        const balance = balanceStudy(result.compiled, { state, weather: outdoors });
        if (balance.status !== 'solved') throw new Error(balance.reason);
        const zone = balance.zones.find((each) => each.zone === of.target.zone)!;
        return zone.changeFromBaselinePa - of.target.limitPa;
      });
    }),
  );
  return Math.min(...margins);
}

const target = (limitPa: number, zone: string): PressureTarget => ({
  id: 'appliance',
  zone,
  quantity: 'change from baseline',
  limitPa,
  side: 'not below',
});

// Very tight, with a strong hood, and a dryer in a closet whose door may be shut.
const closet = inventedRow({
  airtightness: '110 cfm at 50 Pa',
  exhaust: {
    hood: { zone: 'main', low: '300 cfm', high: '1200 cfm' },
    dryer: { zone: 'closet', flow: '180 cfm' },
  },
  appliances: { stove: { vent: 'closed stove', kind: 'wood stove', fuel: 'wood', zone: 'main' } },
  zones: {
    main: { kind: 'living', area: '1960 ft2', floorHeight: '0 ft', height: '8 ft' },
    closet: { kind: 'closet', area: '40 ft2', floorHeight: '0 ft', height: '8 ft' },
  },
  doors: { 'closet door': { between: ['main', 'closet'] } },
  weather: [
    { name: 'cold', outdoorTemperature: '-20 C' },
    { name: 'windy', outdoorTemperature: '5 C', wind: '8 m/s from front' },
  ],
});
const inCloset = {
  devices: { hood: ['low', 'high'], dryer: ['on'] },
  doors: [{ 'closet door': 'open' }, { 'closet door': 'shut' }],
} as const;

// One zone in wind, where the duct ends on the leeward face.
const leeward = inventedRow({
  airtightness: '400 cfm at 50 Pa',
  exhaust: { hood: { low: '100 cfm', high: '250 cfm' }, dryer: '90 cfm' },
  weather: [
    { name: 'still', outdoorTemperature: '20 C' },
    { name: 'windy', outdoorTemperature: '10 C', wind: '9 m/s from front' },
  ],
});
const inOneZone = { devices: { hood: ['low', 'high'], dryer: ['on'] }, doors: [{}] };

const run = { lengthM: 3, elbows: 2 };
const from = { kind: 'face', face: 'back' } as const;
const house = leeward.zones[0]!.id;
const questions: readonly (readonly [
  string,
  Remedy,
  House,
  { readonly target: PressureTarget } & Pick<
    Parameters<typeof leastMargin>[1],
    'devices' | 'doors'
  >,
])[] = [
  [
    'a duct in the very tight house',
    makeUpDuct(closet, { zone: 'main', run }),
    closet,
    { target: target(-25, 'main'), ...inCloset },
  ],
  [
    'a damper that stays shut for the dryer',
    motorizedMakeUp(closet, { zone: 'main', run, opensWith: { driver: 'hood' } }),
    closet,
    { target: target(-10, 'main'), ...inCloset },
  ],
  [
    'a leeward duct',
    makeUpDuct(leeward, { zone: house, run, from }),
    leeward,
    { target: target(-5, house), ...inOneZone },
  ],
];

describe('sizes by going through everything by hand', () => {
  it.each(questions)(
    'of %s are those that are found',
    async (_, remedy, house, question) => {
      const result = await sizeRemedy(house, { remedy, targets: [question.target] });
      if (remedy.offered.kind !== 'listed') throw new Error('ducts have sizes that are sold');
      const { sizes } = remedy.offered;
      const margins = sizes.map((size) => leastMargin(remedy.houseWith(size), question));
      const first = margins.findIndex((marginPa) => marginPa >= 0);
      if (first >= 0) {
        if (result.status !== 'sized') throw new Error(result.status);
        expect(result.size).toBe(sizes[first]);
        expect(result.margins[0]!.marginPa).toBeCloseTo(margins[first]!, 6);
        expect(result.monotone).toBe(margins.slice(first).every((marginPa) => marginPa >= 0));
        return;
      }
      if (result.status !== 'impossible') throw new Error(result.status);
      expect(result.margins[0]!.marginPa).toBeCloseTo(Math.max(...margins), 6);
    },
    60_000,
  );

  it('of a fan that is too small for the hood name the size that comes closest of all', async () => {
    const remedy = poweredMakeUp(closet, { zone: 'main', follows: 'hood' });
    const question = { target: target(-10, 'main'), ...inCloset };
    const result = await sizeRemedy(closet, { remedy, targets: [question.target] });
    if (result.status !== 'impossible') throw new Error('the dryer alone is beyond the limit');
    const margins = result.tried.map(({ size }) => leastMargin(remedy.houseWith(size), question));
    const best = Math.max(...margins);
    expect(leastMargin(remedy.houseWith(result.best), question)).toBeCloseTo(best, 6);
    expect(result.margins[0]!.marginPa).toBeCloseTo(best, 6);
    // Whatever its size, it does not run with the dryer alone.
    expect(result.obstacle).toEqual({ kind: 'stays shut', item: 'powered make-up' });
  }, 60_000);
});

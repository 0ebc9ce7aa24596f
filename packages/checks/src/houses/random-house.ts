import fc from 'fast-check';
import {
  cfm,
  feet,
  squareInches,
  fahrenheit,
  percent,
  preparation,
  some,
  section,
  stretch,
} from './random-parts.js';
import { appliances, bathFan, dryer, hood, makeUp, openings } from './random-devices.js';

/** A house file as data, before it is parsed. */
export type HouseData = Readonly<Record<string, unknown>>;

const weather = fc.array(
  fc
    .tuple(
      fahrenheit(-20, 105),
      fc.integer({ min: 0, max: 25 }),
      fc.constantFrom('N', 'SE', 'W', 'back'),
    )
    .map(([outdoorTemperature, speed, from]) => ({
      outdoorTemperature,
      wind: speed === 0 ? 'calm' : { speed: `${speed} mph`, from },
    })),
  { minLength: 1, maxLength: 2 },
);

const door = (one: string, other: string) =>
  some(
    {
      between: fc.constant([one, other]),
      open: fc.constantFrom({ width: '30 in' }, { width: '4 ft', height: '7 ft' }),
      undercut: fc.constantFrom<unknown>('4 in2', '16 in2', { gap: '1/2 in', width: '32 in' }),
      grille: squareInches(10, 80),
      louvre: squareInches(100, 400),
      jumpDuct: stretch,
      positions: fc.constantFrom<unknown>(['open', 'shut'], 'shut', 'open'),
    },
    ['between'],
  );

const ductLeak = (places: readonly string[]) =>
  fc.oneof(
    fc.tuple(percent(1, 15), fc.constantFrom(...places)).map(([share, to]) => ({ share, to })),
    fc
      .tuple(fc.integer({ min: 10, max: 120 }), fc.constantFrom(...places))
      .map(([flow, to]) => ({ flow: `${flow} cfm at 25 Pa`, to })),
  );

/** Rooms inside the envelope that a random house may have beside its main one. */
const rooms = {
  bedroom: { kind: 'living', floorHeight: '0 ft', height: '8 ft', area: '300 ft2' },
  utility: { kind: 'closet', floorHeight: '0 ft', height: '8 ft', area: '60 ft2' },
  basement: { kind: 'basement', floorHeight: '-8 ft', height: '7.5 ft', area: '900 ft2' },
} as const;

/** Buffers around it. */
const buffers = {
  attic: { kind: 'attic', floorHeight: '9 ft', height: '5 ft', area: '1200 ft2' },
  garage: { kind: 'garage', floorHeight: '0 ft', height: '8 ft', area: '400 ft2' },
  crawl: { kind: 'crawl space', floorHeight: '-4 ft', height: '3 ft', area: '900 ft2' },
} as const;

function houseOf(
  inside: readonly (keyof typeof rooms)[],
  around: readonly (keyof typeof buffers)[],
): fc.Arbitrary<HouseData> {
  const outlets = ['outdoors', 'main', ...inside, ...around];
  const share = Math.floor(90 / (inside.length + 1));
  const zones = fc
    .tuple(
      fc.array(fahrenheit(55, 80), { minLength: 4, maxLength: 4 }),
      fc.option(fc.constantFrom('outdoors', '110 F')),
    )
    .map(([temperatures, bufferTemperature]) => ({
      main: {
        floorHeight: '0 ft',
        height: '8 ft',
        area: '1000 ft2',
        temperature: temperatures[0],
        leakage: {
          walls: `${100 - share * inside.length - 5} %`,
          ceiling: around.includes('attic') ? '5 % to attic' : '5 %',
        },
      },
      ...Object.fromEntries(
        inside.map((room, i) => [
          room,
          { ...rooms[room], temperature: temperatures[i + 1], leakage: { walls: `${share} %` } },
        ]),
      ),
      ...Object.fromEntries(
        around.map((buffer) => [
          buffer,
          {
            ...buffers[buffer],
            ...(bufferTemperature === null ? {} : { temperature: bufferTemperature }),
          },
        ]),
      ),
    }));
  const forcedAir = some(
    {
      flow: cfm(400, 1400),
      supplies: fc.constantFrom<unknown>(
        'main',
        ...inside.map((room) => ({ main: '70 %', [room]: '30 %' })),
      ),
      returns: fc.constant('main'),
      supplyLeakage: ductLeak(outlets),
      returnLeakage: fc.array(ductLeak(outlets), { minLength: 1, maxLength: 2 }),
      duringTest: preparation,
    },
    ['flow', 'supplies', 'returns'],
  );
  return fc
    .record({
      evendraft: fc.constant(1),
      name: fc.constant('Randolph Row 1'),
      floorArea: fc.constant('2200 ft2'),
      altitude: feet(0, 8000),
      airtightness: fc
        .tuple(
          fc.integer({ min: 900, max: 9000 }),
          fc.constantFrom('depressurized', 'pressurized', 'both'),
          fc.integer({ min: 50, max: 75 }),
        )
        .map(([flow, direction, exponent]) => ({
          result: `${flow} cfm at 50 Pa`,
          direction,
          exponent: exponent / 100,
        })),
      zones,
      buffersOpen: fc.record(
        Object.fromEntries(
          around.map((buffer) => [
            `${buffer} vents`,
            fc.constant({ zone: buffer, to: 'outdoors', netFreeArea: '200 in2' }),
          ]),
        ),
      ),
      openings,
      doors: section(
        Object.fromEntries(
          [...inside, ...around].map((other) => [`${other} door`, door('main', other)]),
        ),
      ),
      exhaust: section({ hood, dryer, 'hall bath': bathFan }),
      makeUp: section({ 'kitchen make-up': makeUp }),
      ventilators: section({
        hrv: some(
          {
            supply: cfm(40, 150),
            exhaust: cfm(40, 150),
            zone: fc.constant('main'),
            defrost: fc.constantFrom('exhaust only', 'supply only'),
            dirtyFilter: percent(10, 60),
          },
          ['supply', 'exhaust', 'zone'],
        ),
      }),
      forcedAir: section({ 'air handler': forcedAir }),
      combustionAir: section({
        'heater air': some(
          {
            zone: fc.constant('main'),
            to: fc.constantFrom('outdoors', ...around),
            high: squareInches(10, 100),
            low: fc.constantFrom<unknown>('40 in2', { diameter: '6 in', endHeight: '9 ft' }),
            duringTest: preparation,
          },
          ['zone', 'high'],
        ),
      }),
      appliances,
      weather,
    })
    .map(({ buffersOpen, makeUp, ...house }) => ({
      ...house,
      ...('hood' in house.exhaust ? { makeUp } : {}),
      openings: { ...house.openings, ...buffersOpen },
      weather: house.weather.map((each, i) => ({ name: `weather ${i + 1}`, ...each })),
    }));
}

/**
 * House files with two to five zones and everything that air can pass: ducts of several sizes, dampers stuck and
 * free, flues, hearths, duct leakage, doors with grilles and jump ducts, windows, shafts, make-up air.
 */
export const randomHouse: fc.Arbitrary<HouseData> = fc
  .tuple(
    fc.subarray(Object.keys(rooms) as (keyof typeof rooms)[], { minLength: 1, maxLength: 2 }),
    fc.subarray(Object.keys(buffers) as (keyof typeof buffers)[], { maxLength: 2 }),
  )
  .chain(([inside, around]) => houseOf(inside, around));

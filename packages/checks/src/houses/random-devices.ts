import fc from 'fast-check';
import {
  cfm,
  inches,
  feet,
  pascals,
  squareInches,
  percent,
  preparation,
  outdoors,
  some,
  section,
  stretch,
  duct,
  risingDuct,
  bladeOf,
  flap,
} from './random-parts.js';

const blower = fc.oneof(
  some({ blower: fc.constantFrom('in hood', 'remote') }),
  fc.record({ blower: fc.constant('inline'), inletDuct: stretch }),
);

const hoodUnit = some(
  {
    speeds: fc.tuple(cfm(250, 400), cfm(410, 1200)).map(([low, high]) => ({ low, high })),
    zone: fc.constant('main'),
    to: outdoors,
    shutOffPressure: pascals(120, 500),
    duct,
    damper: flap('gravity'),
    duringTest: preparation,
  },
  ['speeds', 'zone', 'duct'],
);

/** A range hood of two speeds with its duct. */
export const hood = fc.tuple(hoodUnit, blower).map(([unit, place]) => ({ ...unit, ...place }));

/** A dryer with its duct. */
export const dryer = some(
  {
    flow: cfm(100, 220),
    zone: fc.constant('main'),
    lintScreen: pascals(5, 80),
    duct: stretch,
    boosterFan: cfm(120, 200),
    duringTest: preparation,
  },
  ['flow', 'zone', 'duct'],
);

/** A bath fan, its duct part of its flow. */
export const bathFan = some(
  {
    kind: fc.constant('bath fan'),
    flow: cfm(40, 130),
    zone: fc.constant('main'),
    closedLeakage: fc.constantFrom('2 cfm at 50 Pa', '3 cm2 at 4 Pa'),
    continuous: fc.boolean(),
    duringTest: preparation,
  },
  ['kind', 'flow', 'zone'],
);

/** A make-up duct that opens with the hood. */
export const makeUp = some(
  {
    opensWith: fc.constantFrom<unknown>('hood', { device: 'hood', speeds: ['high'] }),
    zone: fc.constant('main'),
    to: outdoors,
    duct: risingDuct,
    damper: bladeOf(['motorized']),
    duringTest: preparation,
  },
  ['opensWith', 'zone', 'duct', 'damper'],
);

/** Openings that are always there, and a window. */
export const openings = section({
  grille: some(
    {
      zone: fc.constant('main'),
      to: outdoors,
      netFreeArea: squareInches(2, 40),
      height: feet(0, 7),
      duct: risingDuct,
      duringTest: preparation,
    },
    ['zone', 'netFreeArea'],
  ),
  flap: some(
    {
      zone: fc.constant('main'),
      to: outdoors,
      diameter: inches(3, 8),
      opensAt: pascals(1, 10),
      duringTest: preparation,
    },
    ['zone', 'diameter', 'opensAt'],
  ),
  'barometric inlet': some(
    {
      zone: fc.constant('main'),
      duct: stretch,
      damper: flap('barometric'),
      duringTest: preparation,
    },
    ['zone', 'damper'],
  ),
  window: some(
    {
      zone: fc.constant('main'),
      to: outdoors,
      area: squareInches(20, 400),
      positions: fc.constantFrom<unknown>(['open', 'shut'], 'shut', 'open'),
    },
    ['zone', 'area', 'positions'],
  ),
  chase: some(
    {
      zone: fc.constant('main'),
      to: fc.constant('roof'),
      area: squareInches(4, 60),
      height: feet(0, 7),
      endHeight: feet(9, 25),
      duringTest: preparation,
    },
    ['zone', 'to', 'area', 'endHeight'],
  ),
});

const flue = some(
  {
    height: feet(6, 35),
    diameter: inches(3, 9),
    construction: fc.constantFrom('masonry lined', 'metal', 'double wall', 'insulated chimney'),
    cap: fc.constantFrom('open top', 'low resistance', 'cap'),
    exteriorShare: percent(0, 100),
    elbows: fc.nat(3),
    to: fc.constantFrom('outdoors', 'roof'),
    connector: some({ length: feet(1, 8), rise: fc.constant('1 ft'), elbows: fc.nat(2) }, [
      'length',
    ]),
    draftHood: fc.constantFrom<unknown>(true, false, { reliefArea: '20 in2' }),
    idleOpening: squareInches(1, 20),
    damper: fc.constant({ shutArea: '2 in2' }),
    duringTest: preparation,
  },
  ['height', 'diameter'],
);

/** A water heater and a hearth, with or without a flue. */
export const appliances = section({
  'water heater': some(
    {
      vent: fc.constant('natural draft'),
      fuel: fc.constantFrom('gas', 'oil'),
      input: fc.integer({ min: 20, max: 90 }).map((input) => `${input} kBtu/h`),
      zone: fc.constant('main'),
      flue,
    },
    ['vent', 'fuel', 'input', 'zone'],
  ),
  hearth: some(
    {
      kind: fc.constant('fireplace'),
      vent: fc.constant('open hearth'),
      fuel: fc.constant('wood'),
      zone: fc.constant('main'),
      flue: some(
        {
          height: feet(10, 30),
          size: fc.constant(['8 in', '12 in']),
          opening: squareInches(200, 1200),
          shutOpening: squareInches(5, 60),
          damper: fc.constant({ shutArea: '3 in2' }),
          duringTest: preparation,
        },
        ['height', 'size', 'opening'],
      ),
    },
    ['kind', 'vent', 'fuel', 'zone'],
  ),
});

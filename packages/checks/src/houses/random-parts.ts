import fc from 'fast-check';

/** A part of a house that a random house may have. */
type Part = fc.Arbitrary<Readonly<Record<string, unknown>>>;

/** Flows [cfm]. */
export const cfm = (min: number, max: number) =>
  fc.integer({ min, max }).map((flow) => `${flow} cfm`);
/** Lengths [in]. */
export const inches = (min: number, max: number) =>
  fc.integer({ min, max }).map((size) => `${size} in`);
/** Lengths [ft]. */
export const feet = (min: number, max: number) =>
  fc.integer({ min, max }).map((size) => `${size} ft`);
/** Pressures [Pa]. */
export const pascals = (min: number, max: number) =>
  fc.integer({ min, max }).map((pa) => `${pa} Pa`);
/** Areas [in2]. */
export const squareInches = (min: number, max: number) =>
  fc.integer({ min, max }).map((area) => `${area} in2`);
/** Temperatures [°F]. */
export const fahrenheit = (min: number, max: number) =>
  fc.integer({ min, max }).map((t) => `${t} F`);
/** Shares [%]. */
export const percent = (min: number, max: number) => fc.integer({ min, max }).map((n) => `${n} %`);
/** How something stood during the test. */
export const preparation = fc.constantFrom('sealed', 'closed', 'open');
/** Where something ends. */
export const outdoors = fc.constantFrom('outdoors', 'front', 'right', 'back', 'left', 'roof');

/** Some of the keys, with the required ones always. */
export function some<Keys extends Readonly<Record<string, fc.Arbitrary<unknown>>>>(
  keys: Keys,
  required: readonly (keyof Keys & string)[] = [],
): Part {
  return fc.record(keys, { requiredKeys: [...required] });
}

/** A section of a file in which each item may be missing. */
export function section(items: Readonly<Record<string, fc.Arbitrary<unknown>>>): Part {
  return fc.record(items, { requiredKeys: [] });
}

const ductSize = fc.oneof(
  inches(3, 14).map((diameter) => ({ diameter })),
  fc.tuple(inches(3, 12), inches(3, 14)).map(([a, b]) => ({ size: `${a} x ${b}` })),
  fc
    .tuple(fc.integer({ min: 3, max: 8 }), fc.integer({ min: 1, max: 8 }))
    .map(([a, more]) => ({ flatOval: `${a} in x ${a + more} in` })),
);

/** A duct of one size. */
export const stretch = fc
  .tuple(
    ductSize,
    some(
      {
        length: feet(0, 60),
        material: fc.constantFrom('galvanized', 'PVC', 'aluminium'),
        fittings: some({ 'elbow 90': fc.nat(4), 'elbow 45': fc.nat(2) }),
        entry: fc.constantFrom('flush', 'bellmouth', 'hood', 'none'),
        exit: fc.constantFrom('open', 'none'),
        cap: fc.constantFrom('roof jack', 'screened intake hood', 'plain hooded cap'),
        screen: percent(40, 90),
      },
      ['length'],
    ),
  )
  .map(([size, rest]) => ({ ...size, ...rest }));

/** A duct of one to three sizes. */
export const duct = fc.oneof(stretch, fc.array(stretch, { minLength: 1, maxLength: 3 }));

/** A duct of one size that gains or loses height. */
export const risingDuct = fc
  .tuple(stretch, fc.integer({ min: -8, max: 25 }))
  .map(([each, rise]) => ({ ...each, rise: `${rise} ft` }));

const blade = {
  diameter: inches(4, 12),
  loss: fc.double({ min: 0.3, max: 8, noNaN: true }).map((loss) => Number(loss.toFixed(2))),
  leakageClass: fc.constantFrom('AMCA 1', 'AMCA 2', 'AMCA 3', 'EN 1751 class 2'),
};

/** A damper of one of the kinds, free or stuck. */
export const bladeOf = (kinds: readonly string[]) =>
  fc.oneof(
    some({ kind: fc.constantFrom(...kinds), ...blade }, ['kind', 'diameter']),
    fc.record({
      kind: fc.constantFrom(...kinds),
      diameter: blade.diameter,
      leakageClass: blade.leakageClass,
      stuck: fc.constantFrom('open', 'shut'),
    }),
  );

/** A damper that the air opens, with or without its pressures. */
export const flap = (kind: string) =>
  fc
    .tuple(
      bladeOf([kind]),
      fc.option(fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 1, max: 30 }))),
    )
    .map(([damper, pressures]) =>
      pressures === null || 'stuck' in damper
        ? damper
        : {
            ...damper,
            opensAt: `${pressures[0]} Pa`,
            fullyOpenAt: `${pressures[0] + pressures[1]} Pa`,
          },
    );

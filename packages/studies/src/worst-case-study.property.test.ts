import {
  operatingStates,
  parseHouse,
  type Device,
  type DevicePath,
  type House,
} from '@evendraft/house';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compiled,
  constantFlow,
  device,
  fan,
  hole,
  inventedHouse,
  leak,
  makeUp,
  weather,
} from '../test-data/invented-house.js';
import { pressureRangeStudy } from './pressure-range-study.js';
import { worstCaseStudy } from './worst-case-study.js';

const rooms = ['hall', 'utility', 'garage'];
const room = fc.constantFrom(...rooms);
const flow = fc.double({ min: 0.01, max: 0.3, noNaN: true });

const speeds = fc.oneof(
  flow.map((q) => ({ on: constantFlow(q) })),
  flow.map((q) => ({ low: fan(q, 0.4 * q), high: fan(q) })),
  // Curves that cross: the faster speed moves more, the slower one holds more suction.
  flow.map((q) => ({
    pressing: {
      kind: 'fanCurve',
      points: [
        { pressureRisePa: 300, volumeFlowM3PerS: 0 },
        { pressureRisePa: 0, volumeFlowM3PerS: q / 2 },
      ],
      beyondShutOff: 'blocked',
    } as const,
    moving: {
      kind: 'fanCurve',
      points: [
        { pressureRisePa: 20, volumeFlowM3PerS: 0 },
        { pressureRisePa: 0, volumeFlowM3PerS: q },
      ],
      beyondShutOff: 'extended',
    } as const,
  })),
);

const part = (name: string, law: DevicePath['stoppedLaw']) => ({ name, law, riseM: 0 });

/** A duct that gains height, a damper that a motor closes or that leaks both ways, and a fan that air passes. */
const path: fc.Arbitrary<DevicePath> = fc
  .record({
    rise: fc.double({ min: 0, max: 6, noNaN: true }),
    area: fc.double({ min: 0.005, max: 0.05, noNaN: true }),
    damper: fc.constantFrom('none', 'motor', 'flap'),
  })
  .map(({ rise, area, damper }) => ({
    before: [],
    after: [
      { ...part('duct', hole(area)), riseM: rise },
      ...(damper === 'motor' ? [{ ...part('damper', hole(area)), closed: leak(area / 50) }] : []),
      ...(damper === 'flap'
        ? [
            part('damper', {
              kind: 'oneWayDamper',
              coefficientM3PerSPaN: area,
              exponent: 0.5,
              crackingPressurePa: 2,
              closedLeakage: { coefficientM3PerSPaN: area / 50, exponent: 0.6 },
            }),
          ]
        : []),
    ],
    stoppedLaw: hole(area / 2),
  }));

const oneDevice = (id: string): fc.Arbitrary<Device> =>
  fc
    .record({
      speeds,
      zone: room,
      path: fc.option(path),
      off: fc.option(fc.double({ min: 1e-5, max: 0.01, noNaN: true })),
      intoGarage: fc.nat(5).map((draw) => draw === 0),
      supply: fc.nat(5).map((draw) => draw === 0),
      continuous: fc.nat(5).map((draw) => draw === 0),
    })
    .map((drawn) =>
      device(id, drawn.speeds, {
        zone: drawn.zone,
        continuous: drawn.continuous,
        ...(drawn.path === null
          ? drawn.off === null
            ? {}
            : { offLaw: leak(drawn.off) }
          : { path: drawn.path }),
        ...(drawn.intoGarage && drawn.zone !== 'garage'
          ? { to: { kind: 'zone', zone: 'garage' } }
          : {}),
        ...(drawn.supply ? { direction: 'supply', kind: 'supply fan' } : {}),
      }),
    );

const anyHouse: fc.Arbitrary<House> = fc
  .record({
    devices: fc.tuple(oneDevice('a'), oneDevice('b'), oneDevice('c'), oneDevice('d')),
    follower: fc.option(oneDevice('follower')),
    makeUp: fc.option(
      fc.record({
        zone: room,
        area: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
        leaky: fc.boolean(),
      }),
    ),
    ventilator: fc.option(fc.record({ supply: flow, exhaust: flow })),
    wind: fc.double({ min: 0, max: 12, noNaN: true }),
  })
  .map((drawn) =>
    inventedHouse(
      {
        devices: [
          ...drawn.devices,
          ...(drawn.follower === null
            ? []
            : [{ ...drawn.follower, continuous: false, interlock: { driver: 'a' } }]),
        ],
        makeUpOpenings:
          drawn.makeUp === null
            ? []
            : [
                makeUp('inlet', 'b', {
                  zone: drawn.makeUp.zone,
                  openLaw: hole(drawn.makeUp.area),
                  ...(drawn.makeUp.leaky ? { closedLaw: leak(drawn.makeUp.area / 20) } : {}),
                }),
              ],
        ventilators:
          drawn.ventilator === null
            ? []
            : [
                {
                  id: 'ventilator',
                  origin: 'ventilators.ventilator',
                  supplyZone: 'hall',
                  exhaustZone: 'utility',
                  supplyFlowM3PerS: drawn.ventilator.supply,
                  exhaustFlowM3PerS: drawn.ventilator.exhaust,
                  continuous: false,
                },
              ],
        doors: inventedHouse({}, rooms).doors.slice(0, 1),
        openings: [
          {
            id: 'grille',
            origin: 'openings.grille',
            zone: 'utility',
            to: { kind: 'zone', zone: 'garage' },
            heightM: 1,
            law: hole(0.02),
            duringTest: 'sealed',
          },
        ],
        weathers: [weather('still', 20), weather('windy', -10, drawn.wind)],
      },
      rooms,
    ),
  );

describe('the worst case by ordering', () => {
  it('agrees with going through every state, leaky fans, doors and interlocks included', async () => {
    let ordered = 0;
    let notShown = 0;
    await fc.assert(
      fc.asyncProperty(anyHouse, async (house) => {
        const network = compiled(house);
        const every = await worstCaseStudy(network, { listUpTo: Infinity });
        const covered = await worstCaseStudy(network, { listUpTo: 0 });
        expect(every.unsolved).toEqual([]);
        const range = await pressureRangeStudy(network);
        range.zones.forEach(({ highest, largestRise }, index) => {
          const readings = every.situations.map((situation) => situation.zones[index]!);
          const most = Math.max(...readings.map(({ pressurePa }) => pressurePa));
          const rise = Math.max(...readings.map((reading) => reading.changeFromBaselinePa));
          // As below.
          expect(Math.abs(highest.pressurePa - most)).toBeLessThan(1.01e-4);
          expect(Math.abs(largestRise.changeFromBaselinePa - rise)).toBeLessThan(1.01e-4);
        });
        if (covered.coverage === undefined) {
          notShown += 1;
          return;
        }
        expect(covered.coverage.proved).toBe(true);
        expect(covered.coverage.situations).toBe(every.situations.length);
        ordered += covered.coverage.ordered.length;
        covered.zones.forEach((zone, index) => {
          const other = every.zones[index]!;
          // States within 1e-4 Pa tie, and either may be named.
          expect(Math.abs(zone.lowest.pressurePa - other.lowest.pressurePa)).toBeLessThan(1.01e-4);
          expect(
            Math.abs(
              zone.largestFall.changeFromBaselinePa - other.largestFall.changeFromBaselinePa,
            ),
          ).toBeLessThan(1.01e-4);
        });
      }),
      { numRuns: 12 },
    );

    expect(ordered).toBeGreaterThan(15);
    expect(notShown).toBe(0);
  });

  it('covers over a million states of twenty devices by a few solves', async () => {
    const devices = Array.from({ length: 20 }, (_, index) =>
      device(`fan ${index}`, { on: fan(0.02 + 0.001 * index) }, { offLaw: leak(1e-4) }),
    );
    const study = await worstCaseStudy(compiled(inventedHouse({ devices })));
    expect(study.counts.states).toBe(2 ** 21);
    expect(study.coverage).toEqual({
      situations: 2 ** 22,
      ordered: devices.map(({ id }) => id),
      notOrdered: [],
      proved: true,
    });
    expect(study.counts.solves).toBeLessThan(500);
    expect(Object.keys(study.zones[0]!.lowest.state.running)).toHaveLength(20);
  });

  it('goes through windows, and agrees on devices with ducts and dampers', async () => {
    const duct = { diameter: '200 mm', length: '6 m', rise: '4 m' };
    const result = parseHouse({
      evendraft: 1,
      name: 'Synthetic',
      floorArea: '200 m2',
      ceilingHeight: '2.5 m',
      airtightness: '300 L/s at 50 Pa',
      openings: { window: { area: '0.05 m2', to: 'back', positions: ['open', 'shut'] } },
      exhaust: {
        hood: { low: '100 L/s', high: '300 L/s', duct, damper: 'none' },
        dryer: { flow: '70 L/s', duct: { ...duct, diameter: '100 mm' }, lintScreen: '30 Pa' },
        'bath fan': {
          flow: '40 L/s',
          duct: { ...duct, diameter: '100 mm' },
          blower: 'remote',
          damper: { kind: 'motorized', leakageClass: 'AMCA 3' },
        },
        'exhaust fan': { flow: '60 L/s', constantFlow: { upTo: '150 Pa' }, duct },
      },
    });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    const { house } = result;
    const every = await worstCaseStudy(compiled(house), { listUpTo: Infinity });
    const covered = await worstCaseStudy(compiled(house), { listUpTo: 0 });
    expect(every.unsolved).toEqual([]);
    expect(every.counts.states).toBe(operatingStates(house).length);
    expect(every.counts.states).toBe(2 * 3 * 2 * 2 * 2);
    expect(every.zones[0]?.lowest.state.doors).toEqual({ window: 'shut' });
    for (const [index, { lowest }] of covered.zones.entries()) {
      const expected = every.zones[index]?.lowest.pressurePa ?? Number.NaN;
      // Equal to what the enclosures of both solves leave open.
      expect(lowest.pressurePa).toBeCloseTo(expected, 5);
    }
  });

  it('names the plainest of the states that tie', async () => {
    // Weak fans are blocked at the suction that the first one makes, so that they change nothing.
    const weak = {
      kind: 'fanCurve',
      points: [
        { pressureRisePa: 0.5, volumeFlowM3PerS: 0 },
        { pressureRisePa: 0, volumeFlowM3PerS: 0.01 },
      ],
      beyondShutOff: 'blocked',
    } as const;
    const house = inventedHouse({
      devices: [
        device('weak one', { on: weak }),
        device('strong', { on: constantFlow(0.1) }),
        device('weak two', { on: weak }),
      ],
    });
    const study = await worstCaseStudy(compiled(house), { listUpTo: 0 });
    for (const zone of study.zones) expect(zone.lowest.state.running).toEqual({ strong: 'on' });
  });
});

import { airAt } from '@evendraft/airflow';
import {
  buildNetwork,
  solveNetwork,
  type LinkDescription,
  type NetworkDescription,
} from '@evendraft/network';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { randomNumbers } from './random-numbers.js';

const outdoors = airAt({ temperatureC: -10, pressurePa: 101325 });

it('rooms of unlike air with open doors balance, are enclosed, and take few steps', () => {
  let mostIterations = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const description = openHouse(seed);
      const built = buildNetwork(description);
      if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
      const balance = solveNetwork(built.network);
      if (balance.status !== 'solved') throw new Error(`${balance.status}: ${balance.hint}`);
      expect(balance.proof.enclosed).toBe(true);
      mostIterations = Math.max(mostIterations, balance.proof.iterations);

      const { massFlowKgPerS, forwardKgPerS, backwardKgPerS } = balance.links;
      const net = new Map(description.zones.map(({ id }) => [id, { gain: 0, through: 0 }]));
      description.links.forEach((link, index) => {
        const forward = forwardKgPerS[index]!;
        const backward = backwardKgPerS[index]!;
        expect(forward).toBeGreaterThanOrEqual(0);
        expect(backward).toBeGreaterThanOrEqual(0);
        expect(Math.abs(forward - backward - massFlowKgPerS[index]!)).toBeLessThanOrEqual(
          1e-14 * (forward + backward),
        );
        for (const [zone, sign] of [
          [net.get(link.from), -1],
          [net.get(link.to), 1],
        ] as const) {
          if (zone === undefined) continue;
          zone.gain += sign * (forward - backward);
          zone.through += forward + backward;
        }
      });
      for (const { gain, through } of net.values()) {
        // Beside the tolerance: the last digit of a pressure of some hundred pascals moves 1e-13 kg/s at an open door.
        expect(Math.abs(gain)).toBeLessThanOrEqual(1e-9 * through + 1e-12);
      }
    }),
    { seed: 1126, numRuns: 300 },
  );
  // Counted, not timed: a law whose slope were wrong would cost steps.
  expect(mostIterations).toBeLessThanOrEqual(15);
});

/** A row of rooms, every neighbour behind an open door, some with leaks, one with an exhaust. */
function openHouse(seed: number): NetworkDescription {
  const random = randomNumbers(seed);
  const rooms = 2 + random.below(7);
  const zones = Array.from({ length: rooms }, (_, index) => ({
    id: `room ${index}`,
    origin: `room ${index}`,
    heightM: 0,
    // Some rooms are alike to the last digit, where a door is an orifice.
    air: airAt({
      temperatureC: random.chance(0.3) ? 20 : random.between(5, 35),
      pressurePa: 101325,
    }),
  }));
  const link = (id: string, from: string, to: string, heightM: number) => ({
    id,
    origin: id,
    from,
    to,
    fromHeightM: heightM,
    toHeightM: heightM,
  });
  const links: LinkDescription[] = zones.flatMap(({ id }, index) => [
    ...(index === 0 || random.chance(0.5)
      ? [
          {
            ...link(`leak ${index}`, id, 'outdoors', random.between(0, 2.5)),
            law: {
              kind: 'powerLaw',
              coefficientM3PerSPaN: random.decades(1e-4, 0.05),
              exponent: 0.65,
            } as const,
          },
        ]
      : []),
    ...(index === 0
      ? []
      : [
          {
            ...link(`door ${index}`, `room ${random.below(index)}`, id, random.between(0, 0.2)),
            law: {
              kind: 'doorway',
              widthM: random.decades(0.01, 1.5),
              heightM: random.between(0.1, 2.4),
              dischargeCoefficient: random.between(0.4, 0.65),
            } as const,
          },
        ]),
  ]);
  links.push({
    ...link('exhaust', `room ${random.below(rooms)}`, 'outdoors', 0),
    law: { kind: 'fixedFlow', volumeFlowM3PerS: random.between(0, 0.2) },
  });
  return {
    outdoorAir: outdoors,
    zones,
    boundaries: [{ id: 'outdoors', origin: 'outdoors', heightM: 0, pressurePa: 0, air: outdoors }],
    links,
  };
}

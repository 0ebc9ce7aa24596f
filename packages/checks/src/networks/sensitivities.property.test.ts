import type { BuiltNetwork, Reading, Scenario } from '@evendraft/network';
import {
  buildNetwork,
  linearDeviation,
  readingSensitivities,
  sizeOpening,
  solveNetwork,
} from '@evendraft/network';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { houseNetwork } from './house-network.js';

const runs = { seed: 13, numRuns: 40 };
const seeds = fc.integer({ min: 1, max: 1_000_000 });

describe('sensitivities by the adjoint', () => {
  it.each<[string, (description: { zones: readonly { id: string }[] }) => Reading]>([
    ['a zone pressure', ({ zones }) => ({ kind: 'zonePressure', zoneId: zones[0]!.id })],
    [
      'a difference of two zones',
      ({ zones }) => ({
        kind: 'zoneDifference',
        zoneId: zones[0]!.id,
        otherZoneId: zones[zones.length - 1]!.id,
      }),
    ],
    ['the flow of a link', () => ({ kind: 'linkFlow', linkId: 'link1' })],
  ])('of %s agree with central differences', (_, readingOf) => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { network, scenario } = house(seed);
        const { links, boundaries } = network.description;
        const reading = readingOf(network.description);
        const result = readingSensitivities(network, reading, scenario);
        if (result.status !== 'solved') throw new Error(result.hint);
        const valueAt = (change: Scenario): number => {
          const other = readingSensitivities(network, reading, { ...scenario, ...change });
          if (other.status !== 'solved') throw new Error(other.hint);
          return other.value;
        };
        const size = Math.max(1e-3, ...result.perLogScale.map(Math.abs));
        links.forEach((__, link) => {
          const scaled = (factor: number): Scenario => ({
            linkScale: Float64Array.from(links, (___, k) => (k === link ? factor : 1)),
          });
          const slope = (valueAt(scaled(Math.exp(1e-4))) - valueAt(scaled(Math.exp(-1e-4)))) / 2e-4;
          // A central difference over 1e-4 is good to about 1e-5 of the greatest slope: flows bend.
          expect(Math.abs(slope - result.perLogScale[link]!)).toBeLessThan(3e-4 * size);
        });
        boundaries.forEach((__, index) => {
          const moved = (step: number): Scenario => ({
            boundaryPressuresPa: Float64Array.from(
              boundaries,
              ({ pressurePa }, k) => pressurePa + (k === index ? step : 0),
            ),
          });
          const slope = (valueAt(moved(1e-4)) - valueAt(moved(-1e-4))) / 2e-4;
          const scale = Math.max(1e-4, Math.abs(slope));
          expect(Math.abs(slope - result.perBoundaryPa[index]!)).toBeLessThan(1e-2 * scale);
        });
      }),
      runs,
    );
  });

  it('give a standard deviation as the root of the sum of squares', () => {
    const { network, scenario } = house(3);
    const zoneId = network.description.zones[0]!.id;
    const result = readingSensitivities(network, { kind: 'zonePressure', zoneId }, scenario);
    if (result.status !== 'solved') throw new Error(result.hint);
    const deviation = new Float64Array(network.description.links.length);
    deviation[0] = 0.3;
    expect(linearDeviation(result, deviation)).toBeCloseTo(
      0.3 * Math.abs(result.perLogScale[0]!),
      12,
    );
  });
});

it('an opening sized by one solve holds its zone at the target', () => {
  let held = 0;
  fc.assert(
    fc.property(seeds, fc.integer({ min: -20, max: 20 }), (seed, targetPa) => {
      const { network, scenario } = house(seed);
      const zone = seed % network.description.zones.length;
      const zoneId = network.description.zones[zone]!.id;
      const linkId = network.description.links.find(
        (link) => link.from === zoneId && link.law.kind === 'powerLaw',
      )!.id;
      const sized = sizeOpening(network, { zoneId, targetPa, linkId, scenario });
      if (sized.status === 'wrong-direction') return;
      if (sized.status !== 'solved') throw new Error(sized.hint);
      // A factor beyond a million is outside what a scenario may hold.
      if (sized.scale > 1e5) return;
      const linkScale = new Float64Array(network.description.links.length).fill(1);
      linkScale[network.linkIndex.get(linkId)!] = sized.scale;
      const result = solveNetwork(network, { ...scenario, linkScale });
      if (result.status !== 'solved') throw new Error(result.hint);
      expect(Math.abs(result.pressuresPa[zone]! - targetPa)).toBeLessThan(1e-6);
      held++;
    }),
    { seed: 17, numRuns: 200 },
  );
  expect(held).toBeGreaterThan(40);
});

function house(seed: number): { network: BuiltNetwork; scenario: Scenario } {
  const { description, scenario } = houseNetwork(seed, { mostZones: 6, stack: true });
  const built = buildNetwork(description);
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
  return { network: built.network, scenario };
}

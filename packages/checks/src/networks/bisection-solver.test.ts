import { buildNetwork, solveNetwork } from '@evendraft/network';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { solveByBisection } from './bisection-solver.js';
import { houseNetwork } from './house-network.js';

it('the fast solver agrees with zone-by-zone bisection on networks of up to four rooms', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const { description, scenario } = houseNetwork(seed, { mostZones: 4 });
      const slow = solveByBisection(description, scenario);
      const built = buildNetwork(description);
      if (built.status !== 'built') throw new Error('not built');
      const fast = solveNetwork(built.network, scenario);
      if (fast.status !== 'solved') throw new Error(fast.hint);
      // Bisection stops when no zone moves by 1e-10 Pa, which is not yet the distance to the answer.
      const tolerancePa = 1e-6;
      description.zones.forEach((zone, index) => {
        expect(Math.abs(fast.pressuresPa[index]! - slow.get(zone.id)!)).toBeLessThan(tolerancePa);
      });
    }),
    { seed: 11, numRuns: 6 },
  );
}, 60_000);

import type { BuiltNetwork, ScenarioBatch } from '@evendraft/network';
import { buildNetwork } from '@evendraft/network';
import { houseNetwork } from '../networks/house-network.js';

const count = 700;

/** An invented house of some rooms in seven hundred winds; every fiftieth row is not a scenario. */
export function houseBatch(): { readonly network: BuiltNetwork; readonly batch: ScenarioBatch } {
  const { description } = houseNetwork(12, { mostZones: 8, stack: true });
  const built = buildNetwork(description);
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
  const faces = description.boundaries.length;
  return {
    network: built.network,
    batch: {
      count,
      boundaryPressuresPa: Float64Array.from({ length: count * faces }, (_, k) =>
        k % (50 * faces) === 49 * faces ? NaN : 8 * Math.sin(k),
      ),
    },
  };
}

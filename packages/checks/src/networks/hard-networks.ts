import { buildNetwork, solveNetwork } from '@evendraft/network';
import type { ZoneRange } from './hard-network.js';
import { hardNetwork } from './hard-network.js';

const atmospherePa = 101_325;

/** What became of a range of hard networks. */
export interface HardNetworksOutcome {
  readonly tried: number;
  /** Seeds of networks without an answer. */
  readonly failed: number[];
  /** Seeds of networks, of those within one atmosphere, whose answer could not be enclosed. */
  readonly notEnclosed: number[];
  /** Networks with a pressure beyond one atmosphere: no building, but solved all the same. */
  readonly beyondAtmosphere: number;
  /** Those of them whose answer could not be enclosed: doubles end there. */
  readonly notEnclosedBeyond: number;
  readonly iterations: number;
  readonly mostIterations: number;
  readonly lawSweeps: number;
  /** Greatest radius of an enclosure, relative to the greatest pressure or 1 Pa [-]. */
  readonly greatestRelativeRadius: number;
}

/**
 * Solves the hard networks of a range of seeds.
 *
 * @param first - first seed
 * @param count - how many
 * @param range - of their numbers of zones; 1 to 30 when omitted
 * @returns counts, and the seeds that failed
 */
export function tryHardNetworks(
  first: number,
  count: number,
  range?: ZoneRange,
): HardNetworksOutcome {
  const failed: number[] = [];
  const notEnclosed: number[] = [];
  let iterations = 0;
  let mostIterations = 0;
  let lawSweeps = 0;
  let greatestRelativeRadius = 0;
  let beyondAtmosphere = 0;
  let notEnclosedBeyond = 0;
  for (let seed = first; seed < first + count; seed++) {
    const { description, scenario } = hardNetwork(seed, range);
    const built = buildNetwork(description);
    const result = built.status === 'built' ? solveNetwork(built.network, scenario) : undefined;
    if (result?.status !== 'solved') {
      failed.push(seed);
      continue;
    }
    const { proof, pressuresPa } = result;
    iterations += proof.iterations;
    lawSweeps += proof.lawSweeps;
    mostIterations = Math.max(mostIterations, proof.iterations);
    let scale = 1;
    for (const pressure of pressuresPa) scale = Math.max(scale, Math.abs(pressure));
    if (scale > atmospherePa) {
      beyondAtmosphere++;
      if (!proof.enclosed) notEnclosedBeyond++;
    } else if (proof.enclosureRadiusPa === undefined) {
      notEnclosed.push(seed);
    } else {
      greatestRelativeRadius = Math.max(greatestRelativeRadius, proof.enclosureRadiusPa / scale);
    }
  }
  return {
    tried: count,
    failed,
    notEnclosed,
    iterations,
    mostIterations,
    lawSweeps,
    greatestRelativeRadius,
    beyondAtmosphere,
    notEnclosedBeyond,
  };
}

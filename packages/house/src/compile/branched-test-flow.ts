import { referenceAir } from '@evendraft/airflow';
import { buildNetwork, solveNetwork } from '@evendraft/network';
import type { HousePaths } from './house-link.js';

/** A branched path during an airtightness test. */
export interface TestedPaths {
  /** What is open during the test; fans do not run. */
  readonly paths: HousePaths;
  /** Ids of nodes that stand at the test pressure. */
  readonly inside: ReadonlySet<string>;
  /** Pressure of the inside against outdoors and everything else, negative when depressurized [Pa]. */
  readonly pressurePa: number;
}

/** What passes, or why that could not be told. */
export type TestFlow =
  | { readonly status: 'solved'; readonly volumeFlowM3PerS: number }
  | { readonly status: 'not solved'; readonly reason: string };

const air = {
  temperatureC: referenceAir.temperatureC,
  densityKgPerM3: referenceAir.densityKgPerM3,
};

/**
 * Flow between the inside of a tested house and everything else through paths that branch, such as flues that
 * join or ducts with registers, with reference air on all sides [m3/s].
 *
 * @param tested - paths, what is inside, and its pressure
 * @returns the flow, whatever its direction, or the outcome of a solve without an answer
 */
export function branchedTestFlow(tested: TestedPaths): TestFlow {
  const { paths, inside, pressurePa } = tested;
  if (paths.links.length === 0) return { status: 'solved', volumeFlowM3PerS: 0 };
  const links = paths.links.map(({ description: { id, origin, from, to, law } }) => {
    return { id, origin, from, to, fromHeightM: 0, toHeightM: 0, law };
  });
  const junctions = new Set(paths.junctions.map(({ id }) => id));
  const ends = new Set(links.flatMap(({ from, to }) => [from, to]));
  const built = buildNetwork({
    outdoorAir: air,
    zones: paths.junctions
      .filter(({ id }) => ends.has(id))
      .map(({ id, origin }) => ({ id, origin, heightM: 0, air })),
    boundaries: [...ends]
      .filter((id) => !junctions.has(id))
      .map((id) => ({
        id,
        origin: id,
        heightM: 0,
        pressurePa: inside.has(id) ? pressurePa : 0,
        air,
      })),
    links,
  });
  if (built.status === 'rejected') return { status: 'not solved', reason: 'rejected' };
  const balance = solveNetwork(built.network);
  if (balance.status !== 'solved') return { status: 'not solved', reason: balance.status };
  const inward = links.reduce((sum, { from, to }, i) => {
    const flow = balance.links.massFlowKgPerS[i]!;
    return sum + (inside.has(to) ? flow : 0) - (inside.has(from) ? flow : 0);
  }, 0);
  return { status: 'solved', volumeFlowM3PerS: Math.abs(inward) / referenceAir.densityKgPerM3 };
}

import type { CompiledHouse } from '@evendraft/house';
import { solveNetwork } from '@evendraft/network';
import type { FluesOfSituation } from './flues-of-situation.js';
import { gasOfRoot } from './gas-of-root.js';
import { scenarioWithGas } from './scenario-with-gas.js';
import { ventsAtFlows, type VentsAtFlows } from './vents-at-flows.js';

/** Greatest number of rounds, and the change of a flow by its size at which they end. */
const mostRounds = 600;
const settledAt = 1e-8;

/**
 * The flows to which flues go from given ones: gas as it is at the flows, flows as they are with the gas, round after
 * round, each round half the way [kg/s].
 *
 * It follows the way that slow walls take, without their time, and ends in the stable state in whose reach it began.
 *
 * @param compiled - the compiled house
 * @param set - flues in the situation
 * @param start - by flue [kg/s]
 * @returns by flue; `undefined` where it does not come to rest or air has no balance [kg/s]
 */
export function settleFlues(
  compiled: CompiledHouse,
  set: FluesOfSituation,
  start: readonly number[],
): readonly number[] | undefined {
  const { network } = compiled;
  const links = set.systems.flatMap(({ members }) =>
    members.map(({ vent }) => network.linkIndex.get(vent.link) ?? -1),
  );
  let flows = start;
  let pressures: Float64Array | undefined;
  for (let round = 0; round < mostRounds; round++) {
    const gas = gasOfRoot(statesAtFlows(set, flows));
    const balance = solveNetwork(network, scenarioWithGas(compiled, set, gas), {
      enclosure: false,
      ...(pressures === undefined ? {} : { start: pressures }),
    });
    if (balance.status !== 'solved') return undefined;
    pressures = balance.pressuresPa;
    const next = links.map((link) => balance.links.massFlowKgPerS[link]!);
    const moved = Math.max(
      0,
      ...next.map((flow, k) => Math.abs(flow - flows[k]!) / (Math.abs(flow) + 1e-5)),
    );
    if (moved < settledAt) return next;
    flows = flows.map((flow, k) => (flow + next[k]!) / 2);
  }
  return undefined;
}

/**
 * States of all systems at the flows of their flues.
 *
 * @param set - flues in the situation
 * @param flows - by flue [kg/s]
 * @returns by system
 */
export function statesAtFlows(
  { systems }: Pick<FluesOfSituation, 'systems'>,
  flows: readonly number[],
): readonly VentsAtFlows[] {
  let first = 0;
  return systems.map((system) => {
    const own = flows.slice(first, first + system.members.length);
    first += system.members.length;
    return ventsAtFlows(system, own);
  });
}

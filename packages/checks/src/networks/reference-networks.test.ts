import { nearZeroWidthPa } from '@evendraft/airflow';
import type { Balance, BuiltNetwork } from '@evendraft/network';
import { buildNetwork, checkNetwork, findAllBalances, solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { readReferenceNetworks } from './read-reference-networks.js';
import type { ReferenceNetwork, ReferenceSolution } from './reference-network.js';
import { translateNetwork } from './reference-network.js';

for (const folder of ['solved', 'hard-for-others', 'large']) {
  describe(`reference networks: ${folder}`, () => {
    it.each(readReferenceNetworks(folder).map((network) => [network.id, network] as const))(
      '%s has the pressures and flows that 50 digits give',
      (_, network) => {
        const { balance } = solve(network);
        expectSolution(network, balance, network.solution!);
        expect(balance.proof.enclosed).toBe(true);
        expect(balance.proof.unique).toBe(true);
        // Wider than the solver's 1e-9: in a zone with hardly any flow, rounding is what is left.
        expect(balance.proof.largestRelativeResidual).toBeLessThan(1e-6);
      },
    );
  });
}

describe('reference networks: verdicts', () => {
  it.each(readReferenceNetworks('verdicts').map((network) => [network.id, network] as const))(
    '%s is judged before solving as its file says',
    (_, network) => {
      const { description, scenario } = translateNetwork(network);
      const verdict = checkNetwork(build(description), scenario);
      const expected = network.expect!;
      expect(verdict.verdict === 'not-unique' ? 'nonunique' : verdict.verdict).toBe(
        expected.verdict,
      );
      expect([...verdict.zones].sort()).toEqual([...expected.zones].sort());
      if (network.solution !== undefined) {
        expectSolution(network, solve(network).balance, network.solution);
      }
    },
  );
});

describe.each(
  readReferenceNetworks('several-answers').map((network) => [network.id, network] as const),
)('reference networks: several answers: %s', (_, network) => {
  const { description, scenario } = translateNetwork(network);

  it('is rejected by name, because its fan curve rises', () => {
    const result = buildNetwork(description);
    expect(result.status).toBe('rejected');
    if (result.status === 'rejected') {
      expect(result.issues.map((issue) => [issue.code, issue.origin])).toEqual([
        ['RisingFanCurve', network.nonMonotoneEdge],
      ]);
    }
  });

  it('has all its answers found, with their stability', () => {
    const all = findAllBalances(description, scenario);
    if (all.status !== 'solved') throw new Error(JSON.stringify(all));
    const expected = network.solutions!;
    expect(all.complete).toBe(true);
    expect(all.balances).toHaveLength(expected.length);
    all.balances.forEach((root, index) => {
      expect(root.stable).toBe(expected[index]!.stable);
      expectSolution(network, root.balance, expected[index]!);
    });
  });
});

function build(description: Parameters<typeof buildNetwork>[0]): BuiltNetwork {
  const result = buildNetwork(description);
  if (result.status === 'rejected') throw new Error(JSON.stringify(result.issues));
  return result.network;
}

function solve(network: ReferenceNetwork): { balance: Balance } {
  const { description, scenario } = translateNetwork(network);
  const result = solveNetwork(build(description), scenario);
  if (result.status !== 'solved') throw new Error(`${result.status}: ${result.hint}`);
  return { balance: result };
}

/** The tolerance is that of the networks' README: half our width near zero plus 1e-8 of the greatest pressure. */
function expectSolution(
  network: ReferenceNetwork,
  balance: Balance,
  solution: ReferenceSolution,
): void {
  const sizes = Object.values(solution.pressuresPa).map(Math.abs);
  const tolerancePa = 0.5 * nearZeroWidthPa + 1e-8 * Math.max(1, ...sizes);
  network.zones.forEach((zone, index) => {
    const error = Math.abs(balance.pressuresPa[index]! - solution.pressuresPa[zone]!);
    expect(error, `pressure of ${zone}`).toBeLessThanOrEqual(tolerancePa);
  });
  const through = new Map<string, number>();
  for (const edge of network.edges) {
    const flow = Math.abs(solution.flowsKgPerS[edge.id]!);
    for (const end of [edge.from, edge.to]) through.set(end, (through.get(end) ?? 0) + flow);
  }
  network.edges.forEach((edge, index) => {
    const zones = [edge.from, edge.to].filter((end) => network.zones.includes(end));
    const allowed = 1e-6 * Math.max(...zones.map((zone) => through.get(zone) ?? 0));
    const error = Math.abs(balance.links.massFlowKgPerS[index]! - solution.flowsKgPerS[edge.id]!);
    expect(error, `flow of ${edge.id}`).toBeLessThanOrEqual(allowed);
  });
}

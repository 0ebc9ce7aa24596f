import { flowAt } from '@evendraft/airflow';
import type { NetworkDescription, Scenario } from '@evendraft/network';

/**
 * The slow, obvious solver: zone after zone, the pressure at which that zone alone balances against its
 * neighbours as they stand, found by bisection; round after round until nothing moves. It shares no code with
 * the fast one but the laws, one link at a time, and works for equal heights only.
 *
 * It converges because raising a zone's pressure only raises the pressure at which its neighbours balance.
 * Source: Rheinboldt, J. Math. Anal. Appl. 32 (1970) 274-307, nonlinear Gauss-Seidel for M-functions.
 *
 * @param description - zones, boundaries and links, all heights equal
 * @param scenario - offsets and scales
 * @returns pressure by zone id [Pa]
 */
export function solveByBisection(
  description: NetworkDescription,
  scenario: Scenario = {},
): Map<string, number> {
  const nodes = [...description.zones, ...description.boundaries];
  const air = new Map(nodes.map((node) => [node.id, node.air]));
  const pressure = new Map<string, number>(description.zones.map((zone) => [zone.id, 0]));
  description.boundaries.forEach((boundary, index) =>
    pressure.set(boundary.id, scenario.boundaryPressuresPa?.[index] ?? boundary.pressurePa),
  );

  /** Net flow out of a zone at a trial pressure, the others as they stand [kg/s]. */
  const netOutflow = (zone: string, trialPa: number): number => {
    let sum = 0;
    description.links.forEach((link, index) => {
      if (link.from !== zone && link.to !== zone) return;
      const from = link.from === zone ? trialPa : pressure.get(link.from)!;
      const to = link.to === zone ? trialPa : pressure.get(link.to)!;
      const offset = scenario.linkOffsetPa?.[index] ?? 0;
      const ends = { from: air.get(link.from)!, to: air.get(link.to)! };
      const flow =
        (scenario.linkScale?.[index] ?? 1) *
        flowAt(link.law, from - to + offset, ends).massFlowKgPerS;
      sum += link.from === zone ? flow : -flow;
    });
    return sum;
  };

  for (let round = 0; round < 20_000; round++) {
    let moved = 0;
    for (const { id } of description.zones) {
      let low = -2000;
      let high = 2000;
      for (let halving = 0; halving < 60; halving++) {
        const middle = (low + high) / 2;
        if (netOutflow(id, middle) > 0) high = middle;
        else low = middle;
      }
      const balanced = (low + high) / 2;
      moved = Math.max(moved, Math.abs(balanced - pressure.get(id)!));
      pressure.set(id, balanced);
    }
    if (moved < 1e-10) break;
  }
  return pressure;
}

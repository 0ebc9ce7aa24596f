import type { LinkFlows } from '../balance.js';
import type { Kernel } from './kernel.js';

/** Flows of all links in the order of the description, from the laws last evaluated at `kernel.pressure`. */
export function linkFlows(kernel: Kernel): LinkFlows {
  const { linkCount, from, to, pressure, drivePa, activePlace, state, nodeDensityKgPerM3 } = kernel;
  const flows: LinkFlows = {
    massFlowKgPerS: new Float64Array(linkCount),
    forwardKgPerS: new Float64Array(linkCount),
    backwardKgPerS: new Float64Array(linkCount),
    pressureDifferencePa: new Float64Array(linkCount),
    volumeFlowM3PerS: new Float64Array(linkCount),
  };
  for (let link = 0; link < linkCount; link++) {
    const active = activePlace[link]!;
    const flow = active < 0 ? 0 : state.massFlowKgPerS[active]!;
    const inlet = flow > 0 ? from[link]! : to[link]!;
    flows.massFlowKgPerS[link] = flow;
    flows.forwardKgPerS[link] = Math.max(flow, 0);
    flows.backwardKgPerS[link] = Math.max(-flow, 0);
    flows.pressureDifferencePa[link] =
      pressure[from[link]!]! - pressure[to[link]!]! + drivePa[link]!;
    flows.volumeFlowM3PerS[link] = flow / nodeDensityKgPerM3[inlet]!;
  }
  return flows;
}

import type { InletAir } from '@evendraft/airflow';
import type { LinkFlows } from '../balance.js';
import type { Kernel } from './kernel.js';

/** Flows of all links in the order of the description, from the laws last evaluated at `kernel.pressure`. */
export function linkFlows(kernel: Kernel): LinkFlows {
  const { linkCount, from, to, pressure, drivePa, activePlace, nodeDensityKgPerM3 } = kernel;
  const flows: LinkFlows = {
    massFlowKgPerS: new Float64Array(linkCount),
    forwardKgPerS: new Float64Array(linkCount),
    backwardKgPerS: new Float64Array(linkCount),
    pressureDifferencePa: new Float64Array(linkCount),
    volumeFlowM3PerS: new Float64Array(linkCount),
  };
  for (let link = 0; link < linkCount; link++) {
    const active = activePlace[link]!;
    const flow = active < 0 ? 0 : flowOfActive(kernel, active);
    const inlet = flow > 0 ? from[link]! : to[link]!;
    flows.massFlowKgPerS[link] = flow;
    flows.forwardKgPerS[link] = Math.max(flow, 0);
    flows.backwardKgPerS[link] = Math.max(-flow, 0);
    flows.pressureDifferencePa[link] =
      pressure[from[link]!]! - pressure[to[link]!]! + drivePa[link]!;
    if (active >= 0) setStreams(kernel, link, flows);
    flows.volumeFlowM3PerS[link] = flow / nodeDensityKgPerM3[inlet]!;
  }
  return flows;
}

/** Flow of an active link from `from` to `to`, from the laws last evaluated [kg/s]. */
export function flowOfActive({ links }: Kernel, active: number): number {
  return links.state.massFlowKgPerS[active]!;
}

/** Where air flows both ways at once, the streams instead of the net flow. */
function setStreams(kernel: Kernel, link: number, flows: LinkFlows): void {
  const law = kernel.laws[link]!;
  if (law.streams === undefined) return;
  const air = { from: airAt(kernel, kernel.from[link]!), to: airAt(kernel, kernel.to[link]!) };
  const streams = law.streams(kernel.descriptions[link]!, flows.pressureDifferencePa[link]!, air);
  const scale = kernel.scale[link]!;
  flows.forwardKgPerS[link] = scale * streams.forwardKgPerS;
  flows.backwardKgPerS[link] = scale * streams.backwardKgPerS;
}

function airAt(kernel: Kernel, node: number): InletAir {
  return {
    densityKgPerM3: kernel.nodeDensityKgPerM3[node]!,
    logDensityRatio: kernel.nodeLogDensityRatio[node]!,
    logViscosityRatio: kernel.nodeLogViscosityRatio[node]!,
  };
}

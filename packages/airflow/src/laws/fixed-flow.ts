import type { FixedFlowDescription } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LinkState } from './flow-law.js';
import type { InletAir } from './inlet-air.js';
import { rangeProblems } from './internal/range-problem.js';

/**
 * A declared constant flow [kg/s].
 * m = rho Q with the density at its inlet, or m as given, at every pressure difference.
 */
export const fixedFlow: FlowLaw<FixedFlowDescription> = {
  kind: 'fixedFlow',
  equation: 'm = rho Q',
  validity:
    'a control holds the flow within its pressure range, which is not modelled; slope zero everywhere, not zero at zero',
  check(description) {
    const given = [description.volumeFlowM3PerS, description.massFlowKgPerS].filter(
      (flow) => flow !== undefined,
    );
    if (given.length !== 1) {
      return [
        {
          code: 'FixedFlowNeedsOneFlow',
          severity: 'error',
          field: 'volumeFlowM3PerS',
          found: given.length,
          allowed: 'exactly one of volumeFlowM3PerS and massFlowKgPerS',
        },
      ];
    }
    const volume = description.volumeFlowM3PerS !== undefined;
    return rangeProblems({
      field: volume ? 'volumeFlowM3PerS' : 'massFlowKgPerS',
      value: given[0] as number,
      least: -1e6,
      most: 1e6,
      unit: volume ? 'm3/s' : 'kg/s',
    });
  },
  recordLength: () => 1,
  constant: true,
  prepare(description, { from, to, scale, records, at }) {
    records[at] = scale * massFlow(description, from, to);
  },
  block(group: LawGroup, state: LinkState): void {
    for (let link = group.begin, at = 0; link < group.end; link++, at++) {
      state.massFlowKgPerS[link] = group.records[at]!;
      state.slopeKgPerSPa[link] = 0;
    }
  },
  reach(description, from, to) {
    const flow = massFlow(description, from, to);
    return { leastKgPerS: flow, mostKgPerS: flow, strict: false };
  },
};

function massFlow(description: FixedFlowDescription, from: InletAir, to: InletAir): number {
  if (description.massFlowKgPerS !== undefined) return description.massFlowKgPerS;
  const volume = description.volumeFlowM3PerS ?? 0;
  return volume * (volume > 0 ? from : to).densityKgPerM3;
}

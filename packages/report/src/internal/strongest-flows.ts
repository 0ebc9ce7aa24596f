import type { SectionFlow } from '../drawings/house-section-data.js';

/** One flow in the baseline and in the worst state, side by side. */
export interface FlowInBothStates {
  readonly name: string;
  readonly from?: string;
  readonly to?: string;
  /** From `from` to `to` [m³/s]. */
  readonly baseline?: number;
  readonly worst?: number;
}

/**
 * The flows of two states joined by name and ends, the strongest of the worst state first. What passes the same
 * walls at several heights is added up, in and out against each other.
 *
 * @param baseline - flows of the baseline
 * @param worst - flows of the worst state
 * @returns one entry a flow
 */
export function strongestFlows(
  baseline: readonly SectionFlow[],
  worst: readonly SectionFlow[],
): readonly FlowInBothStates[] {
  const joined = new Map<string, FlowInBothStates>();
  const put = (flows: readonly SectionFlow[], state: 'baseline' | 'worst'): void => {
    for (const { name, from, to, volumeFlowM3PerS } of flows) {
      const key = JSON.stringify([name, from, to]);
      const ends = { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
      const before = joined.get(key);
      const sum = (before?.[state] ?? 0) + volumeFlowM3PerS;
      joined.set(key, { name, ...ends, ...before, [state]: sum });
    }
  };
  put(baseline, 'baseline');
  put(worst, 'worst');
  return [...joined.values()].sort((a, b) => Math.abs(b.worst ?? 0) - Math.abs(a.worst ?? 0));
}

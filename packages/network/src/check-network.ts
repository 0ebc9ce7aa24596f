import type { BuiltNetwork } from './built-network.js';
import type { Scenario } from './scenario.js';
import { solveNetwork } from './solve-network.js';

/** Whether a scenario has an answer, and only one. */
export interface NetworkVerdict {
  readonly verdict: 'unique' | 'not-unique' | 'infeasible' | 'invalid-scenario' | 'undecided';
  /** Ids of the zones concerned. */
  readonly zones: readonly string[];
  /** What to add, in words; empty where nothing is missing. */
  readonly hint: string;
}

/**
 * Judges a scenario before it is used: by its graph, and where zones hang on dampers or flat curves, by
 * solving it and looking whether they are held.
 *
 * @param network - a built network
 * @param scenario - what differs from the description
 * @returns the verdict with the zones concerned
 */
export function checkNetwork(network: BuiltNetwork, scenario: Scenario = {}): NetworkVerdict {
  const result = solveNetwork(network, scenario, { enclosure: false });
  if (result.status === 'solved') return { verdict: 'unique', zones: [], hint: '' };
  const { status, zones, hint } = result;
  return { verdict: status === 'not-converged' ? 'undecided' : status, zones, hint };
}

import type { GasInFlues } from './scenario-with-gas.js';
import type { VentsAtFlows } from './vents-at-flows.js';

/**
 * Gas in the flues of a house whose vents have known flows, walls at rest.
 *
 * @param systems - states of the systems
 * @returns gas as the network of the house needs it
 */
export function gasOfRoot(systems: readonly VentsAtFlows[]): GasInFlues {
  return {
    members: systems.flatMap(({ members }) =>
      members.map(({ gas, collarTemperatureC }) => ({ ...gas, collarTemperatureC })),
    ),
    chimneys: systems.map(({ chimney, junctionTemperatureC }) =>
      chimney === undefined || junctionTemperatureC === undefined
        ? undefined
        : { ...chimney, junctionTemperatureC },
    ),
  };
}

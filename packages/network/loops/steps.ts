import { bendsAfterStep, bendsAtTrial, differences, tangents } from './links';
import { factorize, fill, solve, ZoneMatrix } from './matrix';
import { Network } from './network';
import { bendSums, moveTrial, takeResidual, tangentSums } from './zones';

/**
 * The step −H⁻¹F from the slopes and residuals at hand.
 *
 * @returns whether H was regular; else there is no step
 */
export function newtonStep(network: Network, matrix: ZoneMatrix): bool {
  fill(network, matrix);
  if (!factorize(matrix)) return false;
  residualStep(network, matrix);
  return true;
}

/** Likewise from the tangents of the laws. */
export function tangentStep(network: Network, matrix: ZoneMatrix): bool {
  tangents(network);
  tangentSums(network);
  return newtonStep(network, matrix);
}

/** The trial pressures a part t of the step away, and the pressure differences there. */
export function goAlong(network: Network, t: f64): void {
  moveTrial(network, t);
  differences(network);
}

/** The step −H⁻¹F from a matrix that is factorized. */
export function residualStep(network: Network, matrix: ZoneMatrix): void {
  takeResidual(network);
  solve(matrix, network.step);
}

/** The bend of the step: what balances that which the tangents leave out after it. */
export function bendOfStep(network: Network, matrix: ZoneMatrix): void {
  bendsAfterStep(network);
  bendSums(network);
  solve(matrix, network.bend);
}

/** The same for the step that has led to the trial pressures. */
export function bendOfTrial(network: Network, matrix: ZoneMatrix): void {
  bendsAtTrial(network);
  bendSums(network);
  solve(matrix, network.bend);
}

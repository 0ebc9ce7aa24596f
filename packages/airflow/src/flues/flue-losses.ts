import { airViscosity } from '../air/air-viscosity.js';
import { frictionFactor } from '../ducts/friction-factor.js';
import { requireFinite } from '../internal/require.js';
import type { FlueState } from './flue-state.js';
import type { FluePiece } from './flue-piece.js';

/**
 * What a flow costs in each piece of a flue [Pa].
 *
 * dp = (f L/Dh + K) m²/(2 rho A²) with the density and viscosity of each piece's own mean, which differ where the gas
 * cools; the viscosity is that of air. The draft left at a tap is the theoretical draft above it less the losses above
 * it.
 *
 * @param pieces - from the appliance to the top
 * @param state - their gas
 * @param massFlowKgPerS - flow, upwards positive [kg/s]
 * @returns loss of each piece, with the sign of the flow [Pa]
 *
 * Source: Darcy and Weisbach; EN 13384-1, section 8 (from memory).
 */
export function flueLosses(
  pieces: readonly FluePiece[],
  state: FlueState,
  massFlowKgPerS: number,
): readonly number[] {
  requireFinite('massFlowKgPerS', massFlowKgPerS);
  const size = Math.abs(massFlowKgPerS);
  return pieces.map((piece, index) => {
    if (size === 0) return 0;
    const { densityKgPerM3, meanTemperatureC } = state.pieces[index]!;
    const { areaM2, hydraulicDiameterM, lengthM, lossCoefficient, construction } = piece;
    const reynolds = (size * hydraulicDiameterM) / (areaM2 * airViscosity(meanTemperatureC));
    const friction = frictionFactor(reynolds, construction.roughnessM / hydraulicDiameterM);
    const coefficient = (friction * lengthM) / hydraulicDiameterM + lossCoefficient;
    return (coefficient * size * massFlowKgPerS) / (2 * densityKgPerM3 * areaM2 * areaM2);
  });
}

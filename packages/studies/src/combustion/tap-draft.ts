import type { AirState } from '@evendraft/airflow';
import type { OpenFlue } from './flues-of-situation.js';

/**
 * Draft at the test tap, just behind the draft hood or the collar: static pressure in the vent minus that of the room
 * at its height, negative where it draws [Pa].
 *
 * What the room's air loses on its way in, and what the gas loses at the entry of the vent, its own velocity included.
 * It is not the theoretical draft, of which at the flow that balances the losses take all.
 *
 * @param flue - entry and area
 * @param at - flow, gas as the vent's law takes it, and room minus collar [kg/s, Pa]
 * @returns vent minus room [Pa]
 */
export function tapDraft(
  { entryLoss, collarAreaM2 }: Pick<OpenFlue, 'entryLoss' | 'collarAreaM2'>,
  at: {
    readonly massFlowKgPerS: number;
    readonly lawAir: AirState;
    readonly inletSuctionPa: number;
  },
): number {
  const { massFlowKgPerS, lawAir, inletSuctionPa } = at;
  const velocityPressurePa =
    (massFlowKgPerS * Math.abs(massFlowKgPerS)) / (2 * lawAir.densityKgPerM3 * collarAreaM2 ** 2);
  return -inletSuctionPa - entryLoss * velocityPressurePa;
}

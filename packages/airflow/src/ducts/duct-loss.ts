import { inletAir, type AirState } from '../laws/inlet-air.js';
import { duct } from '../laws/duct.js';
import type { DuctDescription } from '../laws/flow-law-description.js';

/** A flow through a duct and the air that it moves. */
export interface DuctFlow {
  /** Volume flow at the duct's inlet, either sign [m3/s]. */
  readonly volumeFlowM3PerS: number;
  /** Air that enters the duct. */
  readonly air: AirState;
}

/**
 * Pressure that a duct loses at a flow [Pa].
 *
 * The duct law, asked the other way round; exact above 1e-6 Pa. The description is to be free of the
 * problems that `checkFlowLaw` names.
 *
 * @param description - the duct
 * @param flow - volume flow and air
 * @returns pressure at the inlet minus pressure at the outlet; of the flow's sign [Pa]
 */
export function ductLoss(description: DuctDescription, flow: DuctFlow): number {
  const air = inletAir(flow.air);
  const recordLength = duct.recordLength(description);
  const records = new Float64Array(recordLength);
  duct.prepare(description, { from: air, to: air, scale: 1, records, at: 0 });
  const state = {
    pressureDifferencePa: new Float64Array(1),
    massFlowKgPerS: Float64Array.of(flow.volumeFlowM3PerS * flow.air.densityKgPerM3),
    slopeKgPerSPa: new Float64Array(1),
  };
  const group = { records, recordLength, begin: 0, end: 1 };
  duct.inverseBlock?.(group, state);
  return state.pressureDifferencePa[0]!;
}

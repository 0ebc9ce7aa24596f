import { requireFinite, requireNotNegative } from '../internal/require.js';

/** Gas that flows into a junction or out of it. */
export interface GasStream {
  /** [kg/s] */
  readonly massFlowKgPerS: number;
  /** [°C] */
  readonly temperatureC: number;
}

/**
 * What enters a common vent: the streams of its connectors, mixed.
 *
 * Mass flows add and temperatures are weighted by them, as for gases of one specific heat. Only streams that flow into
 * the junction belong here; an appliance that is off brings the air of its draft hood.
 *
 * @param streams - gas of every connector that flows into the junction
 * @returns mixed stream, or `undefined` where nothing flows
 *
 * Source: mass and heat balance (derived).
 *
 * @example
 * mixFlueGases([
 *   { massFlowKgPerS: 0.01, temperatureC: 150 },
 *   { massFlowKgPerS: 0.005, temperatureC: 30 },
 * ])?.temperatureC; // => 110
 */
export function mixFlueGases(streams: readonly GasStream[]): GasStream | undefined {
  let massFlowKgPerS = 0;
  let heat = 0;
  for (const stream of streams) {
    requireNotNegative('massFlowKgPerS', stream.massFlowKgPerS);
    requireFinite('temperatureC', stream.temperatureC);
    massFlowKgPerS += stream.massFlowKgPerS;
    heat += stream.massFlowKgPerS * stream.temperatureC;
  }
  return massFlowKgPerS > 0 ? { massFlowKgPerS, temperatureC: heat / massFlowKgPerS } : undefined;
}

import { requireFinite, requireNotNegative } from '../internal/require.js';

/** The junction of a draft hood: appliance gas in, relief opening either way, vent either way. */
export interface DraftHood {
  /** Gas from the appliance [kg/s]. */
  readonly applianceFlowKgPerS: number;
  readonly applianceTemperatureC: number;
  /** Flow in the vent, upwards positive [kg/s]. */
  readonly ventFlowKgPerS: number;
  /** Air of the room, which dilutes [°C]. */
  readonly roomTemperatureC: number;
  /** Air that comes down a reversed vent [°C]. */
  readonly outdoorTemperatureC: number;
}

/** What goes where at a draft hood. */
export interface DraftHoodState {
  /** Room air drawn in through the relief opening [kg/s]. */
  readonly dilutionKgPerS: number;
  /** Appliance gas that comes out of the relief opening [kg/s]. */
  readonly spilledKgPerS: number;
  /** Share of the appliance's gas that spills; 0 while the appliance is off [-]. */
  readonly spilledShare: number;
  /** What enters the vent: gas and dilution upwards, outdoor air downwards [°C]. */
  readonly ventInletTemperatureC: number;
}

/**
 * How the gas of an appliance parts at its draft hood.
 *
 * A vent that takes more than the appliance gives draws room air with it; one that takes less leaves gas to spill; one
 * that runs backwards spills all of it, and only outdoor air is in the vent, so that the flame does not warm it. Gas
 * and air are taken to have one specific heat.
 *
 * @param hood - flows and temperatures
 * @returns dilution, spillage and what enters the vent
 *
 * Source: mass and heat balance (derived).
 *
 * @example
 * draftHoodMixing({
 *   applianceFlowKgPerS: 0.005,
 *   applianceTemperatureC: 220,
 *   ventFlowKgPerS: 0.008,
 *   roomTemperatureC: 20,
 *   outdoorTemperatureC: -5,
 * }).ventInletTemperatureC; // => 145
 */
export function draftHoodMixing(hood: DraftHood): DraftHoodState {
  const { applianceFlowKgPerS, applianceTemperatureC, ventFlowKgPerS, roomTemperatureC } = hood;
  requireNotNegative('applianceFlowKgPerS', applianceFlowKgPerS);
  requireFinite('ventFlowKgPerS', ventFlowKgPerS);
  requireFinite('applianceTemperatureC', applianceTemperatureC);
  requireFinite('roomTemperatureC', roomTemperatureC);
  requireFinite('outdoorTemperatureC', hood.outdoorTemperatureC);
  const taken = Math.min(applianceFlowKgPerS, Math.max(0, ventFlowKgPerS));
  const spilledKgPerS = applianceFlowKgPerS - taken;
  const gasShare = ventFlowKgPerS > 0 ? taken / ventFlowKgPerS : 0;
  const upward = roomTemperatureC + gasShare * (applianceTemperatureC - roomTemperatureC);
  return {
    dilutionKgPerS: Math.max(0, ventFlowKgPerS - applianceFlowKgPerS),
    spilledKgPerS,
    spilledShare: applianceFlowKgPerS > 0 ? spilledKgPerS / applianceFlowKgPerS : 0,
    ventInletTemperatureC: ventFlowKgPerS < 0 ? hood.outdoorTemperatureC : upward,
  };
}

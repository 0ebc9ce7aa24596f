import type { Provenance } from '../provenance.js';

/** Hearths and stoves that burn in stages. */
export type HearthKind = 'open hearth' | 'wood stove, door shut' | 'wood stove, door open';

/** Stages of a fire. */
export type HearthStageName = 'lighting' | 'full fire' | 'burn-down';

/** What a fire does in one of its stages. */
export interface HearthStage extends Provenance {
  /** Burn rate by the rate at full fire [-]. */
  readonly burnRateShare: number;
  /**
   * Part of the heat released, at the higher heating value, that the gas carries into the flue as its excess over the
   * temperature of the room; the rest goes to the room, to the walls of the hearth and with the water vapour [-].
   */
  readonly heatToGasShare: number;
  /** Air that goes up with the gas, beyond what the wood needs, as a share of that [-]. */
  readonly excessAir: number;
  /** How long the stage lasts, for a course over time [s]. */
  readonly durationS: number;
}

const assumed = (reason: string) =>
  ({ source: `our choice: ${reason}`, status: 'assumed' }) as const;

/**
 * Stages of hearths and stoves: a fire is not one flow.
 *
 * None of the numbers is published. They are set so that what is known in kind comes out: an open hearth takes ten
 * times the air that its wood needs and more, and sends most of its heat up with it; a stove with its door shut takes a
 * little over twice and sends a fifth; walls of the hearth take heat while a fire is lit; embers of the long burn-down
 * still give carbon monoxide. How hot the gas is follows from heat and flow.
 */
export const hearthStages: Readonly<
  Record<HearthKind, Readonly<Record<HearthStageName, HearthStage>>>
> = Object.freeze({
  'open hearth': {
    lighting: {
      burnRateShare: 0.3,
      heatToGasShare: 0.45,
      excessAir: 20,
      durationS: 600,
      ...assumed('a small flame in much air; the flue begins at room temperature'),
    },
    'full fire': {
      burnRateShare: 1,
      heatToGasShare: 0.75,
      excessAir: 10,
      durationS: 5400,
      ...assumed('ten times the air of the wood passes the opening'),
    },
    'burn-down': {
      burnRateShare: 0.1,
      heatToGasShare: 0.5,
      excessAir: 40,
      durationS: 7200,
      ...assumed('embers in the draft of a flue that cools'),
    },
  },
  'wood stove, door shut': {
    lighting: {
      burnRateShare: 0.4,
      heatToGasShare: 0.15,
      excessAir: 3,
      durationS: 900,
      ...assumed('kindling with the air control open'),
    },
    'full fire': {
      burnRateShare: 1,
      heatToGasShare: 0.2,
      excessAir: 1.2,
      durationS: 3600,
      ...assumed('10 % CO2 or a little less'),
    },
    'burn-down': {
      burnRateShare: 0.15,
      heatToGasShare: 0.2,
      excessAir: 5,
      durationS: 5400,
      ...assumed('charcoal with the air control nearly shut'),
    },
  },
  'wood stove, door open': {
    lighting: {
      burnRateShare: 0.4,
      heatToGasShare: 0.25,
      excessAir: 8,
      durationS: 600,
      ...assumed('door ajar for kindling'),
    },
    'full fire': {
      burnRateShare: 1,
      heatToGasShare: 0.45,
      excessAir: 6,
      durationS: 120,
      ...assumed('door open to reload'),
    },
    'burn-down': {
      burnRateShare: 0.15,
      heatToGasShare: 0.35,
      excessAir: 20,
      durationS: 120,
      ...assumed('door open on embers, to reload or to take out ash'),
    },
  },
});

import type { Provenance } from '../provenance.js';

/** Hearths and stoves that burn in stages. */
export type HearthKind = 'open hearth' | 'wood stove, door shut' | 'wood stove, door open';

/** Stages of a fire. */
export type HearthStageName = 'lighting' | 'full fire' | 'burn-down';

/** What a fire does in one of its stages. */
export interface HearthStage extends Provenance {
  /** Burn rate by the rate at full fire [-]. */
  readonly burnRateShare: number;
  /** Temperature of the gas where it enters the flue [°C]. */
  readonly gasTemperatureC: number;
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
 * times the air that its wood needs and more; a stove with its door shut a little over twice; the flue is cool while
 * a fire is lit, and cools again in the long burn-down, when embers still give carbon monoxide.
 */
export const hearthStages: Readonly<
  Record<HearthKind, Readonly<Record<HearthStageName, HearthStage>>>
> = Object.freeze({
  'open hearth': {
    lighting: {
      burnRateShare: 0.3,
      gasTemperatureC: 60,
      excessAir: 20,
      durationS: 600,
      ...assumed('a small flame in much air; the flue begins at room temperature'),
    },
    'full fire': {
      burnRateShare: 1,
      gasTemperatureC: 200,
      excessAir: 10,
      durationS: 5400,
      ...assumed('ten times the air of the wood passes the opening'),
    },
    'burn-down': {
      burnRateShare: 0.1,
      gasTemperatureC: 60,
      excessAir: 40,
      durationS: 7200,
      ...assumed('embers in the draft of a flue that cools'),
    },
  },
  'wood stove, door shut': {
    lighting: {
      burnRateShare: 0.4,
      gasTemperatureC: 120,
      excessAir: 3,
      durationS: 900,
      ...assumed('kindling with the air control open'),
    },
    'full fire': {
      burnRateShare: 1,
      gasTemperatureC: 280,
      excessAir: 1.2,
      durationS: 3600,
      ...assumed('10 % CO2 or a little less'),
    },
    'burn-down': {
      burnRateShare: 0.15,
      gasTemperatureC: 110,
      excessAir: 5,
      durationS: 5400,
      ...assumed('charcoal with the air control nearly shut'),
    },
  },
  'wood stove, door open': {
    lighting: {
      burnRateShare: 0.4,
      gasTemperatureC: 90,
      excessAir: 8,
      durationS: 600,
      ...assumed('door ajar for kindling'),
    },
    'full fire': {
      burnRateShare: 1,
      gasTemperatureC: 220,
      excessAir: 6,
      durationS: 120,
      ...assumed('door open to reload'),
    },
    'burn-down': {
      burnRateShare: 0.15,
      gasTemperatureC: 70,
      excessAir: 20,
      durationS: 120,
      ...assumed('door open on embers, to reload or to take out ash'),
    },
  },
});

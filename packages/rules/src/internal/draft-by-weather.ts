import type { DraftLimit } from '../further-limits.js';
import { siOf } from './si-of.js';

/**
 * The minimum-draft rule by outdoor temperature, as two programmes have it.
 *
 * draft = T[°F]/40 − 2.75 Pa from 10 to 90 °F, −2.5 Pa below, −0.5 Pa above.
 *
 * @param source - the programme's document
 * @returns the rule for natural-draft appliances with a draft hood
 */
export function draftByWeather(source: DraftLimit['source']): DraftLimit {
  return {
    id: 'minimum-draft-by-weather',
    condition: 'Natural-draft appliance in steady firing, by outdoor temperature',
    applies: [{ vents: ['natural draft'], kinds: ['water heater', 'furnace', 'boiler'] }],
    place: 'in the vent, downstream of the draft hood, against the zone',
    corners: [
      { outdoorTemperatureC: siOf('10 F', 'temperature'), draftPa: -2.5 },
      { outdoorTemperatureC: siOf('90 F', 'temperature'), draftPa: -0.5 },
    ],
    source,
  };
}

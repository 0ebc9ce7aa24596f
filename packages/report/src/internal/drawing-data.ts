import type { Assessment } from '../assessment.js';
import type { PressureLadderDrawingData } from '../drawings/pressure-ladder.js';
import type { StateStripDrawingData } from '../drawings/state-strip.js';
import type { WindRoseDrawingData } from '../drawings/wind-rose.js';
import { findingsByUrgency } from './findings-by-urgency.js';
import { conditionWords, situationWords } from './situation-words.js';
import { zonesThatMatter } from './zones-that-matter.js';

/**
 * What the pressure ladder shows: the zones that matter in the worst situation, and every judged
 * appliance.
 *
 * @param assessment - what was found
 * @returns the drawing's data; nothing where no situation was solved
 */
export function ladderData(assessment: Assessment): PressureLadderDrawingData | undefined {
  const worst = assessment.worstCase.situations[0];
  if (worst === undefined) return undefined;
  const pressures = new Map(worst.zones.map(({ zone, pressurePa }) => [zone, pressurePa]));
  return {
    situation: situationWords(worst, assessment),
    zones: zonesThatMatter(assessment)
      .flatMap((zone) => {
        const pressurePa = pressures.get(zone);
        return pressurePa === undefined ? [] : [{ zone, pressurePa }];
      })
      .sort((a, b) => a.pressurePa - b.pressurePa),
    appliances: findingsByUrgency(assessment.findings).flatMap(({ appliance, verdict, judged }) =>
      judged === undefined ? [] : [{ appliance, verdict, ...judged }],
    ),
  };
}

/**
 * What the strip of all situations shows.
 *
 * @param assessment - what was studied
 * @returns the drawing's data; nothing where no situation was solved
 */
export function stripData(assessment: Assessment): StateStripDrawingData | undefined {
  const { situations } = assessment.worstCase;
  if (situations.length === 0) return undefined;
  const deepest = deepestOf(assessment);
  return {
    situations: situations
      .map((each) => ({
        label: each.label,
        condition: conditionWords(each, assessment),
        pressurePa: deepest(each.zones),
      }))
      .sort((a, b) => a.pressurePa - b.pressurePa),
  };
}

/**
 * What the wind rose shows: the worst of each weather with wind, and of those without.
 *
 * @param assessment - what was studied
 * @returns the drawing's data; nothing where no weather has wind
 */
export function windRoseData(assessment: Assessment): WindRoseDrawingData | undefined {
  const deepest = deepestOf(assessment);
  const worstOf = (weather: string): number | undefined => {
    const own = assessment.worstCase.situations.filter((each) => each.weather === weather);
    return own.length === 0 ? undefined : Math.min(...own.map(({ zones }) => deepest(zones)));
  };
  const known = assessment.house.weathers.flatMap((each) => {
    const pressurePa = worstOf(each.name);
    return pressurePa === undefined ? [] : [{ ...each, weather: each.name, pressurePa }];
  });
  const winds = known.filter(({ windSpeedMPerS }) => windSpeedMPerS > 0);
  if (winds.length === 0) return undefined;
  const calm = known.filter(({ windSpeedMPerS }) => windSpeedMPerS === 0);
  return {
    winds: winds.map(({ weather, windFromDeg, windSpeedMPerS, pressurePa }) => ({
      weather,
      windFromDeg,
      windSpeedMPerS,
      pressurePa,
    })),
    ...(calm.length === 0
      ? {}
      : { stillPressurePa: Math.min(...calm.map(({ pressurePa }) => pressurePa)) }),
  };
}

function deepestOf(
  assessment: Assessment,
): (zones: readonly { readonly zone: string; readonly pressurePa: number }[]) => number {
  const inside = new Set(zonesThatMatter(assessment));
  return (zones) => {
    const own = zones.filter(({ zone }) => inside.has(zone));
    return Math.min(...(own.length > 0 ? own : zones).map(({ pressurePa }) => pressurePa));
  };
}

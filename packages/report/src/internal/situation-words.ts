import type { Weather } from '@evendraft/house';
import type { Assessment } from '../assessment.js';
import type { NumberPrinter } from './number-printer.js';

/** What names a situation in a study or a finding. */
export interface NamedSituation {
  readonly label: string;
  readonly weather: string;
  readonly airtightness: string;
}

/**
 * Weather and, where there are several, the airtightness case: `cold, tight end`.
 *
 * @param situation - names of the situation
 * @param assessment - what it belongs to
 * @returns words for a column
 */
export function conditionWords(
  situation: Omit<NamedSituation, 'label'>,
  assessment: Assessment,
): string {
  return assessment.house.airtightness.cases.length > 1
    ? `${situation.weather}, ${situation.airtightness}`
    : situation.weather;
}

/**
 * A whole situation for a sentence: `"hood high" in weather "cold" (5 °F, still air)`.
 *
 * @param situation - names of the situation
 * @param assessment - what it belongs to
 * @param printer - prints the weather's numbers; without it the weather is only named
 * @returns words without a full stop
 */
export function situationWords(
  situation: NamedSituation,
  assessment: Assessment,
  printer?: NumberPrinter,
): string {
  const weather = assessment.house.weathers.find(({ name }) => name === situation.weather);
  const numbers =
    weather === undefined || printer === undefined ? '' : ` (${weatherWords(weather, printer)})`;
  const tightness =
    assessment.house.airtightness.cases.length > 1
      ? `, airtightness "${situation.airtightness}"`
      : '';
  return `"${situation.label}" in weather "${situation.weather}"${numbers}${tightness}`;
}

/**
 * Temperature and wind of a weather: `5 °F, wind 15 mph from 270°`.
 *
 * @param weather - the weather
 * @param printer - prints in the reader's units
 * @returns words without a full stop
 */
function weatherWords(weather: Weather, printer: NumberPrinter): string {
  const temperature = printer.value(weather.outdoorTemperatureC, 'temperature');
  if (weather.windSpeedMPerS === 0) return `${temperature}, still air`;
  const speed = printer.value(weather.windSpeedMPerS, 'speed');
  return `${temperature}, wind ${speed} from ${printer.value(weather.windFromDeg, 'angle')}`;
}

import type { RemedyYear } from '@evendraft/remedies';
import { formatQuantity, type UnitSystem } from '@evendraft/units';

/**
 * Energy of a year in sentences: by the hours, by degree days beside it, what was taken and simplified.
 *
 * @param year - energy of one remedy
 * @param system - units of the reader
 * @returns sentences
 */
export function yearSentences(year: RemedyYear, system: UnitSystem): readonly string[] {
  const { byHours, byDegreeDays, fanKWh } = year;
  const kWh = (energyKWh: number): string => `${energyKWh.toFixed(0)} kWh`;
  const fan =
    fanKWh > 0 ? `, its fan ${kWh(fanKWh)} (100 Pa at an efficiency of 0.3, our choice)` : '';
  const days = `heating ${kWh(byDegreeDays.heatingKWh)}, cooling ${kWh(byDegreeDays.coolingKWh)}`;
  if (byHours === undefined) {
    return [`A year, by degree days and the flow of the coldest weather: ${days}${fan}.`];
  }
  const { hours, weathersSolved, alikeWithin, unsolvedHours, taken } = byHours;
  const print = (si: number, dimension: 'temperatureDifference' | 'speed'): string =>
    formatQuantity(si, dimension, { system });
  return [
    `A year, each hour by the balance in its weather: heating ${kWh(byHours.heatingKWh)}, cooling ${kWh(byHours.coolingKWh)}${fan}. Sensible heat alone, rooms as warm as in the house file.`,
    `By degree days to 20 °C (68 °F) and the flow of the coldest weather instead: ${days}.`,
    `${hours} hours in ${weathersSolved} weathers: hours within ${print(alikeWithin.temperatureK, 'temperatureDifference')}, ${print(alikeWithin.windMPerS, 'speed')} and ${alikeWithin.windDeg.toFixed(0)}° of wind share one.${taken.length === 0 ? '' : ` Taken, for lack of a column: ${taken.join('; ')}.`}${unsolvedHours === 0 ? '' : ` ${unsolvedHours} hours could not be solved; the others stand for them.`}`,
  ];
}

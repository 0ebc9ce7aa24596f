import { houseWeather, type CompiledHouse } from '@evendraft/house';
import type { BalanceQuestion } from './balance-study.js';
import type { Situation } from './state-balance.js';
import { StudyArgumentError } from './study-argument-error.js';

/**
 * The question that a situation of another study answers, so that more can be asked of it.
 *
 * @param compiled - the compiled house
 * @param situation - a situation of this house, by the names of its weather and airtightness
 * @returns the question
 * @throws StudyArgumentError where the house has no such weather or airtightness
 */
export function questionOf(
  compiled: CompiledHouse,
  { state, weather, airtightness }: Situation,
): BalanceQuestion {
  const found = compiled.house.weathers.find(({ name }) => name === weather);
  const airtightnessCase = compiled.leakage.findIndex(({ name }) => name === airtightness);
  if (found === undefined) {
    throw new StudyArgumentError('weather', weather, 'the name of a weather of the house');
  }
  if (airtightnessCase < 0) {
    throw new StudyArgumentError('airtightness', airtightness, 'the name of an airtightness case');
  }
  return { state, weather: houseWeather(compiled.house, found), airtightnessCase };
}

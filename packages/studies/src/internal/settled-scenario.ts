import { houseScenario, type CompiledHouse } from '@evendraft/house';
import type { Scenario } from '@evendraft/network';
import type { BalanceQuestion } from '../balance-study.js';
import { resolveColumns } from '../resolve-columns.js';

/**
 * The scenario of a situation, with the air of every shaft and flue as its least favourable stable balance has it.
 *
 * @param compiled - the compiled house
 * @param question - the situation
 * @returns the overrides on the network
 */
export function settledScenario(compiled: CompiledHouse, question: BalanceQuestion): Scenario {
  const { state, weather, airtightnessCase = 0 } = question;
  const situation = { state, weather, airtightnessCase };
  if (compiled.twoStateLinks.length === 0) return houseScenario(compiled, situation).scenario;
  const found = resolveColumns(compiled, situation).columns?.states ?? [];
  const columns = compiled.twoStateLinks.map(({ id }) => {
    const downward = found.some(({ link, state: way }) => link === id && way === 'downward');
    return downward ? 'downward' : 'upward';
  });
  return houseScenario(compiled, { ...situation, columns }).scenario;
}

import { houseWeather, type CompiledHouse } from '@evendraft/house';
import {
  balanceStudy,
  baselineStudy,
  worstOfBalances,
  type BaselineResult,
  type StateBalance,
  type UnsolvedState,
} from '@evendraft/studies';
import type { JudgedStudy } from './judged-study.js';
import type { LimitSet } from './limit-set.js';
import { testStates, type TestState } from './test-states.js';

/** A programme's own test, run in the house: what `judge` and `judgeHouse` take in place of the worst case. */
export interface ProgrammeTest extends JudgedStudy {
  readonly question: 'programme test';
  readonly limitSet: string;
  /** The configuration that was run; absent where all of the set were. */
  readonly configuration?: string;
  readonly states: readonly TestState[];
}

/**
 * Solves the states of a programme's own test in every weather at every airtightness case.
 *
 * Where a programme subtracts nothing, the change is still given against the same doors with everything
 * off, so that a row that limits a change has its number.
 *
 * @param compiled - the compiled house
 * @param limitSet - the programme
 * @param configuration - id of one of its configurations; all of them when absent
 * @returns the solved situations with the worst of each zone and appliance
 */
export function programmeTest(
  compiled: CompiledHouse,
  limitSet: LimitSet,
  configuration?: string,
): ProgrammeTest {
  const { house } = compiled;
  const states = testStates(house, limitSet).filter(
    (one) => configuration === undefined || one.configuration === configuration,
  );
  // States of one set of doors share a baseline.
  const baselines = new Map<string, BaselineResult>();
  const solved: StateBalance[] = [];
  const unsolved: UnsolvedState[] = [];
  house.airtightness.cases.forEach((_, airtightnessCase) => {
    for (const weather of house.weathers.map((each) => houseWeather(house, each))) {
      for (const { state, baseline } of states) {
        const question = { state, weather, airtightnessCase };
        const { doors } = baseline ?? state;
        const key = JSON.stringify([airtightnessCase, weather.name, Object.entries(doors).sort()]);
        const reference =
          baselines.get(key) ??
          baselineStudy(compiled, { ...question, state: { running: {}, doors } });
        baselines.set(key, reference);
        const balance = balanceStudy(compiled, question, reference);
        if (balance.status === 'solved') solved.push(balance);
        else unsolved.push(balance);
      }
    }
  });
  return {
    question: 'programme test',
    limitSet: limitSet.id,
    ...(configuration === undefined ? {} : { configuration }),
    states,
    situations: solved,
    ...worstOfBalances(house, solved),
    unsolved,
  };
}

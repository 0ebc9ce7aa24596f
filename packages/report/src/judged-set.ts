import type { Finding, LimitSet, RuleFinding, TestState } from '@evendraft/rules';

/** What a house was found to be by one limit set. */
export interface JudgedSet {
  readonly limitSet: Pick<LimitSet, 'id' | 'name' | 'edition'>;
  /** One for each appliance, in the worst case of all states and weathers. */
  readonly findings: readonly Finding[];
  /** Limits that the set has for the house as a whole, in the worst case. */
  readonly houseFindings: readonly RuleFinding[];
  /** The same, in the states that the programme's own test asks for; absent where the set describes no test. */
  readonly programmeTest?: ProgrammeTestResult;
}

/** What the programme's own test would find, beside the true worst case. */
export interface ProgrammeTestResult {
  readonly states: readonly Pick<TestState, 'configuration' | 'label' | 'notModelled'>[];
  readonly findings: readonly Finding[];
  readonly houseFindings: readonly RuleFinding[];
}

import type { CompiledHouse } from '@evendraft/house';
import type { JudgedSet } from '@evendraft/report';
import { judge, judgeHouse, programmeTest, type LimitSet } from '@evendraft/rules';
import type { WorstCaseStudy } from '@evendraft/studies';

/** What is held against a set. */
export interface JudgedSetInput {
  readonly compiled: CompiledHouse;
  readonly worstCase: WorstCaseStudy;
  readonly limitSet: LimitSet;
}

/**
 * Judges a house by one limit set: in its true worst case, and in the states of the programme's own test.
 *
 * @param input - compiled house, worst case, set
 * @returns findings of both
 */
export function judgedSet({ compiled, worstCase, limitSet }: JudgedSetInput): JudgedSet {
  const { house } = compiled;
  const { id, name, edition } = limitSet;
  const test = limitSet.testConfigurations?.length ? programmeTest(compiled, limitSet) : undefined;
  return {
    limitSet: { id, name, edition },
    findings: judge({ house, worstCase, limitSet }),
    houseFindings: judgeHouse({ house, study: worstCase, limitSet }),
    ...(test === undefined
      ? {}
      : {
          programmeTest: {
            states: test.states.map(({ configuration, label, notModelled }) => ({
              configuration,
              label,
              notModelled,
            })),
            findings: judge({ house, worstCase: test, limitSet }),
            houseFindings: judgeHouse({ house, study: test, limitSet }),
          },
        }),
  };
}

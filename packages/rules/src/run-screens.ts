import type { House } from '@evendraft/house';
import type { JudgedStudy } from './judged-study.js';
import type { RuleFinding, RuleRegion } from './rule-finding.js';
import type { ScreenFacts } from './screen-facts.js';
import { screens } from './screens.js';

/** How a house is screened. */
export interface ScreenOptions {
  /** The worst case, for rules that hold a pressure or a make-up flow against a limit. */
  readonly worstCase?: JudgedStudy;
  /** What rules ask and the house file does not hold. */
  readonly facts?: ScreenFacts;
  /** Only rules of these regions, besides those of everywhere; all regions when absent. */
  readonly regions?: readonly RuleRegion[];
}

/**
 * Holds a house against every code screen.
 *
 * A rule that is not meant for the house says so, and one that lacks data says what to give: each rule
 * has at least one finding. Local code decides which rules bind.
 *
 * @param house - the house
 * @param options - worst case, further facts, regions
 * @returns the findings, rule by rule, plain JSON
 */
export function runScreens(house: House, options: ScreenOptions = {}): readonly RuleFinding[] {
  const { worstCase, facts = {}, regions } = options;
  const context = { house, facts, ...(worstCase === undefined ? {} : { worstCase }) };
  return screens
    .filter(
      ({ rule }) =>
        regions === undefined || rule.region === 'everywhere' || regions.includes(rule.region),
    )
    .flatMap((screen) => screen.run(context));
}

import type { House } from '@evendraft/house';
import type { JudgedStudy } from '../judged-study.js';
import type { RuleFinding } from '../rule-finding.js';
import type { ScreenFacts } from '../screen-facts.js';
import type { Rule } from './answer.js';

/** What a screen looks at. */
export interface ScreenContext {
  readonly house: House;
  readonly facts: ScreenFacts;
  /** The worst case, for the rules that hold a pressure or a make-up flow against a limit. */
  readonly worstCase?: JudgedStudy;
}

/** One rule as a screen: what it is, and how it is held against a house. */
export interface Screen {
  readonly rule: Rule;
  readonly run: (context: ScreenContext) => readonly RuleFinding[];
}

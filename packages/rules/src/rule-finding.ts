import type { Source } from '@evendraft/house';
import type { Dimension } from '@evendraft/units';
import type { Verdict } from './finding.js';

/** Where a rule is at home; a rule of physics or of common practice is at home everywhere. */
export type RuleRegion = (typeof ruleRegions)[number];

/** Every region that has rules of its own. */
export const ruleRegions = [
  'everywhere',
  'United States',
  'California',
  'Minnesota',
  'Canada',
  'United Kingdom',
  'Germany',
] as const;

/** One line of a rule's arithmetic, in the order in which a person would write it. */
export interface ArithmeticLine {
  readonly label: string;
  /** How the value comes about, in words: `given`, or what is done with the lines above. */
  readonly expression: string;
  /** A number in SI with its dimension, or words. */
  readonly value: { readonly si: number; readonly dimension: Dimension } | string;
}

/** One rule held against one thing of the house, with its whole arithmetic. Plain JSON. */
export interface RuleFinding {
  /** Id of the rule, kebab-case. */
  readonly rule: string;
  readonly title: string;
  readonly region: RuleRegion;
  readonly source: Source;
  /** The appliance, device, opening, zone or door it speaks of; absent where it is the whole house. */
  readonly subject?: string;
  /** Whether the rule is meant for this house or thing at all. */
  readonly applies: 'yes' | 'no' | 'unknown';
  /** Why it applies, does not, or cannot be said, as a sentence. */
  readonly why: string;
  readonly arithmetic: readonly ArithmeticLine[];
  readonly verdict: Verdict;
  /** Why there is no verdict; present only where not judged. */
  readonly reason?: string;
  /** What would satisfy the rule, each a sentence; empty where it is within. */
  readonly satisfiedBy: readonly string[];
  /** What to give so that it can be judged. */
  readonly give: readonly string[];
  /** Remarks a reader must see, e.g. how sure a number is. */
  readonly notes: readonly string[];
}

import type { Source } from '@evendraft/house';
import type { Verdict } from '../finding.js';
import { ruleNearShare } from '../near-band.js';
import type { ArithmeticLine, RuleFinding, RuleRegion } from '../rule-finding.js';

/** What is the same in every finding of one rule. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly region: RuleRegion;
  readonly source: Source;
  /** Remarks that belong to every finding of the rule. */
  readonly notes?: readonly string[];
}

interface About {
  readonly subject?: string;
  /** Why it applies, or does not. */
  readonly why: string;
  readonly arithmetic?: readonly ArithmeticLine[];
  readonly notes?: readonly string[];
}

/** A number held against a limit; both in SI and of one dimension. */
export interface Held {
  readonly value: number;
  readonly limit: number;
  /** Which side of the limit is within. */
  readonly sense: 'at most' | 'at least';
  /** Half-width of the band called near; a share of the limit when absent. */
  readonly nearBand?: number;
}

/**
 * The verdict of a number held against a limit.
 *
 * @param held - value, limit and the side that is within
 * @returns one of the four words; `not judged` where a number is not finite
 */
function verdictOf(held: Held): Verdict {
  const { value, limit, sense, nearBand = ruleNearShare * Math.abs(limit) } = held;
  const margin = sense === 'at most' ? limit - value : value - limit;
  if (!Number.isFinite(margin)) return 'not judged';
  if (margin < -nearBand) return 'beyond the limit';
  return margin <= nearBand ? 'near the limit' : 'within the limit';
}

/**
 * A finding with a verdict.
 *
 * @param rule - the rule
 * @param about - subject, why it applies, arithmetic
 * @param judged - what is held against what, or the verdict itself, and what would satisfy the rule
 * @returns the finding
 */
export function judgedBy(
  rule: Rule,
  about: About,
  judged: { readonly held: Held | Verdict; readonly satisfiedBy: readonly string[] },
): RuleFinding {
  const verdict = typeof judged.held === 'string' ? judged.held : verdictOf(judged.held);
  return {
    ...frame(rule, about),
    applies: 'yes',
    verdict,
    ...(verdict === 'not judged' ? { reason: 'A number of the rule is not finite.' } : {}),
    satisfiedBy: verdict === 'within the limit' ? [] : judged.satisfiedBy,
  };
}

/**
 * A finding for a thing that the rule is not meant for.
 *
 * @param rule - the rule
 * @param about - subject and why not
 * @returns the finding, not judged
 */
export function notMeantFor(rule: Rule, about: About): RuleFinding {
  return { ...frame(rule, about), applies: 'no', verdict: 'not judged', reason: about.why };
}

/**
 * A finding that lacks data.
 *
 * @param rule - the rule
 * @param about - subject, whether it applies as far as is known, and why
 * @param give - what to give, each as a short phrase
 * @returns the finding, not judged
 */
export function lacks(
  rule: Rule,
  about: About & { readonly applies?: RuleFinding['applies'] },
  give: readonly string[],
): RuleFinding {
  return {
    ...frame(rule, about),
    applies: about.applies ?? 'yes',
    verdict: 'not judged',
    reason: `Not given: ${give.join('; ')}.`,
    give,
  };
}

/**
 * A finding of a rule that applies and has nothing to be held against.
 *
 * @param rule - the rule
 * @param about - subject, why it applies, arithmetic
 * @param reason - why there is no verdict, as a sentence
 * @returns the finding, not judged
 */
export function withoutLimit(rule: Rule, about: About, reason: string): RuleFinding {
  return { ...frame(rule, about), applies: 'yes', verdict: 'not judged', reason };
}

function frame(rule: Rule, about: About): Omit<RuleFinding, 'applies' | 'verdict'> {
  const { id, title, region, source } = rule;
  return {
    rule: id,
    title,
    region,
    source,
    ...(about.subject === undefined ? {} : { subject: about.subject }),
    why: about.why,
    arithmetic: about.arithmetic ?? [],
    satisfiedBy: [],
    give: [],
    notes: [...(about.notes ?? []), ...(rule.notes ?? [])],
  };
}

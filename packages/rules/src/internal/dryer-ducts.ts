import type { DryerFitting } from '../screen-facts.js';
import type { ArithmeticLine, RuleFinding } from '../rule-finding.js';
import { judgedBy, lacks, notMeantFor, type Rule } from './answer.js';
import { amount, line } from './arithmetic-line.js';
import { describedDuctLength } from './described-duct-length.js';
import { exhaustSystems } from './exhaust-systems.js';
import type { ScreenContext } from './screen.js';

/** How long a rule lets a dryer duct be, and what would satisfy it. */
export interface DryerDuctRule {
  /** From the fittings of a duct to the longest that is allowed [m], and the lines that lead to it. */
  readonly allowed: (fittings: readonly DryerFitting[]) => {
    readonly lengthM: number;
    readonly arithmetic: readonly ArithmeticLine[];
  };
  readonly satisfiedBy: string;
}

/**
 * Holds the duct of each dryer that exhausts against a rule on its length.
 *
 * @param rule - the rule
 * @param context - house and facts
 * @param length - what the rule allows
 * @returns one finding for each dryer, or one that the rule is not meant for the house
 */
export function dryerDucts(
  rule: Rule,
  { house, facts }: ScreenContext,
  { allowed, satisfiedBy }: DryerDuctRule,
): readonly RuleFinding[] {
  const dryers = exhaustSystems(house).filter(({ kind }) => kind === 'dryer');
  if (dryers.length === 0) {
    return [notMeantFor(rule, { why: 'The house has no dryer that exhausts.' })];
  }
  return dryers.map((dryer) => {
    const { id } = dryer;
    const { ductFittings, ductLengthM = describedDuctLength(dryer) } = facts.devices?.[id] ?? {};
    const why = 'It is for every dryer that exhausts.';
    if (ductLengthM === undefined || ductFittings === undefined) {
      return lacks(rule, { subject: id, why }, [
        ...(ductLengthM === undefined ? ['the length of its duct'] : []),
        ...(ductFittings === undefined ? ['the fittings of its duct'] : []),
      ]);
    }
    const { lengthM, arithmetic } = allowed(ductFittings);
    const duct = line('duct', 'given, straight lengths together', amount.length(ductLengthM));
    return judgedBy(
      rule,
      { subject: id, why, arithmetic: [...arithmetic, duct] },
      {
        held: { value: ductLengthM, limit: lengthM, sense: 'at most' },
        satisfiedBy: [satisfiedBy],
      },
    );
  });
}

import type { Appliance } from '@evendraft/house';
import { fit, type Fit, type MissingFact } from './internal/fit.js';
import { partnersOnVent } from './internal/partners-on-vent.js';
import type { AppliesTo } from './applies-to.js';
import type { Exclusion, Limit, LimitSet } from './limit-set.js';

export type { MissingFact } from './internal/fit.js';

/** Which row of a set an appliance is held against, or why there is none. */
export type LimitChoice =
  | {
      readonly status: 'chosen';
      readonly limit: Limit;
      /** Facts that the house lacks and that could have chosen another limit. */
      readonly missing: readonly MissingFact[];
    }
  | { readonly status: 'excluded'; readonly exclusion: Exclusion }
  | { readonly status: 'no row' };

/**
 * The row of a limit set that an appliance is held against.
 *
 * Of the rows that fit, the one that asks for most facts wins; of equals the strictest (closest to
 * zero), and of equally strict ones the first of the set. A row that could fit, were a fact known
 * that the house lacks, wins over them only if it is stricter and asks for no fewer facts: what is
 * not known never makes a limit more lenient. An exclusion that fits stands above all rows; one that
 * only could fit counts where no row does.
 *
 * @param input - the appliance, all appliances of the house (for shared vents) and the set
 * @returns the row and the facts that were missing, the exclusion, or `no row`
 */
export function chooseLimit(input: {
  readonly appliance: Appliance;
  readonly appliances: readonly Appliance[];
  readonly limitSet: Pick<LimitSet, 'limits' | 'exclusions'>;
}): LimitChoice {
  const { appliance, limitSet } = input;
  const partners = partnersOnVent(appliance, input.appliances);
  const fitOf = (applies: readonly AppliesTo[]) => bestFit(applies, appliance, partners);

  const exclusions = limitSet.exclusions.map((exclusion) => ({
    exclusion,
    fit: fitOf(exclusion.applies),
  }));
  const excluded = exclusions.find((candidate) => candidate.fit.answer === 'yes');
  if (excluded !== undefined) return { status: 'excluded', exclusion: excluded.exclusion };

  const rows = limitSet.limits.map((limit) => ({ limit, fit: fitOf(limit.applies) }));
  const certain = rows
    .filter((row) => row.fit.answer === 'yes')
    .reduce<Row | undefined>((best, row) => (isBetter(row, best) ? row : best), undefined);
  const open = rows.filter(
    (row) => row.fit.answer === 'unknown' && row.fit.facts >= (certain?.fit.facts ?? 0),
  );
  const candidates = certain === undefined ? open : [certain, ...open];
  const perhaps = exclusions.find((candidate) => candidate.fit.answer === 'unknown');
  const [first] = candidates;
  if (first === undefined) {
    return perhaps === undefined
      ? { status: 'no row' }
      : { status: 'excluded', exclusion: perhaps.exclusion };
  }
  const { limit } = candidates.reduce(
    (best, row) => (row.limit.limitPa > best.limit.limitPa ? row : best),
    first,
  );
  const decided = candidates.every((row) => saysTheSame(row.limit, limit));
  const missing = [
    ...(decided ? [] : open.flatMap((row) => row.fit.missing)),
    ...(perhaps?.fit.missing ?? []),
  ];
  return { status: 'chosen', limit, missing: [...new Set(missing)] };
}

interface Row {
  readonly limit: Limit;
  readonly fit: Fit;
}

function isBetter(row: Row, best: Row | undefined): boolean {
  if (best === undefined) return true;
  if (row.fit.facts !== best.fit.facts) return row.fit.facts > best.fit.facts;
  return row.limit.limitPa > best.limit.limitPa;
}

function saysTheSame(one: Limit, other: Limit): boolean {
  return one.limitPa === other.limitPa && one.quantity === other.quantity;
}

/** Of several descriptions the best: one that fits before one that may, then the one with most facts. */
function bestFit(
  applies: readonly AppliesTo[],
  appliance: Appliance,
  partners: readonly Appliance[],
): Fit {
  const rank = { yes: 2, unknown: 1, no: 0 } as const;
  return applies
    .map((one) => fit(one, appliance, partners))
    .reduce(
      (best, next) => {
        const order = rank[next.answer] - rank[best.answer] || next.facts - best.facts;
        return order > 0 ? next : best;
      },
      { answer: 'no', facts: 0, missing: [] },
    );
}

import { insideZoneKinds, type House } from '@evendraft/house';
import type { HouseLimit } from './further-limits.js';
import { judgedBy, lacks, notMeantFor, withoutLimit, type Rule } from './internal/answer.js';
import { appliesToAppliance } from './internal/applies-to-appliance.js';
import { amount, line } from './internal/arithmetic-line.js';
import { stoppedReason } from './internal/stopped-reason.js';
import type { JudgedStudy } from './judged-study.js';
import type { AppliesTo } from './applies-to.js';
import type { LimitSet } from './limit-set.js';
import { nearBand } from './near-band.js';
import type { RuleFinding } from './rule-finding.js';

/** What is held against the limits of a whole house. */
export interface JudgeHouseInput {
  readonly house: House;
  /** The true worst case, or a programme's own test. */
  readonly study: JudgedStudy;
  readonly limitSet: LimitSet;
  /** Id of the configuration that the study ran; rows of other configurations are then left out. */
  readonly configuration?: string;
}

/**
 * One finding for each limit that a set has for the house as a whole.
 *
 * The zone of living rooms, basements and closets that is worst counts. Without a configuration a row is
 * held against the study as it is, with a remark where the row belongs to a test of its own.
 *
 * @param input - house, study, set and the configuration that was run
 * @returns the findings; none where the set has no such limits
 */
export function judgeHouse(input: JudgeHouseInput): readonly RuleFinding[] {
  const { limitSet, configuration } = input;
  return (limitSet.houseLimits ?? [])
    .filter(
      (row) =>
        configuration === undefined ||
        row.configuration === undefined ||
        row.configuration === configuration,
    )
    .map((row) => judgeRow(row, input));
}

function judgeRow(row: HouseLimit, input: JudgeHouseInput): RuleFinding {
  const { house, study, limitSet, configuration } = input;
  const rule: Rule = {
    id: `${limitSet.id}-${row.id}`,
    title: row.condition,
    region: limitSet.region ?? 'everywhere',
    source: row.source,
    notes: [
      ...(row.note === undefined ? [] : [row.note]),
      ...(configuration === undefined && row.configuration !== undefined
        ? [
            `The limit belongs to the test "${row.configuration}" of its programme; it is held here against a study of other states.`,
          ]
        : []),
    ],
  };
  const meant = isMeant(row, house);
  if (meant.answer === 'no') return notMeantFor(rule, { why: meant.why });
  if (meant.answer === 'unknown') {
    return lacks(rule, { applies: 'unknown', why: meant.why }, ['the fuel of every appliance']);
  }
  const inside = house.zones.filter(({ kind }) => insideZoneKinds.includes(kind));
  const readings = study.zones
    .filter(({ zone }) => inside.some(({ id }) => id === zone))
    .map(({ zone, lowest, largestFall }) =>
      row.quantity === 'change from baseline'
        ? { zone, worst: largestFall, value: largestFall.changeFromBaselinePa }
        : { zone, worst: lowest, value: lowest.pressurePa },
    );
  const [first, ...rest] = readings;
  if (first === undefined) {
    return lacks(rule, { why: meant.why }, ['a pressure: no situation of the study was solved']);
  }
  const deepest = rest.reduce((worst, next) => (next.value < worst.value ? next : worst), first);
  const arithmetic = [
    line('worst zone', `largest ${row.quantity} of the zones inside`, deepest.zone),
    line('situation', 'in which it is reached', `${deepest.worst.label}; ${deepest.worst.weather}`),
    line('value', row.quantity, amount.pressure(deepest.value + 0)),
    line('limit', 'of the programme', amount.pressure(row.limitPa)),
    line('margin', 'value minus limit', amount.pressure(deepest.value - row.limitPa)),
  ];
  const band = nearBand({
    quantity: row.quantity,
    enclosureRadiusPa: study.proof.largestEnclosureRadiusPa,
  });
  if (study.stopped !== undefined && deepest.value - row.limitPa > band) {
    return withoutLimit(rule, { why: meant.why, arithmetic }, stoppedReason(study.stopped));
  }
  const unsolved = study.unsolved.length;
  return judgedBy(
    rule,
    {
      why: meant.why,
      arithmetic,
      notes:
        unsolved === 0
          ? []
          : [
              `Incomplete: ${unsolved} situations could not be solved, and the worst may be among them.`,
            ],
    },
    {
      held: { value: deepest.value, limit: row.limitPa, sense: 'at least', nearBand: band },
      satisfiedBy: ['Less exhaust at once, or make-up air that runs with it.'],
    },
  );
}

function isMeant(
  { ifAnyOf, ifNoneOf }: HouseLimit,
  { appliances }: House,
): { readonly answer: RuleFinding['applies']; readonly why: string } {
  const fitting = (applies: readonly AppliesTo[], answer: 'yes' | 'unknown') =>
    appliances.filter((one) => appliesToAppliance(applies, one, appliances) === answer);
  for (const [applies, wanted] of [
    [ifAnyOf, true],
    [ifNoneOf, false],
  ] as const) {
    if (applies === undefined) continue;
    const named = fitting(applies, 'yes').map(({ id }) => id);
    const open = fitting(applies, 'unknown').map(({ id }) => id);
    if (named.length > 0 && !wanted) {
      return {
        answer: 'no',
        why: `It is for houses without such appliances; this one has ${named.join(', ')}.`,
      };
    }
    if (named.length === 0 && open.length > 0) {
      return { answer: 'unknown', why: `It depends on the fuel of ${open.join(', ')}.` };
    }
    if (named.length === 0 && wanted) {
      return { answer: 'no', why: 'It is for houses with appliances that this one does not have.' };
    }
  }
  return { answer: 'yes', why: 'The appliances of the house are those that it is for.' };
}

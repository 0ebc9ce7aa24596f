import { judgedBy } from './internal/answer.js';
import { amount, line } from './internal/arithmetic-line.js';
import type { LimitSet } from './limit-set.js';
import type { RuleFinding } from './rule-finding.js';

/** A time of spillage that is held against the limits of a set. */
export interface JudgeSpillageTimeInput {
  readonly limitSet: LimitSet;
  /** Id of the appliance. */
  readonly appliance: string;
  readonly vent: 'cold' | 'warm';
  /** From the start of the burner until nothing spills; null where spillage does not end [s]. */
  readonly spillageS: number | null;
}

/**
 * One finding for each time limit of a set that is for a vent at the start.
 *
 * @param input - set, appliance, the vent at the start, and how long it spills
 * @returns the findings; none where the set has no such limit
 */
export function judgeSpillageTime(input: JudgeSpillageTimeInput): readonly RuleFinding[] {
  const { limitSet, appliance, vent, spillageS } = input;
  return (limitSet.spillageTimes ?? [])
    .filter((limit) => limit.vent === vent || limit.vent === 'either')
    .map((limit) =>
      judgedBy(
        {
          id: `${limitSet.id}-${limit.id}`,
          title: limit.condition,
          region: limitSet.region ?? 'everywhere',
          source: limit.source,
          ...(limit.note === undefined ? {} : { notes: [limit.note] }),
        },
        {
          subject: appliance,
          why: `It is for a ${vent} vent.`,
          arithmetic: [
            line(
              'spillage',
              'from the start of the burner until it ends',
              spillageS === null ? 'does not end' : amount.time(spillageS),
            ),
            line('limit', 'of the programme', amount.time(limit.limitS)),
          ],
        },
        {
          held:
            spillageS === null
              ? 'beyond the limit'
              : { value: spillageS, limit: limit.limitS, sense: 'at most' },
          satisfiedBy: [
            'Less suction in the zone when it starts, a vent that warms faster, or an appliance with sealed combustion.',
          ],
        },
      ),
    );
}

import { judgedBy } from './internal/answer.js';
import { amount, line } from './internal/arithmetic-line.js';
import type { LimitSet } from './limit-set.js';
import type { RuleFinding } from './rule-finding.js';

/** A concentration in a room that is held against the levels of a set. */
export interface JudgeAmbientCoInput {
  readonly limitSet: LimitSet;
  readonly zone: string;
  /** Carbon monoxide in the air of the zone, by volume [ppm]. */
  readonly concentrationPpm: number;
}

/**
 * The levels of carbon monoxide that a set has, held against the air of a zone, with what each calls for.
 *
 * @param input - set, zone and concentration
 * @returns one finding for each level, from the lowest; none where the set has no levels
 */
export function judgeAmbientCo(input: JudgeAmbientCoInput): readonly RuleFinding[] {
  const { limitSet, zone, concentrationPpm } = input;
  return (limitSet.ambientCo ?? []).map((level) =>
    judgedBy(
      {
        id: `${limitSet.id}-${level.id}`,
        title: `Carbon monoxide in a room from ${level.fromPpm} ppm${level.leave ? ': leave' : ''}`,
        region: limitSet.region ?? 'everywhere',
        source: level.source,
        ...(level.note === undefined ? {} : { notes: [level.note] }),
      },
      {
        subject: zone,
        why: 'It is for the air of any room.',
        arithmetic: [
          line('concentration', 'well mixed', amount.concentration(concentrationPpm * 1e-6)),
          line(
            'level',
            'from which the programme acts',
            amount.concentration(level.fromPpm * 1e-6),
          ),
        ],
      },
      {
        held: { value: concentrationPpm, limit: level.fromPpm, sense: 'at most' },
        satisfiedBy: [level.action],
      },
    ),
  );
}

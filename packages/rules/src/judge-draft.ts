import type { Appliance } from '@evendraft/house';
import type { DraftLimit } from './further-limits.js';
import { judgedBy, lacks, type Rule } from './internal/answer.js';
import { appliesToAppliance } from './internal/applies-to-appliance.js';
import { amount, line } from './internal/arithmetic-line.js';
import type { LimitSet } from './limit-set.js';
import { nearBand } from './near-band.js';
import type { RuleFinding } from './rule-finding.js';

/** A draft that is held against the limits of a set. */
export interface JudgeDraftInput {
  readonly limitSet: LimitSet;
  readonly appliance: Appliance;
  /** All appliances of the house, for shared vents. */
  readonly appliances: readonly Appliance[];
  readonly outdoorTemperatureC: number;
  /** Static pressure in the vent at the tap minus that of the zone, steady firing; negative draws [Pa]. */
  readonly draftPa: number;
}

/**
 * The weakest draft that a limit asks for at an outdoor temperature [Pa].
 *
 * Straight lines between the limit's corners, level beyond the outer ones.
 *
 * @param limit - the limit
 * @param outdoorTemperatureC - outdoor temperature [°C]
 * @returns vent minus zone, so a negative number [Pa]
 */
export function weakestDraft(
  limit: Pick<DraftLimit, 'corners'>,
  outdoorTemperatureC: number,
): number {
  const { corners } = limit;
  const after = corners.findIndex((corner) => corner.outdoorTemperatureC >= outdoorTemperatureC);
  const upper = corners[after];
  const lower = corners[after - 1];
  if (upper === undefined) return corners.at(-1)?.draftPa ?? Number.NaN;
  if (lower === undefined) return upper.draftPa;
  const share =
    (outdoorTemperatureC - lower.outdoorTemperatureC) /
    (upper.outdoorTemperatureC - lower.outdoorTemperatureC);
  return lower.draftPa + share * (upper.draftPa - lower.draftPa);
}

/**
 * One finding for each draft limit of a set that is for an appliance.
 *
 * @param input - set, appliance, weather and draft
 * @returns the findings; none where the set has no limit for it
 */
export function judgeDraft(input: JudgeDraftInput): readonly RuleFinding[] {
  const { limitSet, appliance, appliances } = input;
  return (limitSet.draftLimits ?? []).flatMap((limit) => {
    const meant = appliesToAppliance(limit.applies, appliance, appliances);
    if (meant === 'no') return [];
    const rule: Rule = {
      id: `${limitSet.id}-${limit.id}`,
      title: limit.condition,
      region: limitSet.region ?? 'everywhere',
      source: limit.source,
      ...(limit.note === undefined ? {} : { notes: [limit.note] }),
    };
    return [
      meant === 'unknown'
        ? lacks(
            rule,
            { subject: appliance.id, applies: 'unknown', why: 'It depends on what is not stated.' },
            ['the fuel or the chimney of the appliance'],
          )
        : judgeOne(limit, rule, input),
    ];
  });
}

function judgeOne(limit: DraftLimit, rule: Rule, input: JudgeDraftInput): RuleFinding {
  const { appliance, outdoorTemperatureC, draftPa } = input;
  const weakest = weakestDraft(limit, outdoorTemperatureC);
  const { strongestPa } = limit;
  const tooStrong = strongestPa !== undefined && draftPa < (weakest + strongestPa) / 2;
  const band = nearBand({ quantity: 'zone minus outdoors', enclosureRadiusPa: null });
  const arithmetic = [
    line('outdoor temperature', 'of the weather', amount.temperature(outdoorTemperatureC)),
    line('draft', `vent minus zone, ${limit.place}`, amount.pressure(draftPa)),
    line('weakest draft', 'of the programme at that temperature', amount.pressure(weakest)),
    ...(strongestPa === undefined
      ? []
      : [line('strongest draft', 'of the programme', amount.pressure(strongestPa))]),
  ];
  return judgedBy(
    rule,
    { subject: appliance.id, why: `It is for a ${appliance.kind}, ${appliance.vent}.`, arithmetic },
    tooStrong
      ? {
          held: { value: draftPa, limit: strongestPa, sense: 'at least', nearBand: band },
          satisfiedBy: ['Have the barometric regulator of the vent set by the licensed trade.'],
        }
      : {
          held: { value: draftPa, limit: weakest, sense: 'at most', nearBand: band },
          satisfiedBy: [
            'Less suction in the zone while it fires, or a vent that draws better: warmer, taller, insulated, of the right area.',
          ],
        },
  );
}

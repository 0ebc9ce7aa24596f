import type { Appliance, House } from '@evendraft/house';
import type { ExtractLimit } from './further-limits.js';
import { judgedBy, lacks, type Rule } from './internal/answer.js';
import { appliesToAppliance } from './internal/applies-to-appliance.js';
import { amount, line } from './internal/arithmetic-line.js';
import { exhaustSystems, highestFlow } from './internal/exhaust-systems.js';
import type { LimitSet } from './limit-set.js';
import type { RuleFinding } from './rule-finding.js';

/**
 * One finding for each appliance and each limit of extract that a set has for it.
 *
 * Rated flows at the highest speed are added up; a dryer counts as extract.
 *
 * @param house - the house
 * @param limitSet - the programme
 * @returns the findings; none where the set has no such limits
 */
export function judgeExtract(house: House, limitSet: LimitSet): readonly RuleFinding[] {
  return (limitSet.extractLimits ?? []).flatMap((limit) =>
    house.appliances.flatMap((appliance): readonly RuleFinding[] => {
      const meant = appliesToAppliance(limit.applies, appliance, house.appliances);
      if (meant === 'no') return [];
      const rule: Rule = {
        id: `${limitSet.id}-${limit.id}`,
        title: limit.condition,
        region: limitSet.region ?? 'everywhere',
        source: limit.source,
        ...(limit.note === undefined ? {} : { notes: [limit.note] }),
      };
      if (meant === 'unknown') {
        return [
          lacks(
            rule,
            { subject: appliance.id, applies: 'unknown', why: 'It depends on the fuel.' },
            [`the fuel of the ${appliance.id}`],
          ),
        ];
      }
      return [judgeOne(house, limit, { rule, appliance })];
    }),
  );
}

function judgeOne(
  house: House,
  limit: ExtractLimit,
  { rule, appliance }: { readonly rule: Rule; readonly appliance: Appliance },
): RuleFinding {
  const counted = exhaustSystems(house).filter(
    (device) => !limit.sameRoom || device.zone === appliance.zone,
  );
  const total = counted.reduce((sum, device) => sum + highestFlow(device), 0);
  const place = limit.sameRoom ? `in the ${appliance.zone}` : 'in the house';
  return judgedBy(
    rule,
    {
      subject: appliance.id,
      why: `It is for a ${appliance.kind}, ${appliance.vent}, burning ${appliance.fuel}.`,
      arithmetic: [
        ...counted.map((device) =>
          line(device.id, 'rated flow at its highest speed', amount.flow(highestFlow(device))),
        ),
        line('extract', `all of these, ${place}`, amount.flow(total)),
        line('largest extract', 'of the programme', amount.flow(limit.largestFlowM3PerS)),
      ],
    },
    {
      held:
        total === 0
          ? 'within the limit'
          : { value: total, limit: limit.largestFlowM3PerS, sense: 'at most' },
      satisfiedBy: [
        `Extract ${place} of no more than the limit, or an appliance with sealed combustion; a spillage test in any case.`,
      ],
    },
  );
}

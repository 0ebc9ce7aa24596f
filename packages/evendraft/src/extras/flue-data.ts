import type { ApplianceDraft, Assessment, FlueDraftDrawingData } from '@evendraft/report';
import { limitSets, weakestDraft, type DraftLimit } from '@evendraft/rules';

/**
 * Draft of each flue by outdoor temperature, with nothing running and in its least favourable state.
 *
 * The weakest draft is that of the first rule it was held against; of a set of one's own it is not known here.
 *
 * @param assessment - what was found
 * @returns two drawings a flue; none where flues were not solved
 */
export function flueData({ draft }: Assessment): readonly FlueDraftDrawingData[] {
  if (draft?.status !== 'solved') return [];
  return draft.appliances.flatMap((found) => {
    const limit = draftLimitOf(found);
    return found.byTemperature.map(({ what, rows }): FlueDraftDrawingData => {
      const points = (read: (row: (typeof rows)[number]) => number | null) =>
        rows.flatMap((row) => {
          const tapPa = read(row);
          const { outdoorTemperatureC } = row;
          return tapPa === null ? [] : [{ outdoorTemperatureC, draftPa: -tapPa }];
        });
      return {
        flue: `Flue of ${found.appliance}, ${what === 'nothing running' ? what : 'least favourable state'}`,
        appliances: [found.appliance],
        warm: points(({ hotPa }) => hotPa),
        cold: points(({ fromColdPa }) => fromColdPa),
        weakest: rows.map(({ outdoorTemperatureC }) => ({
          outdoorTemperatureC,
          draftPa: limit === undefined ? 0 : -weakestDraft(limit, outdoorTemperatureC),
        })),
        weakestBy: limit === undefined ? 'none: it runs backwards' : 'the draft rule asks for',
      };
    });
  });
}

/** The limit on draft that the appliance was held against first. */
function draftLimitOf({ findings }: ApplianceDraft): DraftLimit | undefined {
  const rule = findings.find(({ about }) => about === 'draft')?.finding.rule;
  return limitSets
    .flatMap(({ id, draftLimits = [] }) => draftLimits.map((limit) => ({ id, limit })))
    .find(({ id, limit }) => `${id}-${limit.id}` === rule)?.limit;
}

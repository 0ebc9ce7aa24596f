import { baselineOf, type Appliance, type House, type OperatingState } from '@evendraft/house';
import type { WorstCaseStudy } from '../../worst-case-study.js';
import type { WorstPressure } from '../../worst-of-balances.js';

/** Why a situation is studied. */
export type SituationReason =
  | 'deepest'
  | 'largest fall'
  | 'nothing running'
  | 'door the other way'
  | 'air handler the other way';

/** A situation to study for one appliance. */
export interface SituationToStudy {
  readonly state: OperatingState;
  readonly weather: string;
  readonly airtightness: string;
  readonly why: SituationReason;
}

/**
 * Situations in which the flue of an appliance is studied.
 *
 * The deepest of its zone and that with the largest fall, in every weather, because the deepest weather is seldom that
 * of the weakest draft; with nothing running in every weather, with each door of its zone one way and the other, because
 * a cold flue may not start against the draft of the house alone; and in the deepest weather with each of those doors and
 * each air handler the other way.
 *
 * @param house - the house
 * @param appliance - the appliance
 * @param worstCase - extremes of its zone
 * @returns situations, none twice
 */
export function situationsToStudy(
  house: House,
  appliance: Appliance,
  worstCase: Pick<WorstCaseStudy, 'appliances'>,
): readonly SituationToStudy[] {
  const worst = worstCase.appliances.find((each) => each.appliance === appliance.id);
  if (worst === undefined) return [];
  const { lowest, largestFall } = worst;
  const inWeathers = (
    { state, airtightness }: Pick<WorstPressure, 'state' | 'airtightness'>,
    why: SituationReason,
  ): readonly SituationToStudy[] =>
    house.weathers.map(({ name }) => ({ state, airtightness, weather: name, why }));
  const { state, weather, airtightness } = lowest;
  const other = (changed: OperatingState, why: SituationReason): SituationToStudy => {
    return { state: changed, weather, airtightness, why };
  };
  const turned = house.doors
    .filter(({ between, positions }) => between.includes(appliance.zone) && positions.length > 1)
    .map(({ id, baselinePosition }): OperatingState => {
      const stands = state.doors[id] ?? baselinePosition;
      const doors = { ...state.doors, [id]: stands === 'open' ? 'shut' : 'open' } as const;
      return { ...state, doors };
    });
  const doors = turned.map((each) => other(each, 'door the other way'));
  const handlers = (house.forcedAir ?? [])
    .filter(({ continuous }) => !continuous)
    .map(({ id }) => {
      const { [id]: runs, ...rest } = state.running;
      const running = runs === undefined ? { ...rest, [id]: 'on' } : rest;
      return other({ ...state, running }, 'air handler the other way');
    });
  const all = [
    ...inWeathers(lowest, 'deepest'),
    ...inWeathers(largestFall, 'largest fall'),
    ...[state, ...turned].flatMap((each) =>
      inWeathers({ ...lowest, state: baselineOf(each) }, 'nothing running'),
    ),
    ...doors,
    ...handlers,
  ];
  const seen = new Set<string>();
  return all.filter((each) => {
    const key = JSON.stringify([
      Object.entries(each.state.running).sort(),
      Object.entries(each.state.doors).sort(),
      each.weather,
      each.airtightness,
    ]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

import { houseWeather, type CompiledHouse, type OperatingState } from '@evendraft/house';
import type { BalanceQuestion } from '../balance-study.js';
import type { SituationPlace } from '../workers/situation-request.js';
import type { ShownRange } from './carries-at-least.js';
import { orderNothing, orderSettings, type OrderedSwitch } from './setting-order.js';
import type { SolvePlace } from './solve-states.js';
import { combinationsOf, doorSwitchesOf } from './switches.js';

/** One airtightness case and weather of a house with its doors as they are, of which every state is searched. */
export interface SearchedPlace {
  /** In the order of study. */
  readonly index: number;
  readonly at: SituationPlace;
  readonly doors: OperatingState['doors'];
  readonly order: readonly OrderedSwitch[];
  /** The range in which the premise of every ordered switch was shown. */
  readonly shown: ShownRange;
  /** How many states it has. */
  readonly states: number;
  /** A state as a question. */
  readonly question: (state: OperatingState) => BalanceQuestion;
}

/**
 * The places of a house, each with the order of its settings.
 *
 * @param compiled - the compiled house
 * @param needed - pressures of rooms over which the laws are compared; without it nothing is ordered
 * @returns places in the order of study: airtightness slowest, then weather, then doors
 */
export function searchedPlaces(
  compiled: CompiledHouse,
  needed: ShownRange | undefined,
): readonly SearchedPlace[] {
  const { house } = compiled;
  const doorPositions = [...combinationsOf(doorSwitchesOf(house))];
  const places: SearchedPlace[] = [];
  for (const airtightnessCase of house.airtightness.cases.keys()) {
    for (const [index, each] of house.weathers.entries()) {
      const weather = houseWeather(house, each);
      const order =
        needed === undefined
          ? orderNothing(house)
          : orderOf({ compiled, weather, airtightnessCase }, needed);
      for (const doors of doorPositions) {
        places.push({
          index: places.length,
          at: { weather: index, airtightnessCase },
          doors,
          order,
          shown: shownFor(order),
          states: order.reduce((product, { settings }) => product * settings.length, 1),
          question: (state) => ({ state, weather, airtightnessCase }),
        });
      }
    }
  }
  return places;
}

/** The order of settings. That of a fan that stalls was shown of its envelope only, so it counts for nothing. */
function orderOf(at: SolvePlace, needed: ShownRange): readonly OrderedSwitch[] {
  const { stalls, links } = at.compiled;
  const stalling = new Set(
    stalls?.links.flatMap((link) => {
      const { role } = links[link]!;
      return 'id' in role ? [role.id] : [];
    }),
  );
  return orderSettings(at, needed).map((each) =>
    stalling.has(each.id) ? { ...each, lowering: each.settings, raising: each.settings } : each,
  );
}

function shownFor(order: readonly OrderedSwitch[]): ShownRange {
  return {
    fromPa: Math.max(-Infinity, ...order.map(({ shown }) => shown.fromPa)),
    toPa: Math.min(Infinity, ...order.map(({ shown }) => shown.toPa)),
  };
}

import {
  houseWeather,
  type CompiledHouse,
  type OperatingState,
  type Weather,
} from '@evendraft/house';
import { flueReadings } from './flue-readings.js';
import { fluesOfSituation } from './flues-of-situation.js';
import type { HouseWithoutFlues } from './house-without-flues.js';
import { settleFlues, statesAtFlows } from './settle-flues.js';

/** Draft of one appliance at one outdoor temperature, vent minus room at the test tap [Pa]. */
export interface DraftAtTemperature {
  readonly outdoorTemperatureC: number;
  /** Firing, settled from a hot flue that draws; null where it has no balance [Pa]. */
  readonly hotPa: number | null;
  /** Firing, settled from the cold flue; null where it has no balance [Pa]. */
  readonly fromColdPa: number | null;
  /** Not firing; null where a damper shuts it or it has no balance [Pa]. */
  readonly coldPa: number | null;
}

/**
 * Draft of an appliance against outdoor temperature, walls at rest.
 *
 * @param compiled - the compiled house
 * @param rest - its network without flues
 * @param question - appliance, state, what fires, a weather whose wind is kept, and temperatures
 * @returns a row a temperature
 */
export function draftByTemperature(
  compiled: CompiledHouse,
  rest: HouseWithoutFlues,
  question: {
    readonly appliance: string;
    readonly state: OperatingState;
    readonly firing: Readonly<Record<string, string>>;
    readonly weather: Weather;
    readonly airtightnessCase: number;
    readonly temperaturesC: readonly number[];
  },
): readonly DraftAtTemperature[] {
  const { appliance, state, firing, airtightnessCase, temperaturesC } = question;
  const { running, doors } = state;
  return temperaturesC.map((outdoorTemperatureC) => {
    const weather = houseWeather(compiled.house, { ...question.weather, outdoorTemperatureC });
    const at = (operating: OperatingState) =>
      fluesOfSituation(compiled, rest, { state: operating, weather, airtightnessCase });
    const hot = at({ ...state, firing });
    const cold = at({ running, doors });
    const coldFlows = settleFlues(
      compiled,
      cold,
      cold.flues.map(() => -1e-3),
    );
    const startOf = (id: string): number => {
      const index = cold.flues.findIndex((flue) => flue.appliance.id === id);
      return coldFlows?.[index] ?? 0;
    };
    const read = (set: typeof hot, flows: readonly number[] | undefined): number | null => {
      const index = set.flues.findIndex((flue) => flue.appliance.id === appliance);
      if (flows === undefined || index < 0) return null;
      const responsePa = set.response(flows);
      const roomPa = set.roomPressures(flows);
      if (responsePa === undefined || roomPa === undefined) return null;
      const systems = statesAtFlows(set, flows);
      return flueReadings(set, { flows, systems, responsePa, roomPa })[index]!.tapDraftPa;
    };
    const designFlows = hot.flues.map(({ appliance: { id, flue }, member }) => {
      const stage = flue.stages.find(({ name }) => name === firing[id]);
      return Math.max(member.gasFlowKgPerS, stage?.ventFlowKgPerS ?? startOf(id));
    });
    return {
      outdoorTemperatureC,
      hotPa: read(hot, settleFlues(compiled, hot, designFlows)),
      fromColdPa: read(
        hot,
        settleFlues(
          compiled,
          hot,
          hot.flues.map((flue) => startOf(flue.appliance.id)),
        ),
      ),
      coldPa: read(cold, coldFlows),
    };
  });
}

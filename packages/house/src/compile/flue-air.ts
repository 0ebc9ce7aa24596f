import {
  airAsFlueGas,
  flueConstructions,
  flueInSteadyState,
  mixFlueGases,
  standardPressure,
  type AirState,
  type FluePiece,
  type FlueState,
  type GasStream,
} from '@evendraft/airflow';
import type { CompiledHouse, HouseWeather } from '../compiled-house.js';
import type { FlueSection, FlueStage } from '../flue.js';
import type { OperatingState } from '../operating-state.js';
import {
  chimneyJunction,
  chimneyLink,
  collarJunction,
  fluedAppliances,
  ventLink,
  type FluedAppliance,
} from './flue-paths.js';

/** The air of flues that are not cold, in one state and weather. */
export interface FlueAir {
  /** Density of warm columns while gas rises in them, by id of their link [kg/m3]. */
  readonly upwardDensityKgPerM3: ReadonlyMap<string, number>;
  /** Air of the junctions of warm flues, by id. */
  readonly junctionAir: ReadonlyMap<string, AirState>;
}

/**
 * Gas in the flues of a state: for each stage its temperature, cooled along the flue at the flow that the stage is
 * assumed to have. Gas of several appliances mixes below a shared chimney. Nothing is warm while all are off.
 *
 * @param compiled - the compiled house
 * @param situation - state and weather
 * @returns densities of rising columns and the air of junctions
 */
export function flueAir(
  compiled: Pick<CompiledHouse, 'house' | 'network'>,
  situation: { readonly state: OperatingState; readonly weather: HouseWeather },
): FlueAir {
  const upwardDensityKgPerM3 = new Map<string, number>();
  const junctionAir = new Map<string, AirState>();
  const { firing = {} } = situation.state;
  if (Object.keys(firing).length === 0) return { upwardDensityKgPerM3, junctionAir };

  const all = fluedAppliances(compiled.house);
  const gases = new Map<string, GasStream>();
  for (const appliance of all) {
    const { id, flue, zone } = appliance;
    const stage = flue.stages.find(({ name }) => name === firing[id]);
    if (stage?.gas === undefined) continue;
    const alone = flue.joins === undefined && !all.some(({ flue: other }) => other.joins === id);
    const gas = gasAtCollar(stage, nodeTemperature(compiled, situation.weather, zone));
    const sections = alone ? [...flue.connector, ...flue.chimney] : flue.connector;
    const column = columnOf(compiled, { ...situation, appliance, sections, gas });
    upwardDensityKgPerM3.set(ventLink(id), column.densityKgPerM3);
    junctionAir.set(collarJunction(id), column.air);
    gases.set(id, { ...gas, temperatureC: column.outletTemperatureC });
  }
  for (const owner of all) {
    const users = all.filter(({ id, flue }) => id === owner.id || flue.joins === owner.id);
    const mixed = mix(users.flatMap(({ id }) => gases.get(id) ?? []));
    if (users.length === 1 || mixed === undefined) continue;
    const { chimney: sections } = owner.flue;
    const column = columnOf(compiled, { ...situation, appliance: owner, sections, gas: mixed });
    upwardDensityKgPerM3.set(chimneyLink(owner.id), column.densityKgPerM3);
    junctionAir.set(chimneyJunction(owner.id), column.air);
  }
  return { upwardDensityKgPerM3, junctionAir };
}

/** Gas that enters a flue of a stage; without flow the whole column has its temperature. */
function gasAtCollar(stage: FlueStage, roomC: number): GasStream {
  const { gas, gasShare, ventFlowKgPerS } = stage;
  const gasC = roomC + (gas?.aboveRoomK ?? 0);
  const diluted = ventFlowKgPerS > 0 ? gasShare : 1;
  return { massFlowKgPerS: ventFlowKgPerS, temperatureC: roomC + diluted * (gasC - roomC) };
}

/** Gas of several appliances as one; what only stands warm counts where nothing flows. */
function mix(gases: readonly GasStream[]): GasStream | undefined {
  return mixFlueGases(gases) ?? gases[0];
}

interface Column {
  readonly densityKgPerM3: number;
  readonly air: AirState;
  readonly outletTemperatureC: number;
}

function columnOf(
  compiled: Pick<CompiledHouse, 'house' | 'network'>,
  of: {
    readonly weather: HouseWeather;
    readonly appliance: FluedAppliance;
    readonly sections: readonly FlueSection[];
    readonly gas: GasStream;
  },
): Column {
  const { weather, appliance, sections, gas } = of;
  const pressurePa = standardPressure(compiled.house.altitudeM);
  const { temperatureC, massFlowKgPerS } = gas;
  if (massFlowKgPerS === 0 || sections.length === 0) {
    // Ideal gas of the weight of air.
    const densityKgPerM3 = pressurePa / (airAsFlueGas.gasConstantJPerKgK * (temperatureC + 273.15));
    return {
      densityKgPerM3,
      air: { temperatureC, densityKgPerM3 },
      outletTemperatureC: temperatureC,
    };
  }
  const outdoorTemperatureC = weather.outdoorAir.temperatureC;
  const roomC = nodeTemperature(compiled, weather, appliance.zone);
  const state: FlueState = flueInSteadyState({
    pieces: sections.map((section): FluePiece => ({
      ...section,
      construction: flueConstructions[section.construction],
      surroundings: section.stands,
      ambientTemperatureC: section.stands === 'indoors' ? roomC : outdoorTemperatureC,
    })),
    massFlowKgPerS,
    gas: airAsFlueGas,
    inletTemperatureC: temperatureC,
    outdoorTemperatureC,
    pressurePa,
  });
  return {
    densityKgPerM3: state.columnDensityKgPerM3,
    air: state.meanGas,
    outletTemperatureC: state.outletTemperatureC,
  };
}

function nodeTemperature(
  { network }: Pick<CompiledHouse, 'network'>,
  { zoneAir }: HouseWeather,
  zone: string,
): number {
  return zoneAir.temperatureC[network.zoneIndex.get(zone) ?? -1]!;
}

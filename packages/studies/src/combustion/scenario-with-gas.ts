import type { AirState } from '@evendraft/airflow';
import type { CompiledHouse } from '@evendraft/house';
import type { Scenario } from '@evendraft/network';
import type { FluesOfSituation } from './flues-of-situation.js';
import { airOfTemperature } from './vent-gas.js';

/** Gas in one flue, as the network of the whole house needs it. */
export interface GasInFlue {
  /** Of the last known state, upwards positive [kg/s]. */
  readonly massFlowKgPerS: number;
  /** What the vent's law takes as entering while gas rises. */
  readonly lawAir: AirState;
  readonly columnDensityKgPerM3: number;
  /** What comes out at the collar where it spills [°C]. */
  readonly collarTemperatureC: number;
}

/** Gas in the flues of a house. */
export interface GasInFlues {
  /** By flue. */
  readonly members: readonly GasInFlue[];
  /** By system; `undefined` for a flue of its own. */
  readonly chimneys: readonly (
    | (Pick<GasInFlue, 'massFlowKgPerS' | 'lawAir' | 'columnDensityKgPerM3'> & {
        readonly junctionTemperatureC: number;
      })
    | undefined
  )[];
}

/**
 * The scenario of a whole house with known gas in its flues.
 *
 * The collar has one air: that of the vent's law while gas rises, else what spills. Where both occur, the openings at
 * the collar are scaled by the root of the ratio of densities, which is exact for sharp edges.
 *
 * @param compiled - the compiled house
 * @param flues - its flues in the situation
 * @param gas - what is in them
 * @returns the scenario, to be solved with the network of the house
 */
export function scenarioWithGas(
  { network, links }: CompiledHouse,
  { flues, systems, scenario }: FluesOfSituation,
  gas: GasInFlues,
): Scenario {
  const columnDensityKgPerM3 = Float64Array.from(scenario.columnDensityKgPerM3 ?? []);
  const linkScale = Float64Array.from(scenario.linkScale ?? []);
  const temperatureC = Float64Array.from(scenario.zoneAir?.temperatureC ?? []);
  const densityKgPerM3 = Float64Array.from(scenario.zoneAir?.densityKgPerM3 ?? []);
  const setAir = (zone: number, air: AirState): void => {
    temperatureC[zone] = air.temperatureC;
    densityKgPerM3[zone] = air.densityKgPerM3;
  };
  const indexOf = (link: string): number => network.linkIndex.get(link) ?? -1;
  let next = 0;
  systems.forEach(({ members, chimney, pressurePa }, s) => {
    for (const { vent, inlets, injectedKgPerS } of members) {
      const { collarZone } = flues[next]!;
      const own = gas.members[next]!;
      next++;
      columnDensityKgPerM3[indexOf(vent.link)] = own.columnDensityKgPerM3;
      const spilling = airOfTemperature(own.collarTemperatureC, pressurePa);
      const rises = own.massFlowKgPerS > 0;
      setAir(collarZone, rises ? own.lawAir : spilling);
      if (rises && own.massFlowKgPerS < injectedKgPerS) {
        const ratio = Math.sqrt(spilling.densityKgPerM3 / own.lawAir.densityKgPerM3);
        for (const { link } of inlets) linkScale[indexOf(link)]! *= ratio;
      }
    }
    const shared = gas.chimneys[s];
    if (chimney === undefined || shared === undefined) return;
    const link = indexOf(chimney.link);
    columnDensityKgPerM3[link] = shared.columnDensityKgPerM3;
    setAir(
      network.zoneIndex.get(links[link]!.description.from) ?? -1,
      shared.massFlowKgPerS > 0
        ? shared.lawAir
        : airOfTemperature(shared.junctionTemperatureC, pressurePa),
    );
  });
  return {
    ...scenario,
    columnDensityKgPerM3,
    linkScale,
    zoneAir: { temperatureC, densityKgPerM3 },
  };
}

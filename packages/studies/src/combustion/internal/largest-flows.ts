import { gravity } from '@evendraft/airflow';
import { inletSuction } from '../inlet-suction.js';
import { airOfTemperature, lossOf, riseOf } from '../vent-gas.js';
import type { VentSystem } from '../vent-system.js';

/** How much more than all that can drive is taken [-]. */
const margin = 2;

/**
 * Flows that no vent can pass in any state [kg/s].
 *
 * All that drives is the pressure that the house has without flues, the buoyancy of the hottest and of the coldest gas
 * over the whole rise, and on a common chimney the gas of the burners; openings only take from it. The loss of the vent
 * alone, in heavy gas, at the flow given takes twice that.
 *
 * @param systems - the vents
 * @param responsePa - by member, what the house gives while nothing flows in them [Pa]
 * @returns by member, the same both ways [kg/s]
 */
export function largestFlows(
  systems: readonly VentSystem[],
  responsePa: readonly number[],
): readonly number[] {
  const house = Math.max(...responsePa.map(Math.abs));
  return systems.flatMap((system) => {
    const { members, chimney, pressurePa, outdoorAir, topAir } = system;
    const vents = [...members.map(({ vent }) => vent), ...(chimney === undefined ? [] : [chimney])];
    const pieces = vents.flatMap((vent) => vent.pieces);
    const temperatures = [
      topAir.temperatureC,
      ...members.flatMap((member) => [member.gasTemperatureC, member.roomAir.temperatureC]),
      ...pieces.map(({ ambientTemperatureC }) => ambientTemperatureC),
    ];
    const hottest = airOfTemperature(Math.max(...temperatures), pressurePa);
    const coldest = airOfTemperature(Math.min(...temperatures), pressurePa);
    const lightest = outdoorAir.densityKgPerM3 - hottest.densityKgPerM3;
    const heaviest = coldest.densityKgPerM3 - outdoorAir.densityKgPerM3;
    const rise = vents.reduce((sum, vent) => sum + Math.abs(riseOf(vent)), 0);
    const buoyancy = (Math.max(0, lightest) + Math.max(0, heaviest)) * gravity * rise;
    // More than a burner sends rises only while its collar sucks, so that it pushes nothing but its neighbours' flows.
    const pushed = members.map((member) =>
      chimney === undefined || member.inlets.length === 0
        ? 0
        : Math.abs(
            inletSuction(member.inlets, -member.injectedKgPerS, {
              room: member.roomAir,
              collar: hottest,
            }),
          ),
    );
    const drive = margin * (1 + house + buoyancy + Math.max(...pushed));
    return members.map(({ vent, injectedKgPerS, inlets }) => {
      if (inlets.length === 0) return injectedKgPerS;
      let flow = 1e-4 + injectedKgPerS;
      while (lossOf(vent, flow, coldest) < drive && flow < 1e3) flow *= 1.5;
      return flow;
    });
  });
}

// A house for tests, synthetic, made for this project.
import { houseWeather, type CompiledHouse, type DevicePath } from '@evendraft/house';
import type { BalanceQuestion } from '../src/index.js';
import {
  compiled,
  constantFlow,
  device,
  fan,
  inventedHouse,
  makeUp,
  passBetween,
  weather,
} from './invented-house.js';

/** Two rooms with a hole between them, a hood and an inlet that opens with it. */
export function tightHall(
  outdoorC: number,
  path?: DevicePath,
): {
  readonly network: CompiledHouse;
  readonly question: (running: Readonly<Record<string, string>>) => BalanceQuestion;
} {
  const network = compiled(
    inventedHouse({
      devices: [
        device(
          'hood',
          { on: path === undefined ? constantFlow(0.2) : fan(0.2) },
          { zone: 'hall', ...(path === undefined ? {} : { path }) },
        ),
      ],
      makeUpOpenings: [makeUp('inlet', 'hood')],
      openings: [passBetween()],
      weathers: [weather('only', outdoorC)],
    }),
  );
  const [only] = network.house.weathers;
  const outdoors = houseWeather(network.house, only!);
  return { network, question: (running) => ({ state: { running, doors: {} }, weather: outdoors }) };
}

/** Density of the air of the first room [kg/m³]. */
export function roomDensity(network: CompiledHouse): number {
  return network.network.description.zones[0]!.air.densityKgPerM3;
}

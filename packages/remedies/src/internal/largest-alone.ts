import { houseWeather, type CompiledHouse, type Device } from '@evendraft/house';
import type { BalanceQuestion } from '@evendraft/studies';

/**
 * The question of what one exhaust device does alone at its highest speed, in the coldest weather, doors as in the
 * baseline.
 *
 * @param compiled - the compiled house
 * @param exhaust - the device; in a changed house its speeds are those of the changed one
 * @returns its id and the question; undefined where there is no such device
 */
export function largestAlone(
  compiled: CompiledHouse,
  exhaust: Device | undefined,
): { readonly device: string; readonly question: BalanceQuestion } | undefined {
  const { house } = compiled;
  const [coldest] = [...house.weathers].sort(
    (one, other) => one.outdoorTemperatureC - other.outdoorTemperatureC,
  );
  const speed = house.devices.find(({ id }) => id === exhaust?.id)?.speeds.at(-1)?.name;
  if (exhaust === undefined || coldest === undefined || speed === undefined) return undefined;
  const doors = Object.fromEntries(
    house.doors.map(({ id, positions, baselinePosition }) => [
      id,
      positions.includes(baselinePosition) ? baselinePosition : (positions[0] ?? baselinePosition),
    ]),
  );
  return {
    device: exhaust.id,
    question: {
      state: { running: { [exhaust.id]: speed }, doors },
      weather: houseWeather(house, coldest),
    },
  };
}

import type { House } from './house.js';
import type { OperatingState } from './operating-state.js';

/**
 * An operating state in words, in the order of the house file: `hood high + dryer; bedroom door shut`.
 *
 * A device with one speed is named without it. Doors are named only where the house has any.
 *
 * @param house - the house
 * @param state - the state
 * @returns the words
 */
export function stateLabel(house: House, state: OperatingState): string {
  const devices = house.devices.flatMap((device) => {
    const speed = state.running[device.id];
    if (speed === undefined) return [];
    return [device.speeds.length > 1 ? `${device.id} ${speed}` : device.id];
  });
  const ventilators = house.ventilators.filter((v) => state.running[v.id] !== undefined);
  const running = [...devices, ...ventilators.map((v) => v.id)];
  const windows = house.openings.filter(({ positions }) => positions !== undefined);
  const doors = [...house.doors, ...windows].map(
    ({ id, baselinePosition = 'shut' }) => `${id} ${state.doors[id] ?? baselinePosition}`,
  );
  const what = running.length === 0 ? 'everything off' : running.join(' + ');
  return doors.length === 0 ? what : `${what}; ${doors.join(', ')}`;
}

import type { House } from './house.js';
import type { OperatingState } from './operating-state.js';

/**
 * An operating state in words, in the order of the house file: `hood high + dryer; bedroom door shut`.
 *
 * A device with one speed is named without it, a ventilator in its usual mode too. Doors are named only where the house has any.
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
  const ventilators = house.ventilators.flatMap(({ id }) => {
    const mode = state.running[id];
    if (mode === undefined) return [];
    return [mode === 'on' ? id : `${id} ${mode}`];
  });
  const handlers = (house.forcedAir ?? []).flatMap(({ id }) =>
    state.running[id] === undefined ? [] : [id],
  );
  const stages = house.appliances.flatMap(({ id }) => {
    const stage = state.firing?.[id];
    return stage === undefined ? [] : [`${id} ${stage}`];
  });
  const running = [...devices, ...ventilators, ...handlers, ...stages];
  const windows = house.openings.filter(({ positions }) => positions !== undefined);
  const doors = [...house.doors, ...windows].map(
    ({ id, baselinePosition = 'shut' }) => `${id} ${state.doors[id] ?? baselinePosition}`,
  );
  const what = running.length === 0 ? 'everything off' : running.join(' + ');
  return doors.length === 0 ? what : `${what}; ${doors.join(', ')}`;
}

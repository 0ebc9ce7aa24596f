import type { Device, House } from './house.js';
import type { OperatingState } from './operating-state.js';
import { ventilatorModes } from './ventilator-modes.js';

/**
 * How many operating states a house has: every speed of every device that people switch, times every position of
 * doors and windows.
 *
 * @param house - the house
 * @returns the count, without listing them [-]
 */
export function countOperatingStates(house: House): number {
  const choices = [...runningChoices(house), ...doorChoices(house)];
  return choices.reduce((count, [, options]) => count * options.length, 1);
}

/**
 * All operating states of a house: every combination of device speeds (off included) and door positions.
 *
 * Continuous devices run in all of them; interlocked ones are not listed, they follow their driver.
 * The order is fixed: the last device of the house file changes fastest, doors slowest.
 *
 * @param house - the house
 * @returns the states; the one with everything off is the first of each set of door positions
 */
export function operatingStates(house: House): readonly OperatingState[] {
  const running = combinations(runningChoices(house));
  const doors = combinations(doorChoices(house));
  return doors.flatMap((positions) =>
    running.map((speeds) => ({
      running: Object.fromEntries(speeds.filter(([, speed]) => speed !== 'off')),
      doors: Object.fromEntries(positions),
    })),
  );
}

/**
 * The baseline that belongs to a state: the same doors, every device off, ventilators and continuous fans included.
 *
 * @param state - the state
 * @returns its baseline
 */
export function baselineOf(state: OperatingState): OperatingState {
  return { running: {}, doors: state.doors };
}

type Choice<Option extends string> = readonly [string, readonly Option[]];

function runningChoices(house: House): readonly Choice<string>[] {
  const byHand = house.devices.filter((d) => d.speeds.length > 0 && d.interlock === undefined);
  return [
    ...byHand.map((device): Choice<string> => [device.id, speedChoices(device)]),
    ...house.ventilators.map((v): Choice<string> => {
      const modes = ventilatorModes(v).map(({ name }) => name);
      return [v.id, v.continuous ? modes : ['off', ...modes]];
    }),
    ...(house.forcedAir ?? []).map(({ id, continuous }): Choice<string> => [
      id,
      continuous ? ['on'] : ['off', 'on'],
    ]),
  ];
}

function speedChoices(device: Device): readonly string[] {
  const names = device.speeds.map((speed) => speed.name);
  return device.continuous ? names : ['off', ...names];
}

function doorChoices(house: House): readonly Choice<'open' | 'shut'>[] {
  const windows = house.openings.flatMap(({ id, positions }): Choice<'open' | 'shut'>[] =>
    positions === undefined ? [] : [[id, positions]],
  );
  return [...house.doors.map((door) => [door.id, door.positions] as const), ...windows];
}

function combinations<Option extends string>(
  choices: readonly Choice<Option>[],
): (readonly (readonly [string, Option])[])[] {
  return choices.reduce<(readonly (readonly [string, Option])[])[]>(
    (made, [id, options]) =>
      made.flatMap((before) => options.map((option) => [...before, [id, option] as const])),
    [[]],
  );
}

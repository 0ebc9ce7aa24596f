import { operatingStates, type House, type OperatingState } from '@evendraft/house';

/** Something that people set by hand, with its settings in rising order; interlocked things only follow. */
export interface Switch {
  readonly id: string;
  /** Name of the speed or mode; `off` is off. */
  readonly settings: readonly string[];
}

/** A door or window with the positions that a study goes through. */
export interface DoorSwitch {
  readonly id: string;
  readonly settings: readonly ('open' | 'shut')[];
}

/**
 * Devices, ventilators and air handlers that people set, in the order in which operating states are counted.
 *
 * Their settings are read off the states of a house with that one thing, so that both always agree.
 *
 * @param house - the house
 * @returns each with its settings, `off` first where it may be off
 */
export function switchesOf(house: House): readonly Switch[] {
  const none = nothingToSet(house);
  const alone = (id: string, part: Partial<House>): readonly Switch[] => {
    const settings = operatingStates({ ...none, ...part }).map(
      ({ running }) => running[id] ?? 'off',
    );
    // Nothing to set: it follows an interlock, or exhausts no air.
    return settings.length === 1 && settings[0] === 'off' ? [] : [{ id, settings }];
  };
  return [
    ...house.devices.flatMap((device) => alone(device.id, { devices: [device] })),
    ...house.ventilators.flatMap((ventilator) =>
      alone(ventilator.id, { ventilators: [ventilator] }),
    ),
    ...(house.forcedAir ?? []).flatMap((system) => alone(system.id, { forcedAir: [system] })),
  ];
}

/**
 * The doors and windows of a house as switches, in the order in which operating states are counted.
 *
 * @param house - the house
 * @returns each with its positions
 */
export function doorSwitchesOf(house: House): readonly DoorSwitch[] {
  const none = nothingToSet(house);
  const alone = (id: string, part: Partial<House>): readonly DoorSwitch[] => {
    const settings = operatingStates({ ...none, ...part }).map(({ doors }) => doors[id]);
    const known = settings.filter((setting) => setting !== undefined);
    return known.length === 0 ? [] : [{ id, settings: known }];
  };
  return [
    ...house.doors.flatMap((door) => alone(door.id, { doors: [door] })),
    ...house.openings.flatMap((opening) => alone(opening.id, { openings: [opening] })),
  ];
}

function nothingToSet(house: House): House {
  return { ...house, devices: [], ventilators: [], forcedAir: [], doors: [], openings: [] };
}

/**
 * Every combination of settings, the last item changing fastest; made one at a time.
 *
 * @param items - what is set, each with its settings
 * @yields id to setting
 */
export function* combinationsOf<Setting extends string>(
  items: readonly { readonly id: string; readonly settings: readonly Setting[] }[],
): Generator<Readonly<Record<string, Setting>>> {
  const [first, ...rest] = items;
  if (first === undefined) {
    yield {};
    return;
  }
  for (const setting of first.settings) {
    for (const others of combinationsOf(rest)) yield { [first.id]: setting, ...others };
  }
}

/**
 * An operating state from settings.
 *
 * @param settings - id to speed, `off` included
 * @param doors - id to position
 * @returns the state; what is off is absent from it
 */
export function stateOf(
  settings: Readonly<Record<string, string>>,
  doors: OperatingState['doors'],
): OperatingState {
  return {
    running: Object.fromEntries(Object.entries(settings).filter(([, speed]) => speed !== 'off')),
    doors,
  };
}

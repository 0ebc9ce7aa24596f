import type { House, Interlock } from '../house.js';
import type { OperatingState } from '../operating-state.js';

/** What really runs and stands open once every interlock has followed its driver. */
export interface FollowedState {
  /** Device or ventilator id to speed name; interlocked devices included. */
  readonly running: ReadonlyMap<string, string>;
  /** Ids of make-up openings whose damper is open. */
  readonly openMakeUp: ReadonlySet<string>;
  /** Ids of devices whose own dampers are open. */
  readonly openDampers: ReadonlySet<string>;
}

/**
 * Lets every interlock follow its driver. Chains are followed to their end; the house file refuses cycles.
 *
 * @param house - the house
 * @param state - what people switched on
 * @returns what runs and which make-up dampers are open
 */
export function followInterlocks(house: House, state: OperatingState): FollowedState {
  const running = new Map(Object.entries(state.running));
  const firing = new Map(Object.entries(state.firing ?? {}));
  /** Whether what the interlock follows runs, or fires, as it should. */
  const drives = ({ driver, speeds }: Interlock): boolean => {
    const speed = running.get(driver) ?? firing.get(driver);
    return speed !== undefined && (speeds?.includes(speed) ?? true);
  };
  const followers = house.devices.filter((d) => d.interlock !== undefined && d.speeds.length > 0);
  // Each pass can wake the followers of what the pass before woke; a chain is no longer than the list.
  for (let pass = 0; pass < followers.length; pass += 1) {
    for (const device of followers) {
      if (running.has(device.id)) continue;
      if (device.interlock && drives(device.interlock)) {
        const fastest = device.speeds.at(-1);
        const driverSpeed = running.get(device.interlock.driver);
        const same = device.speeds.find((speed) => speed.name === driverSpeed);
        const speed = same ?? fastest;
        if (speed) running.set(device.id, speed.name);
      }
    }
  }
  const openMakeUp = new Set(
    house.makeUpOpenings.filter((m) => drives(m.interlock)).map((m) => m.id),
  );
  const openDampers = new Set(
    house.devices
      .filter(({ id, damperOpensWith: driver }) =>
        driver === undefined ? running.has(id) : drives(driver),
      )
      .map(({ id }) => id),
  );
  return { running, openMakeUp, openDampers };
}

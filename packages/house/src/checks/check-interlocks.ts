import type { IssuePath } from '@evendraft/text';
import type { ForcedAirSystem } from '../forced-air.js';
import type { Appliance, Device, Interlock, MakeUpOpening, Ventilator } from '../house.js';
import { report, type Reading } from '../reading/reading.js';
import { reportUnknown } from '../reading/house-names.js';
import { ventilatorModes } from '../ventilator-modes.js';

/** Everything that drives or follows. */
export interface InterlockedThings {
  readonly devices: readonly Device[];
  readonly makeUpOpenings: readonly MakeUpOpening[];
  readonly ventilators: readonly Ventilator[];
  readonly forcedAir: readonly ForcedAirSystem[];
  readonly appliances: readonly Appliance[];
}

/**
 * Checks that every interlock follows a speed that exists, and that no chain of interlocks closes on itself.
 *
 * @param reading - where issues are collected
 * @param things - everything that drives or follows, as far as it could be read
 */
export function checkInterlocks(reading: Reading, things: InterlockedThings): void {
  const speeds = new Map<string, readonly string[]>([
    ...things.devices.map((device) => [device.id, device.speeds.map(({ name }) => name)] as const),
    ...things.ventilators.map((v) => [v.id, ventilatorModes(v).map(({ name }) => name)] as const),
    ...things.forcedAir.map(({ id }) => [id, ['on']] as const),
    ...things.appliances.map(({ id, flue }) => {
      return [id, flue?.stages.map(({ name }) => name) ?? ['firing']] as const;
    }),
  ]);
  for (const follower of followersOf(things)) checkSpeeds(reading, follower, speeds);
  checkCycles(reading, things.devices);
}

interface Follower {
  readonly id: string;
  readonly interlock: Interlock;
  readonly path: IssuePath;
}

function followersOf({ devices, makeUpOpenings }: InterlockedThings): readonly Follower[] {
  return [
    ...devices.flatMap(({ id, interlock, direction }) =>
      interlock === undefined ? [] : [{ id, interlock, path: [direction, id, 'interlock'] }],
    ),
    ...devices.flatMap(({ id, damperOpensWith: interlock, direction }) =>
      interlock === undefined
        ? []
        : [{ id, interlock, path: [direction, id, 'damper', 'opensWith'] }],
    ),
    ...makeUpOpenings.map(({ id, interlock }) => ({
      id,
      interlock,
      path: ['makeUp', id, 'opensWith'],
    })),
  ];
}

function checkSpeeds(
  reading: Reading,
  { interlock, path }: Follower,
  speeds: ReadonlyMap<string, readonly string[]>,
): void {
  const { driver } = interlock;
  const known = speeds.get(driver);
  // A driver that could not be read is reported where it stands.
  if (known === undefined) return;
  if (known.length === 0) {
    report(reading, path, { code: 'interlock.driver-without-flow', parameters: { driver } });
    return;
  }
  interlock.speeds?.forEach((name) => {
    if (known.includes(name)) return;
    const what = `speed of ${driver}`;
    reportUnknown(reading, { name, path: [...path, 'speeds'], what, known });
  });
}

/** Reports each cycle once, at its first device in the order of the file. */
function checkCycles(reading: Reading, devices: readonly Device[]): void {
  const driverOf = new Map(devices.map(({ id, interlock }) => [id, interlock?.driver]));
  const reported = new Set<string>();
  for (const { id, direction } of devices) {
    const chain = [id];
    let next = driverOf.get(id);
    while (next !== undefined && !chain.includes(next)) {
      chain.push(next);
      next = driverOf.get(next);
    }
    if (next !== id || chain.some((each) => reported.has(each))) continue;
    for (const each of chain) reported.add(each);
    report(reading, [direction, id, 'interlock'], {
      code: 'interlock.cycle',
      parameters: { cycle: [...chain, id] },
    });
  }
}

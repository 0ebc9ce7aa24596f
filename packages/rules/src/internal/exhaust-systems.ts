import type { Device, DeviceKind, House } from '@evendraft/house';

/**
 * Rated flow of a device at its highest speed [m³/s].
 *
 * @param device - the device
 * @returns its flow; 0 for one that moves no air out [m³/s]
 */
export function highestFlow({ speeds }: Device): number {
  return Math.max(0, ...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
}

/** Exhaust that takes no air from the rooms, or runs with windows open. */
const notFromRooms: readonly DeviceKind[] = ['attic fan', 'summer cooling fan', 'subslab fan'];

/**
 * The exhaust that takes air out of the rooms of a house, strongest first; of equals the first of the house.
 *
 * @param house - the house
 * @returns its exhaust devices
 */
export function exhaustSystems(house: House): readonly Device[] {
  return house.devices
    .filter(
      ({ direction, speeds, kind }) =>
        direction === 'exhaust' && speeds.length > 0 && !notFromRooms.includes(kind),
    )
    .sort((one, other) => highestFlow(other) - highestFlow(one));
}

/** A supply fan, with the exhaust that it starts with. */
export interface PoweredSupply {
  readonly device: Device;
  readonly flowM3PerS: number;
}

/**
 * Supply fans that start with a device, or that run continuously [m³/s].
 *
 * @param house - the house
 * @param driver - id of the device
 * @returns the fans with their rated flows
 */
export function suppliesWith(house: House, driver: string): readonly PoweredSupply[] {
  return house.devices
    .filter(
      ({ direction, interlock, continuous }) =>
        direction === 'supply' && (interlock?.driver === driver || continuous),
    )
    .map((device) => ({ device, flowM3PerS: highestFlow(device) }));
}

import type { Device, House } from '@evendraft/house';

/**
 * The exhaust device with the highest rated flow among those that people switch.
 *
 * @param house - the house
 * @returns the device; undefined where the house has none
 */
export function largestExhaust(house: House): Device | undefined {
  const top = ({ speeds }: Device): number =>
    Math.max(0, ...speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
  return house.devices
    .filter(({ direction, speeds, interlock }) => {
      return direction === 'exhaust' && speeds.length > 0 && interlock === undefined;
    })
    .reduce<Device | undefined>(
      (one, other) => (one === undefined || top(other) > top(one) ? other : one),
      undefined,
    );
}

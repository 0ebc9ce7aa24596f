import type { House, OperatingState } from '@evendraft/house';

/**
 * Doors and windows as they stand in the baseline, or in their only position.
 *
 * @param house - the house
 * @returns id to position
 */
export function plainDoors(house: House): OperatingState['doors'] {
  return Object.fromEntries([
    ...house.doors.map(({ id, positions, baselinePosition }) => [
      id,
      positions.includes(baselinePosition) ? baselinePosition : (positions[0] ?? baselinePosition),
    ]),
    ...house.openings.flatMap(({ id, positions, baselinePosition = 'shut' }) =>
      positions === undefined
        ? []
        : [[id, positions.includes(baselinePosition) ? baselinePosition : positions[0]]],
    ),
  ]) as OperatingState['doors'];
}

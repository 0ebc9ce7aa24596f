import type { House } from '@evendraft/house';
import type { ExhaustCurveStudy } from '@evendraft/studies';
import type { MakeUpSize } from './make-up-size.js';

/** A change to a house: as one changed house, or as several of which the worst counts. */
export interface HouseChange {
  readonly cure: string;
  readonly houses: readonly House[];
  readonly makeUp?: MakeUpSize;
  /** Of the largest exhaust in the house with the make-up air. */
  readonly exhaustCurve?: ExhaustCurveStudy;
  /** Ids of the appliances that it is meant for; absent where it is for all. */
  readonly onlyFor?: readonly string[];
}

/**
 * Changes to what exhausts air, in the order in which they are tried.
 *
 * @param house - the house as it is
 * @returns the dryer replaced, speeds capped, devices kept from running together, none while an appliance fires
 */
export function changesOf(house: House): readonly HouseChange[] {
  const exhaust = house.devices.filter(
    ({ direction, speeds }) => direction === 'exhaust' && speeds.length > 0,
  );
  const changed = (id: string, change: Partial<House['devices'][number]>): House => ({
    ...house,
    devices: house.devices.map((each) => (each.id === id ? { ...each, ...change } : each)),
  });
  const byHand = exhaust.filter(({ interlock }) => interlock === undefined);
  return [
    ...exhaust
      .filter(({ kind }) => kind === 'dryer')
      .map(({ id }) => ({
        cure: `Replace the ${id} with one that exhausts no air.`,
        houses: [changed(id, { kind: 'condensing dryer', speeds: [] })],
      })),
    ...exhaust.flatMap(({ id, speeds }) =>
      speeds
        .slice(0, -1)
        .map((_, place) => speeds.slice(0, place + 1))
        .reverse()
        .map((kept) => ({
          cure: `Cap the ${id} at ${kept.at(-1)!.name}.`,
          houses: [changed(id, { speeds: kept })],
        })),
    ),
    ...(byHand.length < 2
      ? []
      : [
          {
            cure: 'Keep exhaust devices from running together, so that only one can run at a time.',
            houses: byHand.map(({ id }) => ({
              ...house,
              devices: house.devices.filter((each) => each.id === id || !byHand.includes(each)),
            })),
          },
        ]),
    ...(byHand.length === 0
      ? []
      : [
          {
            cure: 'Lock out exhaust that is switched by hand while an appliance fires, or a fire or its embers burn.',
            houses: [{ ...house, devices: house.devices.filter((each) => !byHand.includes(each)) }],
          },
        ]),
  ];
}

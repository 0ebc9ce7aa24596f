import { gravity } from '@evendraft/airflow';
import type { Balance } from '../balance.js';

/** How the air of a column moves. */
export type ColumnState = 'upward' | 'downward' | 'still';

/** A column whose air depends on the direction of its flow. */
export interface StatedColumn {
  /** Place of its link in the description. */
  readonly link: number;
  readonly upwardDensityKgPerM3: number;
  readonly downwardDensityKgPerM3: number;
  /** Height of `to` above `from` [m]. */
  readonly riseM: number;
}

/** A flow of less than this part of the greatest has no direction. */
const directionless = 1e-9;

/** Which way the air of a column moves in a balance. */
export function movementOf(balance: Balance, column: StatedColumn): ColumnState {
  const flows = balance.links.massFlowKgPerS;
  let greatest = 0;
  for (const flow of flows) greatest = Math.max(greatest, Math.abs(flow));
  const upward = flows[column.link]! * Math.sign(column.riseM);
  if (Math.abs(upward) <= directionless * greatest) return 'still';
  return upward > 0 ? 'upward' : 'downward';
}

/** A column that lets nothing through, because its air is in between. */
export interface StillColumn {
  /** At the opening, where its law carries nothing [Pa]. */
  readonly pressureDifferencePa: number;
  readonly densityKgPerM3: number;
  /** The slightest flow replaces the column's air so that the flow comes to rest again. */
  readonly stable: boolean;
}

/**
 * The air with which a removed column would carry nothing; undefined where it would flow with every mixture.
 *
 * @param column - its link was removed, with the density of upward flow
 * @param place - the pressure difference at its opening [Pa], and a flow of the sign of its own at a difference
 */
export function stillColumn(
  { upwardDensityKgPerM3: up, downwardDensityKgPerM3: down, riseM }: StatedColumn,
  place: { readonly differencePa: number; directionAt(differencePa: number): number },
): StillColumn | undefined {
  const differenceAt = (part: number): number =>
    place.differencePa - gravity * part * (down - up) * riseM;
  const flowOf = (part: number): number => place.directionAt(differenceAt(part));
  const [withUp, withDown] = [flowOf(0), flowOf(1)];
  if (withUp * withDown > 0) return undefined;
  let [low, high] = [0, 1];
  for (let halving = 0; halving < 60 && low < high; halving++) {
    const middle = (low + high) / 2;
    if (flowOf(middle) * withUp > 0) low = middle;
    else high = middle;
  }
  const part = withUp === 0 ? 0 : high;
  return {
    pressureDifferencePa: differenceAt(part),
    densityKgPerM3: up + part * (down - up),
    // Upward air that drives upward carries on what a disturbance begins.
    stable: !(withUp * Math.sign(riseM) > 0 && withDown !== 0),
  };
}

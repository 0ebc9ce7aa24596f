import type { AirState } from '@evendraft/airflow';
import { flowAt, gravity } from '@evendraft/airflow';
import type { LinkDescription } from '../network-description.js';
import type { ColumnState, StatedColumn } from './column-states.js';
import type { CutColumn, FreedNetwork } from './freed-network.js';
import { isRisingFan } from './freed-network.js';
import type { SolveBudget } from './fan-roots.js';
import { risingCurve } from './rising-curve.js';

/** A column that is searched, with what its flow depends on. */
export interface SearchedColumn extends StatedColumn {
  readonly description: LinkDescription;
  readonly air: { readonly from: AirState; readonly to: AirState };
  /** Places of its zones; −1 at a boundary. */
  readonly zones: readonly [from: number, to: number];
}

/** Pressures between which every balance of a set lies, in the order of the zones [Pa]. */
export interface PressureBounds {
  readonly lowestPa: Float64Array;
  readonly highestPa: Float64Array;
}

/** What a column's opening sees with no pressure in the zones, for the air of each direction [Pa]. */
export interface ColumnDrives {
  readonly upward: number;
  readonly downward: number;
}

/** What is known of the columns: the state of each, undefined where any may be. */
export type AssumedStates = readonly (ColumnState | undefined)[];

/** A network of which bounds are wanted. */
export interface BoundedNetwork {
  readonly freed: FreedNetwork;
  readonly columns: readonly SearchedColumn[];
  /** By link; those of the columns are set here [kg/m3]. */
  readonly densities: Float64Array;
  readonly budget: SolveBudget;
}

/** Bounds are widened by what a solve may be off [Pa]. */
const solvedWithinPa = 1e-7;

/**
 * Encloses every balance in which the columns are as assumed, from nothing.
 *
 * No pressure falls when more air comes to a zone or less leaves it. So the highest pressures of all are those at
 * which each column that may still be either way gives most and takes least: one to outdoors with one of its airs.
 * One between two zones has the air halfway; no pressure moves by more than the columns' pressures do from there.
 *
 * @param network - the network and its columns
 * @param states - what is assumed of each column
 * @returns bounds; undefined where there is none
 */
export function firstBounds(
  network: BoundedNetwork,
  states: AssumedStates,
): PressureBounds | undefined {
  const halfway = openBetweenZones(network, states).reduce(
    (sum, column) => sum + widthPa(column) / 2,
    solvedWithinPa,
  );
  const highest = solveSide(network, states, { side: 'highest', cut: [] });
  const lowest = highest && solveSide(network, states, { side: 'lowest', cut: [], start: highest });
  if (highest === undefined || lowest === undefined) return undefined;
  return {
    lowestPa: lowest.map((pressure) => pressure - halfway),
    highestPa: highest.map((pressure) => pressure + halfway),
  };
}

/**
 * Draws bounds closer. A column between two zones that may still be either way is cut: each end has the air that
 * suits it, and the bound of the zone beyond.
 *
 * @param network - the network and its columns
 * @param states - what is assumed of each column
 * @param within - bounds that are known
 * @returns bounds within those known; those known where none closer could be solved
 */
export function closerBounds(
  network: BoundedNetwork,
  states: AssumedStates,
  within: PressureBounds,
): PressureBounds {
  const cuts = openBetweenZones(network, states);
  const at = (side: 'highest' | 'lowest', start: Float64Array): Float64Array | undefined =>
    solveSide(network, states, {
      side,
      start,
      cut: cuts.map((column) => cutAt(column, side, within)),
    });
  const highest = at('highest', within.highestPa);
  const lowest = at('lowest', within.lowestPa);
  if (highest === undefined || lowest === undefined) return within;
  return {
    lowestPa: within.lowestPa.map((known, zone) => Math.max(known, lowest[zone]! - solvedWithinPa)),
    highestPa: within.highestPa.map((known, zone) =>
      Math.min(known, highest[zone]! + solvedWithinPa),
    ),
  };
}

/** The greatest distance between bounds [Pa]. */
export function boundsWidth({ lowestPa, highestPa }: PressureBounds): number {
  return highestPa.reduce((most, highest, zone) => Math.max(most, highest - lowestPa[zone]!), 0);
}

function openBetweenZones(
  { columns }: BoundedNetwork,
  states: AssumedStates,
): readonly SearchedColumn[] {
  return columns.filter(({ zones }, k) => {
    return states[k] === undefined && zones[0] >= 0 && zones[1] >= 0;
  });
}

/**
 * States that a column may have at pressures within bounds.
 *
 * @param column - the column
 * @param drives - of its two airs
 * @param bounds - pressures of the zones; undefined where nothing is known
 * @returns those of upward, downward and still in which its flow agrees
 */
export function possibleStates(
  column: SearchedColumn,
  drives: ColumnDrives,
  bounds: PressureBounds | undefined,
): readonly ColumnState[] {
  if (bounds === undefined) return ['upward', 'downward', 'still'];
  const [from, to] = column.zones;
  const at = (pressures: Float64Array, zone: number): number => (zone < 0 ? 0 : pressures[zone]!);
  const most = at(bounds.highestPa, from) - at(bounds.lowestPa, to);
  const least = at(bounds.lowestPa, from) - at(bounds.highestPa, to);
  const rises = Math.sign(column.riseM);
  const [pushesUp, pushesDown] = rises > 0 ? [most, least] : [least, most];
  const up = (pressure: number, drive: number): number =>
    rises * directionAt(column, pressure + drive);
  const possible: ColumnState[] = [];
  if (up(pushesUp, drives.upward) >= 0) possible.push('upward');
  if (up(pushesDown, drives.downward) <= 0) possible.push('downward');
  const turning = up(pushesUp, drives.upward) >= 0 && up(pushesDown, drives.downward) <= 0;
  const resting = up(pushesDown, drives.upward) <= 0 && up(pushesUp, drives.downward) >= 0;
  // Upward air that is the lighter turns the column away from rest, the heavier brings it there.
  if (turnsAway(column) ? turning : resting) possible.push('still');
  return possible;
}

/** Whether the column leaves rest by itself, so that at rest it is never stable. */
export function turnsAway({ upwardDensityKgPerM3, downwardDensityKgPerM3 }: StatedColumn): boolean {
  return upwardDensityKgPerM3 < downwardDensityKgPerM3;
}

/** Laws whose flow has the sign of the pressure difference. */
const passive: ReadonlySet<string> = new Set(['powerLaw', 'quadratic', 'orifice', 'duct']);

/** A number of the sign of the column's flow at a pressure difference; 0 where its law carries nothing. */
export function directionAt(
  { description, air }: Pick<SearchedColumn, 'description' | 'air'>,
  differencePa: number,
): number {
  const { law } = description;
  if (passive.has(law.kind)) return differencePa;
  // A fan whose curve rises has no flow of the pressure; near zero flow its rise tells the direction.
  if (law.kind === 'fanCurve' && isRisingFan(description)) {
    return risingCurve(law).riseAt(0) + differencePa;
  }
  return flowAt(law, differencePa, air).massFlowKgPerS;
}

/** Pressures with what is undecided pushed to one side; undefined where there is no balance. */
function solveSide(
  { freed, columns, densities, budget }: BoundedNetwork,
  states: AssumedStates,
  {
    side,
    cut,
    start,
  }: {
    readonly side: 'highest' | 'lowest';
    readonly cut: readonly CutColumn[];
    readonly start?: Float64Array;
  },
): Float64Array | undefined {
  const removed = new Set<number>();
  const airs = densities.slice();
  columns.forEach((column, k) => {
    const { link, upwardDensityKgPerM3: up, downwardDensityKgPerM3: down } = column;
    const state = states[k];
    if (state === 'still') removed.add(link);
    else if (state !== undefined) airs[link] = state === 'upward' ? up : down;
    else if (column.zones[0] >= 0 && column.zones[1] >= 0) airs[link] = (up + down) / 2;
    else {
      // What leaves the zone at its beginning, or enters the zone at its end.
      const leaves = column.zones[0] >= 0;
      airs[link] = densityFor(column, (side === 'highest') === leaves ? 'least' : 'most');
    }
  });
  const most = freed.fans.map(({ curve: { breaks } }) => breaks.at(-1)!);
  const least = freed.fans.map(({ blocked, curve: { breaks } }) =>
    blocked ? Math.max(0, breaks[0]!) : breaks[0]!,
  );
  const [taken, given] = side === 'highest' ? [least, most] : [most, least];
  budget.left--;
  return freed.pressures({ taken, given, cut, removed, columnDensityKgPerM3: airs }, start);
}

function cutAt(
  column: SearchedColumn,
  side: 'highest' | 'lowest',
  { lowestPa, highestPa }: PressureBounds,
): CutColumn {
  const beyond = side === 'highest' ? highestPa : lowestPa;
  const [leaves, enters] =
    side === 'highest' ? (['least', 'most'] as const) : (['most', 'least'] as const);
  const [from, to] = column.zones;
  return {
    link: column.link,
    leaving: { densityKgPerM3: densityFor(column, leaves), beyondPa: beyond[to]! },
    entering: { densityKgPerM3: densityFor(column, enters), beyondPa: beyond[from]! },
  };
}

/** The air with which most or least goes from its beginning to its end [kg/m3]. */
function densityFor(
  { upwardDensityKgPerM3: up, downwardDensityKgPerM3: down, riseM }: StatedColumn,
  goes: 'most' | 'least',
): number {
  return (goes === 'most') === riseM > 0 ? Math.min(up, down) : Math.max(up, down);
}

/** How far apart the airs of a column are [Pa]. */
function widthPa(column: StatedColumn): number {
  const { upwardDensityKgPerM3, downwardDensityKgPerM3, riseM } = column;
  return gravity * Math.abs((upwardDensityKgPerM3 - downwardDensityKgPerM3) * riseM);
}

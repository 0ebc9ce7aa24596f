import type { OperatingState } from '@evendraft/house';
import type { ExtremeState } from '../workers/situation-request.js';
import { solveStates, type SolvePlace } from './solve-states.js';
import { stateOf } from './switches.js';
import { inTies } from './ties.js';

/**
 * The plainest state that ties with a low extreme in every zone: switch by switch the lowest setting that
 * changes nothing. It is the first of those that tie in the order of study, since more outflow never raises a
 * pressure.
 *
 * @param place - house, weather and airtightness
 * @param extreme - the state, with what carries most switched on
 * @returns the plainer state, and the solves that it took
 */
export function plainestState(
  place: SolvePlace,
  { state, order, pressures }: ExtremeState,
): { readonly state: OperatingState; readonly solves: number } {
  const settings: Record<string, string> = Object.fromEntries(
    order.map(({ id }) => [id, state.running[id] ?? 'off']),
  );
  let solves = 0;
  for (const { id, settings: all, lowering } of order) {
    const lower = all.slice(0, all.indexOf(settings[id]!));
    if (lowering.length === all.length || lower.length === 0) continue;
    const states = lower.map((setting) => stateOf({ ...settings, [id]: setting }, state.doors));
    const rows = solveStates(place, states);
    solves += states.length;
    const first = rows.findIndex((row) =>
      row?.lowestPa.every(
        (pressure, zone) => inTies(pressure) === inTies(pressures.lowestPa[zone]!),
      ),
    );
    if (first >= 0) settings[id] = lower[first]!;
  }
  return { state: stateOf(settings, state.doors), solves };
}

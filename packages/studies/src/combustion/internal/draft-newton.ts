import type { DraftPoint, DraftSearch } from './draft-search.js';
import { product, type Interval } from './interval.js';
import { solveLinear } from './solve-linear.js';

/** The common zero of all gaps near a box, by Newton with differences; undefined where it strays. */
export function polished(
  search: DraftSearch,
  box: readonly Interval[],
): DraftPoint | 'no balance' | undefined {
  const { free, reach } = search;
  let point = search.at(box.map(({ low, high }) => (low + high) / 2));
  if (point === undefined) return 'no balance';
  let size = Infinity;
  for (let step = 0; step < 30; step++) {
    const here: DraftPoint = point;
    const before = size;
    size = Math.max(
      ...free.map((k) => Math.abs(here.gaps[k]!) / Math.max(1, Math.abs(here.responsePa[k]!))),
    );
    if (size <= 1e-12 || (size <= 1e-10 && size >= before)) return here;
    const slopes = slopesAt(search, here);
    if (slopes === undefined) return 'no balance';
    const change = solveLinear(
      slopes,
      free.map((k) => -here.gaps[k]!),
    );
    const next = [...here.flows];
    free.forEach((k, row) => (next[k] = here.flows[k]! + change[row]!));
    const near = free.every((k) => {
      const room = Math.max(box[k]!.high - box[k]!.low, 1e-3 * reach[k]!);
      return next[k]! >= box[k]!.low - room && next[k]! <= box[k]!.high + room;
    });
    if (!near) return undefined;
    const moved = search.at(next);
    if (moved === undefined) return 'no balance';
    point = moved;
  }
  return undefined;
}

/** States that damped Newton finds from every combination of air down, little gas up and much gas up. */
export function fromUsualFlows(
  search: DraftSearch,
  still: readonly number[],
): readonly DraftPoint[] {
  const { members, free, reach } = search;
  const starts = product(
    members.map(({ gasFlowKgPerS }, k) => {
      const flows = free.includes(k)
        ? [-0.1 * reach[k]!, 0.5 * gasFlowKgPerS, 1.5 * gasFlowKgPerS + 0.05 * reach[k]!]
        : [still[k]!];
      return flows.map((flow) => ({ low: flow, high: flow }));
    }),
  ).slice(0, 81);
  return starts.flatMap(
    (start) =>
      damped(
        search,
        start.map(({ low }) => low),
      ) ?? [],
  );
}

/** Newton's method whose steps are halved until the gaps become smaller; undefined where they do not. */
function damped(search: DraftSearch, start: readonly number[]): DraftPoint | undefined {
  const { free } = search;
  const sizeOf = ({ gaps, responsePa }: DraftPoint): number =>
    Math.max(...free.map((k) => Math.abs(gaps[k]!) / Math.max(1, Math.abs(responsePa[k]!))));
  let point = search.at(start);
  for (let step = 0; step < 50 && point !== undefined; step++) {
    const here: DraftPoint = point;
    const size = sizeOf(here);
    if (size <= 1e-11) return here;
    const slopes = slopesAt(search, here);
    if (slopes === undefined) return undefined;
    const change = solveLinear(
      slopes,
      free.map((k) => -here.gaps[k]!),
    );
    let part = 1;
    let next: DraftPoint | undefined;
    for (; part > 1e-4; part /= 2) {
      const flows = [...here.flows];
      free.forEach((k, row) => (flows[k] = here.flows[k]! + part * change[row]!));
      next = flows.every(Number.isFinite) ? search.at(flows) : undefined;
      if (next !== undefined && sizeOf(next) < size) break;
    }
    if (part <= 1e-4) return size <= 1e-10 ? here : undefined;
    point = next;
  }
  return undefined;
}

/** Change of every free gap with every free flow; by row the gap, by column the flow [Pa s/kg]. */
export function slopesAt(
  search: DraftSearch,
  { flows }: Pick<DraftPoint, 'flows'>,
): number[][] | undefined {
  const { free, reach } = search;
  const columns = free.map((k) => {
    const step = 1e-6 * reach[k]!;
    const moved = (by: number): DraftPoint | undefined =>
      search.at(flows.map((flow, j) => (j === k ? flow + by : flow)));
    const above = moved(step);
    const below = moved(-step);
    if (above === undefined || below === undefined) return undefined;
    return free.map((j) => (above.gaps[j]! - below.gaps[j]!) / (2 * step));
  });
  if (columns.some((column) => column === undefined)) return undefined;
  return free.map((_, row) => columns.map((column) => column![row]!));
}

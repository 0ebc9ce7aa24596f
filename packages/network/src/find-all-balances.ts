import type { FanCurveDescription } from '@evendraft/airflow';
import type { Balance, SolveResult, UnsolvedBalance } from './balance.js';
import { buildNetwork } from './build-network.js';
import type { BuiltNetwork } from './built-network.js';
import type { RisingCurve } from './internal/rising-curve.js';
import { risingCurve } from './internal/rising-curve.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import type { NetworkIssue } from './network-issue.js';
import type { Scenario } from './scenario.js';
import { solveNetwork } from './solve-network.js';

/** One of several balances. */
export interface RootBalance {
  readonly balance: Balance;
  /** Actual volume flow of the fan whose curve rises, positive from → to; undefined where none rises [m3/s]. */
  readonly fanFlowM3PerS: number | undefined;
  /** A small disturbance dies out: the fan's curve is less steep than the system's. */
  readonly stable: boolean;
}

/** Every balance of a network, in rising order of the fan's flow. */
export interface AllBalances {
  readonly status: 'solved';
  readonly balances: readonly RootBalance[];
  /** No part of the fan's range was left in which a root could still hide. */
  readonly complete: boolean;
}

/** Every balance, or why there is none. */
export type AllBalancesResult =
  | AllBalances
  | { readonly status: 'rejected'; readonly issues: readonly NetworkIssue[] }
  | UnsolvedBalance;

/** Finest part of the fan's range that is looked into. */
const finestPart = 2 ** -12;

/**
 * Finds every balance of a network in which one fan's curve has a rising part.
 *
 * The fan is replaced by its flow q; then the rest has one balance, and the rise R(q) that it asks of the fan
 * only grows with q. Balances of the whole are the zeros of rise(q) − R(q). Where the curve falls there is at
 * most one in a piece; where it rises, the piece is halved until R at its ends excludes a zero, or until it is
 * finer than 1/4096 of the range, when a change of sign is taken as one root.
 *
 * @param description - a network; at most one of its fan curves may rise
 * @param scenario - what differs from the description
 * @returns every balance, or the issues, or why nothing balances
 */
export function findAllBalances(
  description: NetworkDescription,
  scenario: Scenario = {},
): AllBalancesResult {
  const built = buildNetwork(description);
  if (built.status === 'built') {
    const balance = solveNetwork(built.network, scenario);
    if (balance.status !== 'solved') return balance;
    const only = { balance, fanFlowM3PerS: undefined, stable: true };
    return { status: 'solved', balances: [only], complete: true };
  }
  const errors = built.issues.filter((issue) => issue.severity === 'error');
  const index = errors.every((issue) => issue.code === 'RisingFanCurve')
    ? description.links.findIndex((link) => link.origin === errors[0]?.origin)
    : -1;
  const law = description.links?.[index]?.law;
  const system =
    errors.length === 1 && law?.kind === 'fanCurve'
      ? fanAsFlow(description, scenario, index)
      : undefined;
  if (system === undefined || law?.kind !== 'fanCurve') {
    return { status: 'rejected', issues: built.issues };
  }
  return rootsOf(system, law);
}

/** The network with the fan's flow as a given number. */
interface System {
  balanceAt(flowM3PerS: number): SolveResult;
  /** The rise that the rest asks of the fan: the pressure it must overcome [Pa]. */
  riseOf(balance: Balance): number;
}

function rootsOf(system: System, law: FanCurveDescription): AllBalancesResult {
  const curve = risingCurve(law);
  const first = curve.breaks[0]!;
  const last = curve.breaks[curve.breaks.length - 1]!;
  // A damper that blocks reverse flow ends the curve at zero flow; its closed state is not a point of it.
  const from = law.beyondShutOff === 'blocked' ? Math.max(0, first) : first;
  const known = new Map<number, Point>();
  let unsolved: UnsolvedBalance | undefined;
  const pointAt = (flow: number): Point | undefined => {
    const before = known.get(flow);
    if (before !== undefined) return before;
    const balance = system.balanceAt(flow);
    if (balance.status !== 'solved') {
      unsolved = balance;
      return undefined;
    }
    const point = { flow, balance, fan: curve.riseAt(flow), system: system.riseOf(balance) };
    known.set(flow, point);
    return point;
  };

  const roots: Point[] = [];
  let complete = true;
  const search = (low: Point, high: Point, finest: number): void => {
    const rises = high.fan > low.fan;
    const excluded = rises
      ? low.fan - high.system > 0 || high.fan - low.system < 0
      : low.fan - low.system < 0 || high.fan - high.system > 0;
    if (excluded) return;
    if (!rises || high.flow - low.flow < finest) {
      const root = bisect(low, high, pointAt);
      if (root === undefined) complete = false;
      else if (!roots.some((other) => other.flow === root.flow)) roots.push(root);
      return;
    }
    const middle = pointAt((low.flow + high.flow) / 2);
    if (middle === undefined) return;
    search(low, middle, finest);
    search(middle, high, finest);
  };
  const ends = [from, ...curve.breaks.filter((flow) => flow > from)];
  ends.slice(1).forEach((end, k) => {
    const low = pointAt(ends[k]!);
    const high = pointAt(end);
    if (low !== undefined && high !== undefined) search(low, high, (last - first) * finestPart);
  });
  if (unsolved !== undefined) return unsolved;
  roots.sort((a, b) => a.flow - b.flow);
  const step = 1e-6 * (last - first);
  return {
    status: 'solved',
    balances: roots.map((root) => ({
      balance: root.balance,
      fanFlowM3PerS: root.flow,
      stable: isStable(root, { curve, pointAt, step }),
    })),
    complete,
  };
}

interface Point {
  readonly flow: number;
  readonly balance: Balance;
  /** Rise that the fan gives at this flow [Pa]. */
  readonly fan: number;
  /** Rise that the rest asks at this flow [Pa]. */
  readonly system: number;
}

type PointAt = (flow: number) => Point | undefined;

/** The zero of fan − system between two points of unlike sign; undefined where the signs are alike. */
function bisect(low: Point, high: Point, pointAt: PointAt): Point | undefined {
  let left = low;
  let right = high;
  const leftSign = Math.sign(left.fan - left.system);
  if (leftSign === 0) return left;
  const rightSign = Math.sign(right.fan - right.system);
  if (rightSign === 0) return right;
  if (leftSign === rightSign) return undefined;
  for (let halving = 0; halving < 60; halving++) {
    const middle = pointAt((left.flow + right.flow) / 2);
    if (middle === undefined) break;
    if (middle.flow === left.flow || middle.flow === right.flow) break;
    if (Math.sign(middle.fan - middle.system) === leftSign) left = middle;
    else right = middle;
  }
  return left;
}

/** The curve's slope is below the system's, both over a small step either way. */
function isStable(
  root: Point,
  { curve, pointAt, step }: { curve: RisingCurve; pointAt: PointAt; step: number },
): boolean {
  const below = pointAt(root.flow - step);
  const above = pointAt(root.flow + step);
  if (below === undefined || above === undefined) return false;
  const fan = curve.riseAt(root.flow + step) - curve.riseAt(root.flow - step);
  return fan < above.system - below.system;
}

/** Replaces the fan by two unit flows, one a direction, whose scales make any flow without rebuilding. */
function fanAsFlow(
  description: NetworkDescription,
  scenario: Scenario,
  index: number,
): System | undefined {
  const fan = description.links[index]!;
  const unit = (volumeFlowM3PerS: 1 | -1, id: string): LinkDescription => ({
    ...fan,
    id,
    law: { kind: 'fixedFlow', volumeFlowM3PerS },
  });
  const links = description.links.map((link) => (link === fan ? unit(1, fan.id) : link));
  const built = buildNetwork({
    ...description,
    links: [...links, unit(-1, `${fan.id} backwards`)],
  });
  if (built.status === 'rejected') return undefined;
  const { network } = built;
  const extended = (values: Float64Array | undefined, fill: number): Float64Array => {
    const all = new Float64Array(links.length + 1).fill(fill);
    if (values?.length === links.length) all.set(values);
    all[links.length] = all[index]!;
    return all;
  };
  const scale = extended(scenario.linkScale, 1);
  const fanScale = scale[index]!;
  const { linkOffsetPa, columnDensityKgPerM3 } = scenario;
  const all: Scenario = {
    ...scenario,
    linkScale: scale,
    ...(linkOffsetPa && { linkOffsetPa: extended(linkOffsetPa, 0) }),
    ...(columnDensityKgPerM3 && { columnDensityKgPerM3: extended(columnDensityKgPerM3, 1.2) }),
  };
  return {
    balanceAt(flow) {
      scale[index] = fanScale * Math.max(flow, 0);
      scale[links.length] = fanScale * Math.max(-flow, 0);
      const result = solveNetwork(network, all, { tolerance: 1e-11 });
      return result.status === 'solved' ? withoutTwin(network, result, index) : result;
    },
    riseOf: (balance) => -balance.links.pressureDifferencePa[index]!,
  };
}

/** A balance in the links of the description: the twin's backward flow is the fan's own. */
function withoutTwin({ linkIndex }: BuiltNetwork, balance: Balance, index: number): Balance {
  const twin = linkIndex.size - 1;
  const merge = (values: Float64Array): Float64Array => {
    const merged = values.slice(0, twin);
    merged[index] = values[index]! + values[twin]!;
    return merged;
  };
  const { links } = balance;
  return {
    ...balance,
    links: {
      massFlowKgPerS: merge(links.massFlowKgPerS),
      forwardKgPerS: merge(links.forwardKgPerS),
      backwardKgPerS: merge(links.backwardKgPerS),
      volumeFlowM3PerS: merge(links.volumeFlowM3PerS),
      pressureDifferencePa: links.pressureDifferencePa.slice(0, twin),
    },
  };
}

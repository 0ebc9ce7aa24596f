import type { SolveResult } from './balance.js';
import { BatchShapeError } from './batch-shape-error.js';
import type { BuiltNetwork } from './built-network.js';
import type { Kernel } from './internal/kernel.js';
import { flowOfActive } from './internal/link-flows.js';
import { columnsOf, lengthProblem, rowOf, rowProblem } from './internal/scenario-rows.js';
import { solveRow } from './internal/solve-row.js';
import type { ScenarioBatch } from './scenario.js';
import { defaultMaximumIterations, defaultTolerance, solveNetwork } from './solve-network.js';

/** What a row's number in `BatchResult.status` means. */
export const batchStatuses = [
  'pending',
  'solved',
  'not-converged',
  'infeasible',
  'not-unique',
  'invalid-scenario',
] as const;

const solvedStatus = batchStatuses.indexOf('solved');

/** Status of a row of a batch. */
export type BatchStatus = (typeof batchStatuses)[number];

/** Results of a batch, row after row. A row that is not solved is filled with NaN. */
export interface BatchResult {
  /** Index into `batchStatuses`, one a row. */
  readonly status: Uint8Array;
  /** Newton steps, one a row. */
  readonly iterations: Uint16Array;
  /** Zones in the order of the description [Pa]. */
  readonly pressuresPa: Float64Array;
  /** Links in the order of the description, positive from → to; empty where not asked [kg/s]. */
  readonly massFlowKgPerS: Float64Array;
}

/** How to solve a batch. */
export interface BatchOptions {
  readonly tolerance?: number;
  readonly maximumIterations?: number;
  /** Keep the flow of every link; false when omitted. */
  readonly flows?: boolean;
  /** Arrays to write to; new ones when omitted. */
  readonly into?: BatchResult;
  /** First row to solve and the row after the last; all when omitted. */
  readonly rows?: readonly [first: number, end: number];
}

/**
 * Solves many scenarios on one network. The loop allocates nothing for rows that solve.
 *
 * Every row starts afresh: from the start that the solver finds itself, a row takes no more steps than from the
 * row before, and it depends on no other row, on no order, and not on which thread solves it.
 *
 * @param network - a built network
 * @param batch - scenarios, a row each
 * @param options - tolerance, flows, arrays to write to, part of the rows
 * @returns a status, the steps and the pressures of every row
 */
export function solveBatch(
  network: BuiltNetwork,
  batch: ScenarioBatch,
  options: BatchOptions = {},
): BatchResult {
  const { kernel } = network;
  const columns = columnsOf(kernel, batch);
  const problem = lengthProblem(columns, batch.count);
  if (problem !== undefined) throw new BatchShapeError(problem);
  const { flows = false } = options;
  const result = options.into ?? createBatchResult(network, batch.count, flows);
  const [first, end] = options.rows ?? [0, batch.count];
  const limits = {
    tolerance: options.tolerance ?? defaultTolerance,
    maximumIterations: options.maximumIterations ?? defaultMaximumIterations,
  };
  const task = { batch, row: 0, limits, started: false };
  for (let row = first; row < end; row++) {
    task.row = row;
    const sound = rowProblem(columns, row) === undefined;
    const status = sound ? solveRow(kernel, task) : 'invalid-scenario';
    writeRow(kernel, result, { row, status });
  }
  return result;
}

/**
 * One row of a batch, with flows and proof, as a single solve would give it.
 *
 * @param network - the network of the batch
 * @param batch - the batch
 * @param place - its result and the row
 * @returns a balance, or the reason why there is none
 */
export function batchRow(
  network: BuiltNetwork,
  batch: ScenarioBatch,
  { result, row }: { readonly result: BatchResult; readonly row: number },
): SolveResult {
  const zones = network.description.zones.length;
  const solved = result.status[row] === batchStatuses.indexOf('solved');
  const start = result.pressuresPa.slice(row * zones, (row + 1) * zones);
  return solveNetwork(network, rowOf(network.kernel, batch, row), solved ? { start } : {});
}

/**
 * Arrays for the results of a batch.
 *
 * @param network - the network of the batch
 * @param count - number of rows
 * @param flows - with the flow of every link
 * @returns arrays of the right lengths
 */
export function createBatchResult(
  network: BuiltNetwork,
  count: number,
  flows: boolean,
): BatchResult {
  const { zones, links } = network.description;
  return {
    status: new Uint8Array(count),
    iterations: new Uint16Array(count),
    pressuresPa: new Float64Array(count * zones.length),
    massFlowKgPerS: new Float64Array(flows ? count * links.length : 0),
  };
}

function writeRow(
  kernel: Kernel,
  result: BatchResult,
  { row, status }: { readonly row: number; readonly status: BatchStatus },
): void {
  const { zoneCount, linkCount, pressure, placeOfZone, activePlace, iteration } = kernel;
  const solved = status === 'solved';
  result.status[row] = solved ? solvedStatus : batchStatuses.indexOf(status);
  result.iterations[row] = solved || status === 'not-converged' ? iteration.iterations : 0;
  for (let zone = 0; zone < zoneCount; zone++) {
    result.pressuresPa[row * zoneCount + zone] = solved ? pressure[placeOfZone[zone]!]! : NaN;
  }
  if (result.massFlowKgPerS.length === 0) return;
  for (let link = 0; link < linkCount; link++) {
    const active = activePlace[link]!;
    const flow = active < 0 ? 0 : flowOfActive(kernel, active);
    result.massFlowKgPerS[row * linkCount + link] = solved ? flow : NaN;
  }
}

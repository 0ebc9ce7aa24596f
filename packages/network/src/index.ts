/**
 * Zones and links in SI: checks of the graph, the pressures at which every zone's air balances, and the
 * proof of the answer. One kernel serves one zone and thousands.
 *
 * Central type: `NetworkDescription`. Read next: `solve-network.ts`; the mathematics is in MATHEMATICS.md.
 */
export type {
  Balance,
  BalanceProof,
  LinkFlows,
  SolveResult,
  UnsolvedBalance,
  UnsolvedStatus,
} from './balance.js';
export { BatchShapeError } from './batch-shape-error.js';
export { buildNetwork, type BuildResult } from './build-network.js';
export type { BuiltNetwork } from './built-network.js';
export { checkNetwork, type NetworkVerdict } from './check-network.js';
export type { PressureBounds } from './internal/column-bounds.js';
export {
  boundBalances,
  findAllBalances,
  findExtremeBalances,
  type AllBalances,
  type AllBalancesOptions,
  type AllBalancesResult,
  type TwoStateColumn,
} from './find-all-balances.js';
export type { RootBalance } from './root-balance.js';
export type {
  BoundaryDescription,
  LinkDescription,
  NetworkDescription,
  ZoneDescription,
} from './network-description.js';
export { neutralLevelOf, type NeutralLevelPlace } from './neutral-level-of.js';
export type { NetworkIssue, NetworkIssueCode } from './network-issue.js';
export { linkReading, pressureAt, type LinkReading, type PressurePlace } from './readings.js';
export type { NodeAir, Scenario, ScenarioBatch } from './scenario.js';
export {
  linearDeviation,
  readingSensitivities,
  type Reading,
  type Sensitivities,
} from './sensitivities.js';
export {
  sizeOpening,
  type OpeningResult,
  type OpeningTask,
  type SizedOpening,
} from './size-opening.js';
export {
  batchRow,
  batchStatuses,
  createBatchResult,
  solveBatch,
  type BatchOptions,
  type BatchResult,
  type BatchStatus,
} from './solve-batch.js';
export { solveNetwork, type SolveOptions } from './solve-network.js';
export { UnknownIdError } from './unknown-id-error.js';
export { WebAssemblyMissingError } from './web-assembly-missing-error.js';
export {
  createSolverPool,
  type CancelSignal,
  type PoolOptions,
  type PoolSolveOptions,
  type SolverPool,
} from './workers/solver-pool.js';
export type {
  CreateWorker,
  WorkerPort,
  WorkerReply,
  WorkerRequest,
} from './workers/worker-port.js';

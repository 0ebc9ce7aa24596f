import type { Kernel } from './internal/kernel.js';
import type { NetworkDescription } from './network-description.js';

/** A checked network, laid out for solving. Solve it from one thread at a time. */
export interface BuiltNetwork {
  readonly description: NetworkDescription;
  /** Place of a zone in the description, by id. */
  readonly zoneIndex: ReadonlyMap<string, number>;
  /** Place of a boundary in the description, by id. */
  readonly boundaryIndex: ReadonlyMap<string, number>;
  /** Place of a link in the description, by id. */
  readonly linkIndex: ReadonlyMap<string, number>;
  /** Arrays that the solver works in; not for callers. */
  readonly kernel: Kernel;
}

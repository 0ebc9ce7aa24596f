import type { Balance } from './balance.js';
import type { ColumnState } from './internal/column-states.js';

/** One of several balances. */
export interface RootBalance {
  readonly balance: Balance;
  /** Each fan whose curve rises, with its actual volume flow, positive from → to [m3/s]. */
  readonly fans: readonly { readonly link: string; readonly volumeFlowM3PerS: number }[];
  /** Each two-state column: which way its air moves, and its density [kg/m3]. */
  readonly columns: readonly {
    readonly link: string;
    readonly state: ColumnState;
    readonly densityKgPerM3: number;
  }[];
  /** A small disturbance dies out. */
  readonly stable: boolean;
}

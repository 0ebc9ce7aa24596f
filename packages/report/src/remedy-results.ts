import type { House } from '@evendraft/house';
import type { RemedyComparison } from '@evendraft/remedies';
import type { PressureTarget, Remedy, SizingResult, UnfinishedSizing } from '@evendraft/studies';
import type { Incomplete } from './incomplete.js';

/** The answer to a question of size, with what it was asked of; plain JSON, versioned. */
export interface Sizing {
  readonly schema: 'evendraft-sizing';
  readonly schemaVersion: 1;
  readonly libraryVersion: string;
  readonly house: Pick<House, 'name' | 'digest'>;
  /** Present where the work was stopped before its end; then `result` is no answer. */
  readonly incomplete?: Incomplete;
  /** Id of the limit set that the targets are from; absent where a pressure was given. */
  readonly limitSet?: string;
  readonly remedy: Pick<Remedy, 'kind' | 'what' | 'dimension' | 'wanted' | 'assumptions' | 'built'>;
  readonly targets: readonly PressureTarget[];
  /** Appliances that the set gives no limit: nothing is said of them. */
  readonly withoutLimit: readonly string[];
  readonly result: SizingResult | UnfinishedSizing;
}

/** Remedies side by side, with what they were asked of; plain JSON, versioned. */
export interface Comparison {
  readonly schema: 'evendraft-comparison';
  readonly schemaVersion: 2;
  readonly libraryVersion: string;
  readonly house: Pick<House, 'name' | 'digest'>;
  /** Kinds of remedy that this house cannot have, each with the reason as a sentence. */
  readonly leftOut: readonly string[];
  /** Present where the work was stopped before its end. */
  readonly incomplete?: Incomplete;
  readonly comparison: RemedyComparison;
}

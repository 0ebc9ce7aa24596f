import type { House, OperatingState } from '@evendraft/house';
import type { HourAir } from '../internal/hour-air.js';
import type { HourGroup } from '../internal/hours-alike.js';
import type { OrderedSwitch } from '../internal/setting-order.js';
import type { PressureSpan } from '../resolve-columns.js';
import type { StateBalance, UnsolvedState } from '../state-balance.js';

/** Weather and airtightness of a situation, by their places in the house. */
export interface SituationPlace {
  readonly weather: number;
  readonly airtightnessCase: number;
}

/** What a worker is asked of one house; plain data. */
export type SituationRequest =
  /** The house of all further requests; it is not answered. */
  | { readonly kind: 'house'; readonly house: House }
  /** Situations from one place in the order of study up to another. */
  | { readonly kind: 'situations'; readonly first: number; readonly end: number }
  /** States with all that a balance tells. */
  | {
      readonly kind: 'balances';
      readonly questions: readonly (SituationPlace & { readonly state: OperatingState })[];
    }
  /** The pressures of states alone, solved as one batch. */
  | {
      readonly kind: 'pressures';
      readonly at: SituationPlace;
      readonly states: readonly OperatingState[];
    }
  /** Bounds on the pressures of states, whichever way the air of columns goes. */
  | {
      readonly kind: 'bounds';
      readonly at: SituationPlace;
      readonly states: readonly OperatingState[];
    }
  /** The air of a state in the mean weather of hours that are alike. */
  | { readonly kind: 'hour'; readonly state: OperatingState; readonly hours: HourGroup }
  /** The plainest state that ties with one in every zone. */
  | { readonly kind: 'plainest'; readonly at: SituationPlace; readonly extreme: ExtremeState };

/** A state that holds a low extreme, with its pressures and the order of its settings. */
export interface ExtremeState {
  readonly state: OperatingState;
  readonly order: readonly OrderedSwitch[];
  readonly pressures: PressureSpan;
}

/** What is answered to each kind of request. */
export interface SituationAnswers {
  readonly situations: readonly (StateBalance | UnsolvedState)[];
  readonly balances: readonly (StateBalance | UnsolvedState)[];
  /** One a state; undefined where it could not be solved. */
  readonly pressures: readonly (PressureSpan | undefined)[];
  /** One a state; where it could not be solved it bounds nothing. */
  readonly bounds: readonly PressureSpan[];
  /** Null where the state or its baseline could not be solved; undefined would be no answer. */
  readonly hour: HourAir | null;
  readonly plainest: { readonly state: OperatingState; readonly solves: number };
}

/** The kinds of request that are answered. */
export type AskedKind = keyof SituationAnswers;

/** A request of one kind. */
export type Asked<Kind extends AskedKind = AskedKind> = Extract<
  SituationRequest,
  { readonly kind: Kind }
>;

/** What a worker answers. */
export type SituationReply = SituationAnswers[AskedKind];

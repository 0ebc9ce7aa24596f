import { insideZoneKinds, type House } from '@evendraft/house';
import {
  failureCases,
  failureStudy,
  type FailureCase,
  type FailureResult,
} from '@evendraft/studies';

/** The house with one thing failed, over all situations; plain JSON. */
export interface FailureRow {
  /** What failed; absent for the house as it is. */
  readonly item?: string;
  readonly failure: FailureCase['failure'] | 'as it is';
  readonly lowest: FailureExtreme;
  readonly highest: FailureExtreme;
  /** Air that enters with nothing switched on, in the weather in which that is most [kg/s]. */
  readonly infiltrationKgPerS?: number;
  /** Whether every situation was covered. */
  readonly proved: boolean;
}

/** How far the pressure of zones inside the envelope goes one way. */
export interface FailureExtreme {
  readonly zone: string;
  /** Zone minus outdoors [Pa]. */
  readonly pressurePa: number;
  /** The situation in words. */
  readonly situation: string;
}

/**
 * The house as it is, then with one thing failed at a time.
 *
 * @param house - the house
 * @param options - id of the one item whose failures are wanted; all when absent; signal
 * @returns rows; none where nothing can fail
 */
export async function failureRows(
  house: House,
  options: { readonly item?: string; readonly signal?: AbortSignal } = {},
): Promise<readonly FailureRow[]> {
  const { item: wanted, signal } = options;
  const cases = failureCases(house).filter(({ item }) => wanted === undefined || item === wanted);
  const [any] = cases;
  if (any === undefined) return [];
  // The house as it is goes the same way, so that its row can be compared with the others.
  const asItIs = { ...any, house };
  const [first, ...failed] = await failureStudy([asItIs, ...cases], signal ? { signal } : {});
  return [
    ...(first === undefined ? [] : [{ failure: 'as it is' as const, ...extremesOf(first, house) }]),
    ...failed.map((result) => ({
      item: result.item,
      failure: result.failure,
      ...extremesOf(result, house),
    })),
  ];
}

function extremesOf(
  { zones, infiltration, proved }: FailureResult,
  house: House,
): Pick<FailureRow, 'lowest' | 'highest' | 'infiltrationKgPerS' | 'proved'> {
  const inside = house.zones
    .filter(({ kind }) => insideZoneKinds.includes(kind))
    .map(({ id }) => id);
  const ends = (side: 'lowest' | 'highest'): readonly FailureExtreme[] =>
    zones
      .filter(({ zone }) => inside.includes(zone))
      .map((range) => ({
        zone: range.zone,
        pressurePa: range[side].pressurePa,
        situation: `${range[side].label}, ${range[side].weather}`,
      }))
      .sort((one, other) => one.pressurePa - other.pressurePa);
  return {
    lowest: ends('lowest')[0]!,
    highest: ends('highest').at(-1)!,
    ...(infiltration === undefined ? {} : { infiltrationKgPerS: infiltration.massFlowKgPerS }),
    proved,
  };
}

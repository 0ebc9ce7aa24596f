import { insideZoneKinds, type CompiledHouse, type House } from '@evendraft/house';
import {
  balanceStudy,
  pressureRangeStudy,
  questionOf,
  situationAirStudy,
  zoneDifferenceStudy,
  type PressureRangeStudy,
  type SituationAir,
  type StateBalance,
  type StudyOptions,
  type ZoneDifferenceStudy,
} from '@evendraft/studies';
import { largestAlone } from '../internal/largest-alone.js';
import { largestExhaust } from '../largest-exhaust.js';

/** What is judged of the air of a house beside its appliances. */
export interface AirStudy {
  readonly range: PressureRangeStudy;
  /** Of doors, and of rooms and their garage. */
  readonly differences: ZoneDifferenceStudy;
  /** The largest exhaust at its highest speed alone, in the coldest weather; absent where it was not solved. */
  readonly largest?: { readonly balance: StateBalance; readonly air: SituationAir };
  /** Situations that push the house highest and draw it lowest, where they were solved. */
  readonly extremes: { readonly highest?: StateBalance; readonly lowest?: StateBalance };
}

/**
 * Studies what {@link judgeAir} judges: pressures of both signs, differences, air that is drawn in.
 *
 * @param compiled - the compiled house
 * @param options - signal
 * @returns the numbers
 */
export async function airStudy(
  compiled: CompiledHouse,
  options: Pick<StudyOptions, 'signal'> = {},
): Promise<AirStudy> {
  const { house } = compiled;
  const range = await pressureRangeStudy(compiled, options);
  const pairs = differencePairs(house);
  const differences: ZoneDifferenceStudy =
    pairs.length === 0
      ? { question: 'zone differences', pairs: [], method: 'every state', solves: 0, unsolved: 0 }
      : await zoneDifferenceStudy(compiled, pairs, options);
  const largest = largestRuns(compiled);
  const solvedAt = (side: 'highest' | 'lowest'): StateBalance | undefined => {
    const [first] = [...range.zones].sort((one, other) =>
      side === 'highest'
        ? other.highest.pressurePa - one.highest.pressurePa
        : one.lowest.pressurePa - other.lowest.pressurePa,
    );
    if (first === undefined) return undefined;
    const balance = balanceStudy(compiled, questionOf(compiled, first[side]));
    return balance.status === 'solved' ? balance : undefined;
  };
  const [highest, lowest] = [solvedAt('highest'), solvedAt('lowest')];
  return {
    range,
    differences,
    ...(largest === undefined ? {} : { largest }),
    extremes: { ...(highest ? { highest } : {}), ...(lowest ? { lowest } : {}) },
  };
}

/**
 * Rooms that a wall, a door or an opening parts from a garage.
 *
 * @param house - the house
 * @returns room and garage of each pair, once
 */
export function garageWalls(house: House): readonly (readonly [string, string])[] {
  const garages = new Set(house.zones.filter(({ kind }) => kind === 'garage').map(({ id }) => id));
  const inside = new Set(
    house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  const walls = new Map<string, readonly [string, string]>();
  const add = (one: string, other: string): void => {
    const [room, garage] = garages.has(one) ? [other, one] : [one, other];
    if (inside.has(room) && garages.has(garage)) walls.set(`${room} ${garage}`, [room, garage]);
  };
  for (const { zone, to } of [...house.leakShares, ...house.openings]) {
    if (to.kind === 'zone') add(zone, to.zone);
  }
  for (const { between } of house.doors) add(...between);
  return [...walls.values()];
}

/** Both sides of every door, and rooms with their garage. */
function differencePairs(house: House): readonly (readonly [string, string])[] {
  return [...house.doors.map(({ between }) => between), ...garageWalls(house)];
}

function largestRuns(compiled: CompiledHouse): AirStudy['largest'] {
  const alone = largestAlone(compiled, largestExhaust(compiled.house));
  if (alone === undefined) return undefined;
  const balance = balanceStudy(compiled, alone.question);
  const air = situationAirStudy(compiled, alone.question);
  return balance.status === 'solved' && air !== undefined ? { balance, air } : undefined;
}

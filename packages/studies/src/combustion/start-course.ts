import type { CompiledHouse } from '@evendraft/house';
import type { SolvedCombustion } from './combustion-situation.js';
import { wallsAtRest, warmUpCourse, type CourseFlue } from './warm-up-course.js';

/** One time of the start of an appliance, for drawing. */
export interface StartCourseRow extends CourseFlue {
  /** Since its burner started [s]. */
  readonly timeS: number;
}

/** How an appliance starts in a situation. */
export interface StartCourse {
  /** Whether its flue stands cold at the start, or as hot as after long firing with draft, this situation beginning then. */
  readonly start: 'cold' | 'warm';
  /** Every second at first, then fewer. */
  readonly rows: readonly StartCourseRow[];
  /** From the start until nothing spills; null where spillage does not end [s]. */
  readonly spillageS: number | null;
  /** Flows hardly move any more at the end. */
  readonly settled: boolean;
}

/** Share of its gas below which nothing counts as spilled, beyond rounding [-]. */
const nothing = 1e-3;
/** After the first minutes one row in so many seconds is kept [s]. */
const keptEachS = 10;

/**
 * How an appliance starts from a cold or a warm flue: whether draft is established, and how long it spills. A fire that
 * burns down begins warm with the walls of its full fire, and its flue cools.
 *
 * @param compiled - the compiled house
 * @param solved - the situation
 * @param question - cold or warm, and which flue
 * @returns the course; `undefined` where air has no balance on the way
 */
export function startCourse(
  compiled: CompiledHouse,
  solved: SolvedCombustion,
  question: { readonly start: 'cold' | 'warm'; readonly index: number },
): StartCourse | undefined {
  const { start, index } = question;
  const { set, coldSet, coldFlows } = solved;
  const hot = solved.fullFire ?? { set, flows: hotFlows(solved) };
  const same = coldSet.flues.length === set.flues.length;
  const { flows } = start === 'cold' ? { flows: coldFlows } : hot;
  const walls = wallsAtRest(start === 'warm' ? hot.set : same ? coldSet : set, flows);
  const course = warmUpCourse(compiled, set, { walls, flows });
  if (course === undefined) return undefined;
  const rows = course.steps.map(({ timeS, flues }) => ({ timeS, ...flues[index]! }));
  const spilling = rows.findLastIndex(({ spilledShare }) => spilledShare > nothing);
  const after = rows[spilling + 1];
  return {
    start,
    rows: rows.filter(
      ({ timeS }, i) =>
        timeS <= 60 ||
        i === rows.length - 1 ||
        Math.floor(timeS / keptEachS) !== Math.floor(rows[i - 1]!.timeS / keptEachS),
    ),
    spillageS: spilling < 0 ? 0 : (after?.timeS ?? null),
    settled: course.settled,
  };
}

/** Flows of hot flues: of the state in which they draw, else those for which their stages are worked out. */
function hotFlows({ set, roots, situation }: SolvedCombustion): readonly number[] {
  const drawing = roots[situation.fromWarm]!.flows;
  return set.flues.map(({ appliance: { id, flue } }, k) => {
    if (drawing[k]! > 0) return drawing[k]!;
    const stage = flue.stages.find(({ name }) => name === situation.firing[id]);
    return stage?.ventFlowKgPerS ?? drawing[k]!;
  });
}

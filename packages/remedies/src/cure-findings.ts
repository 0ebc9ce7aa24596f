import { compileHouse, type House } from '@evendraft/house';
import { judge, type Finding, type LimitSet } from '@evendraft/rules';
import {
  exhaustCurveStudy,
  questionOf,
  worstCaseStudy,
  type DuctRun,
  type ExhaustCurveStudy,
  type Situation,
  type StudyOptions,
} from '@evendraft/studies';
import { changesOf, type HouseChange } from './internal/house-changes.js';
import { makeUpChanges } from './internal/make-up-changes.js';
import type { MakeUpSize } from './internal/make-up-size.js';
import { largestExhaust } from './largest-exhaust.js';

export type { MakeUpSize } from './internal/make-up-size.js';

/** One cure of one finding, with what the finding says of the house that has it. */
export interface SolvedCure {
  /** What is done, without the size of make-up air. */
  readonly cure: string;
  /** Size of the make-up air, where the cure brings some. */
  readonly makeUp?: MakeUpSize;
  /** Of the appliance once the cure is made, in its own worst case. */
  readonly after: Finding;
}

/** A finding with its cures in the order in which they are tried. */
export interface CuredFinding {
  readonly finding: Finding;
  readonly cures: readonly SolvedCure[];
}

/** The pressure against the flow of the largest exhaust, as the house is and with make-up air; plain JSON. */
export interface MakeUpCurves {
  /** Whose weather, doors and airtightness all curves share. */
  readonly situation: Pick<Situation, 'label' | 'weather' | 'airtightness'>;
  readonly asItIs: ExhaustCurveStudy;
  readonly withMakeUp: readonly {
    readonly makeUp: MakeUpSize;
    readonly curve: ExhaustCurveStudy;
  }[];
}

/** Findings with their cures, and what make-up air makes of the pressure; plain JSON. */
export interface CuredHouse {
  readonly findings: readonly CuredFinding[];
  /** Absent where no make-up air was sized, or no situation was given for curves. */
  readonly makeUpCurves?: MakeUpCurves;
}

/** How cures are solved. */
export interface CureOptions extends StudyOptions {
  /** The house's own findings by the same set, where they are known already. */
  readonly findings?: readonly Finding[];
  /** Run of a make-up duct; 3 m with two bends when absent, our choice. */
  readonly run?: DuctRun;
  /** Whose weather, doors and airtightness count in exhaust curves; no curves when absent. */
  readonly curvesIn?: Situation;
}

const usualRun: DuctRun = { lengthM: 3, elbows: 2 };

/**
 * Solves the house again with each cure of the findings that are beyond or near their limit.
 *
 * The order is that of common practice, no source: replace the dryer, cap speeds, keep devices from running
 * together, bring in make-up air, change the appliance. Each is solved alone, over all states and weathers;
 * make-up air has one size for all of these findings. A cure that reads `within the limit` is still to be built,
 * assessed and tested; none is a clearance.
 *
 * @param house - the house
 * @param limitSet - the limits
 * @param options - known findings, duct run, situation of curves, signal, what a stop gives (cures that are solved
 * by then), progress
 * @returns findings of the house with their cures; those within their limit and those not judged have none
 */
export async function cureFindings(
  house: House,
  limitSet: LimitSet,
  options: CureOptions = {},
): Promise<CuredHouse> {
  const { run = usualRun, curvesIn, signal, whenStopped, onProgress } = options;
  const findings = options.findings ?? (await findingsOf(house, limitSet, signal));
  const wanted = findings.filter(
    ({ verdict }) => verdict === 'beyond the limit' || verdict === 'near the limit',
  );
  if (wanted.length === 0) {
    return { findings: findings.map((finding) => ({ finding, cures: [] })) };
  }

  /** Nothing where the work was stopped and is to give what it has. */
  const unlessStopped = async <Result>(work: Promise<Result>): Promise<Result | undefined> => {
    try {
      return await work;
    } catch (error) {
      if (whenStopped === 'keep' && signal?.aborted === true) return undefined;
      throw error;
    }
  };
  const made = await unlessStopped(
    makeUpChanges(house, {
      limitSet,
      appliances: wanted.map(({ appliance }) => appliance),
      run,
      ...(curvesIn === undefined ? {} : { curvesIn }),
      ...(signal === undefined ? {} : { signal }),
    }),
  );
  const changes: readonly HouseChange[] = [
    ...changesOf(house),
    ...(made ?? []),
    ...wanted.map(({ appliance }) => sealed(house, appliance)),
  ];
  const solved: { readonly change: HouseChange; readonly after: readonly Finding[] }[] = [];
  for (const [index, change] of changes.entries()) {
    const after = await unlessStopped(worstFindings(change.houses, limitSet, signal));
    if (after === undefined) break;
    solved.push({ change, after });
    onProgress?.(index + 1, changes.length);
  }
  const makeUpCurves = await unlessStopped(makeUpCurvesOf(house, made ?? [], options));
  const cured = findings.map((finding) => ({
    finding,
    cures: !wanted.includes(finding)
      ? []
      : solved.flatMap(({ change: { cure, makeUp, onlyFor }, after }): readonly SolvedCure[] => {
          const own = after.find(({ appliance }) => appliance === finding.appliance);
          const meant = onlyFor === undefined || onlyFor === finding.appliance;
          if (own === undefined || !meant) return [];
          return [{ cure, ...(makeUp === undefined ? {} : { makeUp }), after: own }];
        }),
  }));
  return { findings: cured, ...(makeUpCurves === undefined ? {} : { makeUpCurves }) };
}

async function makeUpCurvesOf(
  house: House,
  made: readonly HouseChange[],
  { curvesIn, signal }: CureOptions,
): Promise<MakeUpCurves | undefined> {
  const withMakeUp = made.flatMap(({ makeUp, exhaustCurve: curve }) =>
    makeUp === undefined || curve === undefined ? [] : [{ makeUp, curve }],
  );
  const device = largestExhaust(house);
  const result = compileHouse(house);
  if (curvesIn === undefined || device === undefined || !result.ok || withMakeUp.length === 0) {
    return undefined;
  }
  const { label, weather, airtightness } = curvesIn;
  const asItIs = await exhaustCurveStudy(
    result.compiled,
    { ...questionOf(result.compiled, curvesIn), device: device.id },
    signal === undefined ? {} : { signal },
  );
  return asItIs && { situation: { label, weather, airtightness }, asItIs, withMakeUp };
}

function sealed(house: House, appliance: string): HouseChange {
  return {
    cure: `Change the ${appliance} to sealed combustion.`,
    onlyFor: appliance,
    houses: [
      {
        ...house,
        appliances: house.appliances.map((each) =>
          each.id === appliance
            ? { ...each, vent: 'sealed combustion' as const, sharesVentWith: [] }
            : each,
        ),
      },
    ],
  };
}

async function findingsOf(
  house: House,
  limitSet: LimitSet,
  signal: AbortSignal | undefined,
): Promise<readonly Finding[]> {
  const result = compileHouse(house);
  if (!result.ok) return [];
  const worstCase = await worstCaseStudy(result.compiled, {
    // Extremes alone are wanted, so that the ordering may save what it can.
    listUpTo: 0,
    ...(signal === undefined ? {} : { signal }),
  });
  return judge({ house, worstCase, limitSet });
}

/** Of each appliance the finding in the worst of several houses. */
async function worstFindings(
  houses: readonly House[],
  limitSet: LimitSet,
  signal: AbortSignal | undefined,
): Promise<readonly Finding[]> {
  const margin = ({ judged }: Finding): number => judged?.marginPa ?? Infinity;
  const worst = new Map<string, Finding>();
  for (const house of houses) {
    for (const finding of await findingsOf(house, limitSet, signal)) {
      const before = worst.get(finding.appliance);
      if (before === undefined || margin(finding) < margin(before)) {
        worst.set(finding.appliance, finding);
      }
    }
  }
  return [...worst.values()];
}

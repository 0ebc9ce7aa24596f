import { afterTest, compileHouse, type House } from '@evendraft/house';
import type { Finding, LimitSet } from '@evendraft/rules';
import {
  exhaustCurveStudy,
  questionOf,
  type DuctRun,
  type ExhaustCurveStudy,
  type Situation,
  type StudyOptions,
} from '@evendraft/studies';
import type { DraftAfterCure } from './draft-after-cure.js';
import { isEnough, outcomesOf, worstOutcomes, type Outcomes } from './internal/cure-outcomes.js';
import { curesTogether } from './internal/cures-together.js';
import { linedChimneys, sealedAppliance, sealedTogether } from './internal/flue-changes.js';
import { changesOf, type HouseChange } from './internal/house-changes.js';
import { makeUpChanges } from './internal/make-up-changes.js';
import type { MakeUpSize } from './internal/make-up-size.js';
import { zonesWithOwnAir } from './internal/own-air.js';
import { largestExhaust } from './largest-exhaust.js';

export type { DraftAfterCure } from './draft-after-cure.js';
export type { MakeUpSize } from './internal/make-up-size.js';

/** One cure of one finding, with what the finding says of the house that has it. */
export interface SolvedCure {
  /** What is done, without the size of make-up air. */
  readonly cure: string;
  /** Several made at once, where none by itself is enough. */
  readonly together?: true;
  /** Size of the make-up air, where the cure brings some. */
  readonly makeUp?: MakeUpSize;
  /** Of the appliance once the cure is made, in its own worst case. */
  readonly after: Finding;
  /** What its flue does then; present where its flue was to be cured. */
  readonly draft?: DraftAfterCure;
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
  /** Flues that are to be cured too: ids of their appliances, and the sets that limit draft, spillage and gas. */
  readonly flues?: {
    readonly appliances: readonly string[];
    readonly limitSets: readonly LimitSet[];
  };
  /** Run of a make-up duct; 3 m with two bends when absent, our choice. */
  readonly run?: DuctRun;
  /** Whose weather, doors and airtightness count in exhaust curves; no curves when absent. */
  readonly curvesIn?: Situation;
}

const usualRun: DuctRun = { lengthM: 3, elbows: 2 };
/** As many as are put together at most, for the progress that is told. */
const mostTogether = 4;

/**
 * Solves the house again with each cure of the findings that are beyond or near their limit, and of flues that do not
 * draft as they should.
 *
 * The order is that of common practice, no source: replace the dryer, cap speeds, keep devices from running together or
 * while a burner fires, line the chimney, bring in make-up air, seal the zone with air of its own, change the appliance.
 * Each is solved alone, over all states and weathers, flues over the situations that press them most; make-up air has
 * one size for all of these findings. Where none is enough by itself, several are solved together. A cure that reads `within the limit` is still to be built, assessed and tested;
 * none is a clearance.
 *
 * @param house - the house
 * @param limitSet - the limits
 * @param options - known findings, flues to cure, duct run, situation of curves, signal, what a stop gives (cures that
 * are solved by then), progress
 * @returns findings of the house with their cures; none where neither suction nor flue of the appliance presses
 */
export async function cureFindings(
  house: House,
  limitSet: LimitSet,
  options: CureOptions = {},
): Promise<CuredHouse> {
  const { run = usualRun, curvesIn, flues, signal, whenStopped, onProgress } = options;
  const watch = signal === undefined ? {} : { signal };
  const findings = options.findings ?? (await outcomesOf(house, { limitSet, ...watch })).findings;
  const ofFlues = flues?.appliances ?? [];
  const wanted = findings
    .filter(
      ({ verdict, appliance }) =>
        verdict === 'beyond the limit' ||
        verdict === 'near the limit' ||
        ofFlues.includes(appliance),
    )
    .map(({ appliance }) => appliance);
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
  // A cure comes after the airtightness test.
  const tested = afterTest(house);
  const made = await unlessStopped(
    makeUpChanges(tested, {
      limitSet,
      appliances: wanted,
      run,
      ...(curvesIn === undefined ? {} : { curvesIn }),
      ...watch,
    }),
  );
  const changes: readonly HouseChange[] = [
    ...changesOf(tested),
    ...linedChimneys(tested, ofFlues),
    ...(made ?? []),
    ...zonesWithOwnAir(tested, wanted),
    ...wanted.map((appliance) => sealedAppliance(tested, appliance)),
    ...sealedTogether(tested, wanted),
  ];
  const asked = {
    limitSet,
    ...(ofFlues.length === 0 || flues === undefined ? {} : { flueSets: flues.limitSets }),
    ...watch,
  };
  const solved: { change: HouseChange; after: Outcomes; together?: true }[] = [];
  const total = changes.length + mostTogether;
  for (const [index, change] of changes.entries()) {
    const after = await unlessStopped(worstOutcomes(change.houses, asked));
    if (after === undefined) break;
    solved.push({ change, after });
    onProgress?.(index + 1, total);
  }
  const isCured = (appliance: string): boolean =>
    solved.some(
      ({ change: { onlyFor }, after }) =>
        (onlyFor?.includes(appliance) ?? true) &&
        isEnough(after, appliance, ofFlues.includes(appliance)),
    );
  await unlessStopped(
    (async () => {
      if (solved.length < changes.length) return;
      for await (const change of curesTogether(tested, {
        limitSet,
        appliances: wanted,
        run,
        ...watch,
      })) {
        if (wanted.every(isCured)) return;
        const after = await worstOutcomes(change.houses, asked);
        solved.push({ change, after, together: true });
      }
    })(),
  );
  if (signal?.aborted !== true) onProgress?.(total, total);
  const makeUpCurves = await unlessStopped(makeUpCurvesOf(house, made ?? [], options));
  const cured = findings.map((finding) => {
    const { appliance } = finding;
    return {
      finding,
      cures: !wanted.includes(appliance)
        ? []
        : solved.flatMap(({ change, after, together }): readonly SolvedCure[] => {
            const { cure, makeUp, onlyFor } = change;
            const own = after.findings.find((each) => each.appliance === appliance);
            const draft = ofFlues.includes(appliance) ? after.drafts.get(appliance) : undefined;
            const meant = onlyFor === undefined || onlyFor.includes(appliance);
            if (own === undefined || !meant) return [];
            return [
              {
                cure,
                ...(together === undefined ? {} : { together }),
                ...(makeUp === undefined ? {} : { makeUp }),
                after: own,
                ...(draft === undefined ? {} : { draft }),
              },
            ];
          }),
    };
  });
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

import { compileHouse, type House } from '@evendraft/house';
import type { Assessment } from '@evendraft/report';
import {
  cautions,
  defaultLimitSet,
  judgingAssumptions,
  ruleAssumptions,
  runScreens,
  type LimitSet,
  type RuleRegion,
  type ScreenFacts,
} from '@evendraft/rules';
import {
  usualSamples,
  worstCaseStudy,
  type WhenStopped,
  type WorstCaseOptions,
} from '@evendraft/studies';
import { airOf, type WhenAir } from './air-of.js';
import { curesOf, type WhenCures } from './cures-of.js';
import { draftOf, spillingAppliances, type WhenDraft } from './draft-of.js';
import { worstSituation } from './extras/worst-situation.js';
import { HouseNotCompilable } from './house-not-compilable.js';
import { houseSummary } from './house-summary.js';
import { judgedSet } from './judged-set.js';
import { notModelled } from './not-modelled.js';
import { unfinishedParts } from './unfinished-parts.js';
import { spilledGasAssumptions } from './spilled-gas-assumptions.js';
import { libraryVersion } from './version.js';
import { worstAttribution } from './worst-attribution.js';
import { worstUncertainty, type UncertaintyRequest } from './worst-uncertainty.js';

/** What long work counts. */
export type AssessWork = 'situations' | 'cures' | 'draws' | 'flue states' | 'questions of the air';

/** What an assessment may be told. */
export interface AssessOptions {
  /** The limits to judge by; those by vent type when absent. */
  readonly limitSet?: LimitSet;
  /** Further limit sets to judge by beside it. */
  readonly beside?: readonly LimitSet[];
  /** Only code screens of these regions, besides those of everywhere; all when absent. */
  readonly regions?: readonly RuleRegion[];
  /** What code screens ask and the house file does not hold. */
  readonly facts?: ScreenFacts;
  /** Whether cures are solved; where they take few solves when absent. */
  readonly cures?: WhenCures;
  /** Whether flues are solved with the house; where they take few situations when absent. */
  readonly draft?: WhenDraft;
  /** Whether the air beside the appliances is solved, and how far it may go; where that takes few solves when absent. */
  readonly air?: WhenAir;
  /** Asks how sure the numbers are; not asked when absent. */
  readonly uncertainty?: UncertaintyRequest;
  /** Stops the work. */
  readonly signal?: AbortSignal;
  /**
   * What stopped work gives: nothing, so that the promise rejects with the signal's reason, or what is done so far,
   * marked as incomplete; it rejects when absent.
   */
  readonly whenStopped?: WhenStopped;
  /** Makes workers for a house, for a worst case that is long; it is solved in this thread when absent. */
  readonly createPool?: WorstCaseOptions['createPool'];
  readonly onProgress?: (done: number, of: number, work: AssessWork) => void;
}

/**
 * Assesses a house: compiles it, solves every state in every weather, judges every appliance, asks what causes
 * the worst and what cures it, and holds the house against code screens.
 *
 * It is risk screening. No number in it clears an appliance: a combustion-safety test on site and
 * the local code decide.
 *
 * @param house - a house as `readHouse` or `parseHouse` returns it
 * @param options - limit sets, screens, cures, uncertainty, signal and progress
 * @returns the assessment, plain JSON
 * @throws {@link HouseNotCompilable} where the house was put together by hand and does not hold together
 */
export async function assess(house: House, options: AssessOptions = {}): Promise<Assessment> {
  const { limitSet = defaultLimitSet, beside = [], regions, facts = {}, createPool } = options;
  const { signal, whenStopped = 'reject', onProgress } = options;
  const compile = compileHouse(house);
  if (!compile.ok) throw new HouseNotCompilable(compile.issues);
  const { compiled } = compile;
  const watched = (work: AssessWork) => ({
    ...(signal === undefined ? {} : { signal }),
    whenStopped,
    onProgress: (done: number, of: number) => onProgress?.(done, of, work),
  });
  const worstCase = await worstCaseStudy(compiled, {
    ...watched('situations'),
    ...(createPool === undefined ? {} : { createPool }),
  });
  const judged = judgedSet({ compiled, worstCase, limitSet });
  const { findings } = judged;
  const attribution = await worstAttribution(
    { compiled, worstCase, findings },
    { signal, whenStopped },
  );
  const uncertainty = await worstUncertainty(
    { compiled, worstCase, limitSet, request: options.uncertainty },
    watched('draws'),
  );
  const draft = await draftOf(
    { compiled, worstCase, limitSets: [limitSet, ...beside], when: options.draft },
    watched('flue states'),
  );
  const cures = await curesOf(
    {
      house,
      worstCase,
      findings,
      limitSet,
      beside,
      draft: draft.result,
      worst: worstSituation({
        worstCase,
        ...(attribution === undefined || attribution === 'stopped' ? {} : { attribution }),
      }),
      when: options.cures,
    },
    watched('cures'),
  );
  const air = await airOf(
    { compiled, worstCase, limitSet, facts, when: options.air },
    watched('questions of the air'),
  );
  const parts =
    signal?.aborted === true
      ? unfinishedParts({
          worstCase,
          attributed: attribution !== 'stopped',
          ...(options.uncertainty === undefined
            ? {}
            : {
                draws: { asked: options.uncertainty.samples ?? usualSamples, study: uncertainty },
              }),
          draft,
          cures,
          air,
        })
      : [];
  return {
    schema: 'evendraft-assessment',
    schemaVersion: 3,
    libraryVersion,
    house: houseSummary(house),
    ...(parts.length === 0 ? {} : { incomplete: { parts } }),
    ...judged,
    worstCase,
    beside: beside.map((set) => judgedSet({ compiled, worstCase, limitSet: set })),
    ...(attribution === undefined || attribution === 'stopped' ? {} : { attribution }),
    cures: cures.result,
    ...(draft.result === undefined ? {} : { draft: draft.result }),
    ...(air.result === undefined ? {} : { air: air.result }),
    screens: runScreens(house, {
      // What a screen needs of the worst case may be among what was not solved.
      ...(worstCase.stopped === undefined ? { worstCase } : {}),
      ...(regions === undefined ? {} : { regions }),
      facts,
    }),
    ...(uncertainty === undefined ? {} : { uncertainty }),
    assumptions: [
      ...house.assumptions,
      ...judgingAssumptions,
      ...ruleAssumptions,
      ...spilledGasAssumptions(house, draft.result),
    ],
    notModelled: notModelled(house, draft.result),
    cautions: cautions(findings, house, spillingAppliances(draft.result)),
  };
}

import { compileHouse, type House } from '@evendraft/house';
import type { Assessment, HouseSummary } from '@evendraft/report';
import {
  cautions,
  defaultLimitSet,
  judge,
  judgingAssumptions,
  type LimitSet,
} from '@evendraft/rules';
import { worstCaseStudy } from '@evendraft/studies';
import { HouseNotCompilable } from './house-not-compilable.js';
import { notModelled } from './not-modelled.js';
import { libraryVersion } from './version.js';

/** What an assessment may be told. */
export interface AssessOptions {
  /** The limits to judge by; those by vent type when absent. */
  readonly limitSet?: LimitSet;
  /** Stops the work; the promise then rejects with the signal's reason. */
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
}

/**
 * Assesses a house: compiles it, solves every state in every weather, judges every appliance.
 *
 * It is risk screening. No number in it clears an appliance: a combustion-safety test on site and
 * the local code decide.
 *
 * @param house - a house as `readHouse` or `parseHouse` returns it
 * @param options - limit set, signal and progress
 * @returns the assessment, plain JSON
 * @throws {@link HouseNotCompilable} where the house was put together by hand and does not hold together
 */
export async function assess(house: House, options: AssessOptions = {}): Promise<Assessment> {
  const { limitSet = defaultLimitSet, ...studyOptions } = options;
  const compile = compileHouse(house);
  if (!compile.ok) throw new HouseNotCompilable(compile.issues);
  const worstCase = await worstCaseStudy(compile.compiled, studyOptions);
  const findings = judge({ house, worstCase, limitSet });
  return {
    schema: 'evendraft-assessment',
    schemaVersion: 1,
    libraryVersion,
    house: {
      name: house.name,
      floorAreaM2: house.floorAreaM2,
      volumeM3: house.volumeM3,
      digest: house.digest,
      altitudeM: house.altitudeM,
      airtightness: house.airtightness,
      zones: house.zones.map(({ id, kind }) => ({ id, kind })),
      devices: house.devices.map(({ id, kind, direction, zone }) => ({
        id,
        kind,
        direction,
        zone,
      })),
      appliances: house.appliances.map(({ id, kind, vent, zone }) => ({ id, kind, vent, zone })),
      weathers: house.weathers,
      testPreparation: testPreparation(house),
    },
    limitSet: { id: limitSet.id, name: limitSet.name, edition: limitSet.edition },
    worstCase,
    findings,
    assumptions: [...house.assumptions, ...judgingAssumptions],
    notModelled: notModelled(house),
    cautions: cautions(findings, house),
  };
}

/** How everything that is modelled apart stood during the airtightness test. */
function testPreparation({
  openings,
  devices,
  makeUpOpenings,
}: House): NonNullable<HouseSummary['testPreparation']> {
  const withLeak = devices.filter(({ offLaw, path }) => offLaw !== undefined || path !== undefined);
  return [...openings, ...withLeak, ...makeUpOpenings].map(({ id, duringTest }) => ({
    item: id,
    duringTest,
  }));
}

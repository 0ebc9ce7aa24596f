import type { Appliance, House } from '@evendraft/house';
import type { WorstPressure } from '@evendraft/studies';
import { chooseLimit } from './choose-limit.js';
import type { Finding, Verdict } from './finding.js';
import { missingNotes, studyNotes } from './internal/finding-notes.js';
import { stoppedReason } from './internal/stopped-reason.js';
import { reasonWithoutRow, reasonWithoutVent } from './internal/reason-not-judged.js';
import { suggestCures } from './internal/suggest-cures.js';
import type { JudgedStudy } from './judged-study.js';
import type { Limit, LimitSet } from './limit-set.js';
import { nearBand } from './near-band.js';

/** What is held against what. */
export interface JudgeInput {
  readonly house: House;
  /** The true worst case, or a programme’s own test from `programmeTest`. */
  readonly worstCase: JudgedStudy;
  readonly limitSet: LimitSet;
  /** Uncertainty of the result or accuracy of the gauge, where the caller knows one [Pa]. */
  readonly statedUncertaintyPa?: number;
}

/**
 * One finding for each appliance of the house, in the house's order.
 *
 * margin = worst value − limit, from unrounded numbers. With a band b as {@link nearBand} says: beyond
 * the limit where margin is below −b, near where it is from −b to b, within where it is above b; so
 * a value exactly at its limit is near it. In a study that was stopped nothing is within its limit: what was not
 * solved may be beyond it. Screening of risk: no verdict is a clearance.
 *
 * @param input - the house, its worst-case study and the set to hold it against
 * @returns the findings, plain JSON
 * @throws RulesArgumentError where the stated uncertainty is negative or not finite
 */
export function judge(input: JudgeInput): readonly Finding[] {
  return input.house.appliances.map((appliance) => judgeAppliance(appliance, input));
}

function judgeAppliance(appliance: Appliance, input: JudgeInput): Finding {
  const { house, worstCase, limitSet, statedUncertaintyPa } = input;
  const notJudged = (reason: string, notes: readonly string[] = []): Finding => ({
    appliance: appliance.id,
    zone: appliance.zone,
    verdict: 'not judged',
    limitSet: limitSet.id,
    reason,
    cures: [],
    notes,
  });

  const ventless = reasonWithoutVent(appliance);
  if (ventless !== undefined) return notJudged(ventless);

  const setNotes = limitSet.note === '' ? [] : [limitSet.note];
  const choice = chooseLimit({ appliance, appliances: house.appliances, limitSet });
  if (choice.status === 'excluded') return notJudged(choice.exclusion.reason, setNotes);
  if (choice.status === 'no row') {
    return notJudged(reasonWithoutRow(appliance, house.appliances, limitSet), setNotes);
  }

  const { limit } = choice;
  const found = worstCase.appliances.find((entry) => entry.appliance === appliance.id);
  const worst = limit.quantity === 'change from baseline' ? found?.largestFall : found?.lowest;
  if (worst === undefined || worstCase.situations.length === 0) {
    return notJudged(
      'No situation of the study could be solved for the zone it stands in; see what the study says about each.',
      setNotes,
    );
  }
  const valuePa = worstValue(worst, limit);
  const baselinePa = withoutNegativeZero(worst.baselinePa);
  if (!Number.isFinite(valuePa) || !Number.isFinite(baselinePa)) {
    return notJudged('The study gives no number for the pressure of its zone.', setNotes);
  }

  const nearBandPa = nearBand({
    quantity: limit.quantity,
    enclosureRadiusPa: worstCase.proof.largestEnclosureRadiusPa,
    ...(statedUncertaintyPa === undefined ? {} : { statedUncertaintyPa }),
  });
  const marginPa = withoutNegativeZero(valuePa - limit.limitPa);
  const verdict = verdictOf(marginPa, nearBandPa);
  if (worstCase.stopped !== undefined && verdict === 'within the limit') {
    return notJudged(stoppedReason(worstCase.stopped), setNotes);
  }
  return {
    appliance: appliance.id,
    zone: appliance.zone,
    verdict,
    limitSet: limitSet.id,
    judged: {
      limitId: limit.id,
      condition: limit.condition,
      quantity: limit.quantity,
      valuePa,
      limitPa: limit.limitPa,
      marginPa,
      nearBandPa,
      baselinePa,
      situation: {
        label: worst.label,
        weather: worst.weather,
        airtightness: worst.airtightness,
      },
      source: limit.source,
      testSetUp: limitSet.testSetUp,
    },
    cures: verdict === 'within the limit' ? [] : suggestCures({ house, appliance, worst }),
    notes: [
      ...studyNotes(worstCase, worst),
      ...missingNotes(choice.missing),
      ...(limit.note === undefined ? [] : [limit.note]),
      ...setNotes,
    ],
  };
}

function verdictOf(marginPa: number, nearBandPa: number): Verdict {
  if (marginPa < -nearBandPa) return 'beyond the limit';
  return marginPa <= nearBandPa ? 'near the limit' : 'within the limit';
}

function worstValue(worst: WorstPressure, limit: Limit): number {
  return withoutNegativeZero(
    limit.quantity === 'change from baseline' ? worst.changeFromBaselinePa : worst.pressurePa,
  );
}

/** JSON and a reader know one zero. */
function withoutNegativeZero(value: number): number {
  return value + 0;
}

import { baselineOf, compileHouse, type House } from '@evendraft/house';
import {
  codeScreensFromFindings,
  exceedanceFromStudy,
  notesFromAssessment,
  sharesFromStudy,
  type Assessment,
  type ReportExtras,
} from '@evendraft/report';
import { fanSystemStudy, questionOf, sectionStudy } from '@evendraft/studies';
import { exhaustCurveData } from './extras/exhaust-curve-data.js';
import { fanData } from './extras/fan-data.js';
import { flueData } from './extras/flue-data.js';
import { leakRows } from './extras/leak-rows.js';
import { makeUpOptionData } from './extras/make-up-option-data.js';
import { sectionData } from './extras/section-data.js';
import { worstSituation } from './extras/worst-situation.js';
import { HouseNotCompilable } from './house-not-compilable.js';

/**
 * What a page shows beside the assessment: the house in section, curves, fans, flues, shares, probabilities, code
 * screens, make-up options, leaks.
 *
 * Drawings are of the worst situation: that of the attribution, or the deepest one.
 *
 * @param house - the house that was assessed
 * @param assessment - its assessment
 * @param options - units in which arithmetic is printed, signal
 * @returns extras; what could not be solved is left out
 * @throws {@link HouseNotCompilable} where the house was put together by hand and does not hold together
 */
export async function reportExtras(
  house: House,
  assessment: Assessment,
  options: { readonly system: 'us' | 'si'; readonly signal?: AbortSignal },
): Promise<ReportExtras> {
  const { system, signal } = options;
  const compile = compileHouse(house);
  if (!compile.ok) throw new HouseNotCompilable(compile.issues);
  const { compiled } = compile;
  const { attribution, uncertainty } = assessment;
  const worst = worstSituation(assessment);
  const question = worst === undefined ? undefined : questionOf(compiled, worst);
  const flows = {
    baseline:
      question && sectionStudy(compiled, { ...question, state: baselineOf(question.state) }),
    worst: question && sectionStudy(compiled, question),
  };
  const section = worst && sectionData(compiled, { situation: worst, ...flows });
  const curve =
    worst === undefined
      ? undefined
      : await exhaustCurveData(compiled, { worst, assessment, system, signal });
  const fans = question === undefined ? [] : fanSystemStudy(compiled, question).map(fanData);
  const flues = flueData(assessment);
  const makeUpOptions = makeUpOptionData(assessment, system);
  return {
    ...(section === undefined ? {} : { section }),
    ...(curve === undefined ? {} : { exhaustCurve: curve }),
    ...(fans.length === 0 ? {} : { fans }),
    ...(attribution === undefined
      ? {}
      : { shares: sharesFromStudy(attribution, `${attribution.label}, ${attribution.weather}`) }),
    ...(flues.length === 0 ? {} : { flues }),
    ...(uncertainty === undefined ? {} : { exceedance: exceedanceFromStudy(uncertainty) }),
    ...(makeUpOptions === undefined ? {} : { makeUpOptions }),
    leaks: leakRows(compiled, flows),
    codeScreens: codeScreensFromFindings(assessment.screens, system),
    notes: notesFromAssessment(assessment, system),
  };
}

import type { WorstCaseStudy } from '@evendraft/studies';
import { countWords } from './count-words.js';

/**
 * The weakest proof among all solves of a study, in words that a reader can check by adding up.
 *
 * @param study - the study
 * @returns sentences: residual, enclosure, uniqueness, iterations
 */
export function proofSentences(study: WorstCaseStudy): readonly string[] {
  const { counts, proof, situations } = study;
  const several = situations.filter((situation) => !situation.proof.unique).length;
  const radius = proof.largestEnclosureRadiusPa;
  return [
    `${countWords(counts.solves, 'balance')} solved: ${countWords(counts.states, 'state')}, ` +
      `${countWords(counts.weathers, 'weather')}, ` +
      `${countWords(counts.airtightnessCases, 'airtightness case')}, and their baselines.`,
    ...coverageSentences(study),
    'Air flowing into a zone less air flowing out of it is at most ' +
      `${roundedUp(proof.largestRelativeResidual)} of the flow through that zone.`,
    radius === null
      ? 'How far a pressure may be from the exact answer could not be shown.'
      : `Every exact answer of these flow laws${asColumnsStand(situations)} lies within ` +
        `${roundedUp(radius)} Pa of the pressures given${exceptions(proof.notEnclosed)}.`,
    several === 0
      ? 'Each balance is the only one possible.'
      : `${countWords(several, 'balance')} may be one of several that are possible.`,
    `The slowest solve took ${countWords(proof.mostIterations, 'iteration')}.`,
  ];
}

/**
 * One significant digit, never smaller than the number itself, so that `at most` stays true.
 *
 * @param value - not negative
 * @returns e.g. `3e-13`
 */
export function roundedUp(value: number): string {
  if (value === 0) return '0';
  const [nearest = '', exponent = '0'] = value.toExponential(0).split('e');
  const digit = Number(`${nearest}e${exponent}`) < value ? Number(nearest) + 1 : Number(nearest);
  const shown = Number(`${digit}e${exponent}`);
  return shown >= 0.01 && shown < 1000 ? String(shown) : shown.toExponential(0);
}

function asColumnsStand(situations: WorstCaseStudy['situations']): string {
  return situations.some(({ columns }) => columns !== undefined)
    ? ', with air in shafts and flues standing as it does in each,'
    : '';
}

function exceptions(notEnclosed: number): string {
  return notEnclosed === 0
    ? ''
    : `, except in ${countWords(notEnclosed, 'solve')} where this could not be shown`;
}

/** How states that were not solved are covered, and by what. */
function coverageSentences({ coverage }: WorstCaseStudy): readonly string[] {
  if (coverage === undefined) return [];
  const { situations, ordered, notOrdered, proved } = coverage;
  return [
    proved
      ? `Not all of the ${situations.toLocaleString('en-US')} situations were solved one by one: with all ` +
        'else held, more air out lowers every pressure, so that for these only the settings that ' +
        `carry most were needed: ${ordered.join(', ')}. That was shown flow law against flow law.`
      : `Not all of the ${situations.toLocaleString('en-US')} situations were solved, and that the ` +
        'worst is among those that were could not be shown.',
    ...(notOrdered.length === 0
      ? []
      : [
          `Gone through at every setting, because that does not hold for them: ${notOrdered.join(', ')}.`,
        ]),
  ];
}

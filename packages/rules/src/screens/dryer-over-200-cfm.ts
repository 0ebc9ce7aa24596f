import { notMeantFor } from '../internal/answer.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { makeUpAboveTrigger } from '../internal/make-up-for-exhaust.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const trigger = siOf('200 cfm', 'volumeFlow');

/**
 * Make-up air for a clothes dryer that exhausts more than 200 cfm.
 *
 * Source: International Residential Code G2439 and International Fuel Gas Code 614, restated.
 */
export const dryerOver200Cfm: Screen = {
  rule: {
    id: 'dryer-over-200-cfm',
    title: 'Make-up air for a dryer above 200 cfm',
    region: 'United States',
    source: {
      document: 'International Residential Code; International Fuel Gas Code',
      section: 'G2439; 614',
      status: 'found second-hand',
    },
  },
  run(context) {
    const dryers = exhaustSystems(context.house).filter(({ kind }) => kind === 'dryer');
    if (dryers.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no dryer that exhausts.' })];
    }
    return makeUpAboveTrigger(this.rule, context, {
      devices: dryers,
      triggerM3PerS: trigger,
      why: 'It is for every dryer that exhausts.',
      wantedWords: 'the exhaust of the dryer',
    });
  },
};

import { notMeantFor } from '../internal/answer.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { makeUpAboveTrigger } from '../internal/make-up-for-exhaust.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const trigger = siOf('400 cfm', 'volumeFlow');

/**
 * The older form: make-up air for any kitchen exhaust above 400 cfm, whatever burns.
 *
 * Source: International Residential Code 2009 to 2015, M1503.4; from memory.
 */
export const hoodOver400CfmOlder: Screen = {
  rule: {
    id: 'hood-over-400-cfm-older',
    title: 'Make-up air for a kitchen hood above 400 cfm, older form',
    region: 'United States',
    source: {
      document: 'International Residential Code',
      edition: '2009 to 2015',
      section: 'M1503.4',
      status: 'memory',
    },
    notes: ['Later editions ask only where an appliance inside has a drawing vent.'],
  },
  run(context) {
    const hoods = exhaustSystems(context.house).filter(
      ({ kind }) => kind === 'hood' || kind === 'downdraft',
    );
    if (hoods.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no kitchen hood that exhausts.' })];
    }
    return makeUpAboveTrigger(this.rule, context, {
      devices: hoods,
      triggerM3PerS: trigger,
      why: 'It is for every kitchen hood, whatever burns in the house.',
      wantedWords: 'approximately the exhaust at its highest speed',
    });
  },
};

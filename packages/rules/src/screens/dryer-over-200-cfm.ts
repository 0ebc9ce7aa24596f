import { notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems, highestFlow } from '../internal/exhaust-systems.js';
import { makeUpForExhaust, underTrigger } from '../internal/make-up-for-exhaust.js';
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
    const why = 'It is for every dryer that exhausts.';
    return dryers.map((device) => {
      const flow = highestFlow(device);
      return flow <= trigger
        ? underTrigger(this.rule, device, { flowM3PerS: trigger, why })
        : makeUpForExhaust(this.rule, context, {
            device,
            why,
            wantedM3PerS: flow,
            arithmetic: [
              line('trigger', 'above which make-up air is asked for', amount.flow(trigger)),
              line('wanted', 'the exhaust of the dryer', amount.flow(flow)),
            ],
          });
    });
  },
};

import { notMeantFor } from '../internal/answer.js';
import { burnersInside, isNeitherDirectNorMechanical, named } from '../internal/burners.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { makeUpAboveTrigger } from '../internal/make-up-for-exhaust.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const trigger = siOf('400 cfm', 'volumeFlow');

/**
 * Make-up air for any exhaust above 400 cfm where an appliance inside is neither direct-vent nor
 * mechanical-draft.
 *
 * Source: International Residential Code 2018, 2021 and 2024, M1503.6, read.
 */
export const exhaustOver400Cfm: Screen = {
  rule: {
    id: 'exhaust-over-400-cfm',
    title: 'Make-up air for exhaust above 400 cfm beside a drawing vent',
    region: 'United States',
    source: {
      document: 'International Residential Code',
      edition: '2018, 2021 and 2024',
      section: 'M1503.6',
      status: 'found',
    },
    notes: [
      'Exhaust that only cools the house while windows or other inlets are open is an exception. A fan-assisted burner on a drawing vent is read as not mechanical-draft (our choice).',
    ],
  },
  run(context) {
    const { house } = context;
    const concerned = burnersInside(house).filter(isNeitherDirectNorMechanical);
    if (concerned.length === 0) {
      return [
        notMeantFor(this.rule, {
          why: 'Every appliance inside the air barrier is direct-vent, mechanical-draft or electric.',
        }),
      ];
    }
    return makeUpAboveTrigger(this.rule, context, {
      devices: exhaustSystems(house),
      triggerM3PerS: trigger,
      why: `Inside stand ${named(concerned)}, neither direct-vent nor mechanical-draft.`,
      wantedWords: 'approximately the exhaust at its highest speed',
    });
  },
};

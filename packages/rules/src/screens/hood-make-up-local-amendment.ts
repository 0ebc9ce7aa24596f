import { notMeantFor } from '../internal/answer.js';
import { burnersInside, isNeitherDirectNorMechanical } from '../internal/burners.js';
import { exhaustSystems } from '../internal/exhaust-systems.js';
import { makeUpAboveTrigger } from '../internal/make-up-for-exhaust.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const free = siOf('400 cfm', 'volumeFlow');
const freeWithSealed = siOf('600 cfm', 'volumeFlow');

/**
 * A local amendment: make-up air only for what is above 400 cfm, or above 600 cfm with sealed appliances.
 *
 * Source: amendment of a city in Texas to the International Residential Code, read.
 */
export const hoodMakeUpLocalAmendment: Screen = {
  rule: {
    id: 'hood-make-up-local-amendment',
    title: 'Make-up air only for the amount above the trigger, as a local amendment has it',
    region: 'United States',
    source: {
      document: 'Amendment of a city in Texas to the International Residential Code',
      section: 'kitchen exhaust make-up air',
      status: 'found',
    },
    notes: ['An example of how local rules differ; it binds only where it was adopted.'],
  },
  run(context) {
    const { house } = context;
    const hoods = exhaustSystems(house).filter(
      ({ kind }) => kind === 'hood' || kind === 'downdraft',
    );
    if (hoods.length === 0) {
      return [notMeantFor(this.rule, { why: 'The house has no kitchen hood that exhausts.' })];
    }
    const drawing = burnersInside(house).filter(
      (one) => isNeitherDirectNorMechanical(one) && one.vent !== 'unvented',
    );
    const isDrawing = drawing.length > 0;
    return makeUpAboveTrigger(this.rule, context, {
      devices: hoods,
      triggerM3PerS: isDrawing ? free : freeWithSealed,
      why: isDrawing
        ? 'An appliance inside draws its air from the house: 400 cfm are free.'
        : 'All appliances are sealed, power-vented, unvented or electric: 600 cfm are free.',
      wantedWords: 'flow less what is free',
      onlyExcess: true,
    });
  },
};

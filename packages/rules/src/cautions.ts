import type { House } from '@evendraft/house';
import type { Finding } from './finding.js';

/**
 * The cautions that belong on every report, the most urgent first.
 *
 * Advice of common practice, no source: what is certain is only that a computed or measured pressure
 * cannot prove how an appliance behaves. A house that burns nothing gets the general ones.
 *
 * @param findings - what was found in the house
 * @param house - the house
 * @param spilling - appliances whose solved flue leaves gas in the room, or does so from cold; and whether it does so
 *   with nothing running
 * @returns sentences to be shown as they are, in this order
 */
export function cautions(
  findings: readonly Finding[],
  house: House,
  spilling: readonly { readonly appliance: string; readonly withNothingRunning: boolean }[] = [],
): readonly string[] {
  const burns = house.appliances.some(({ vent }) => vent !== 'electric');
  const beyond = findings
    .filter(({ verdict }) => verdict === 'beyond the limit')
    .map(({ appliance }) => appliance);
  const never = spilling
    .filter(({ withNothingRunning }) => withNothingRunning)
    .map(({ appliance }) => appliance);
  const unfit = [...new Set([...beyond, ...spilling.map(({ appliance }) => appliance)])].filter(
    (appliance) => !never.includes(appliance),
  );
  const general = [
    'This is screening of risk by computation, not a test. Installation, weather and use differ from what was computed.',
    'Local code and the licensed trade decide what must be built, tested and changed.',
  ];
  if (!burns) {
    return [
      ...general,
      'No fuel-burning appliance was described. Had one been left out, or were one added later, these results would not cover it.',
    ];
  }
  return [
    'At once, if a carbon monoxide alarm sounds or an appliance spills: stop the appliance, open doors and windows, leave, and call the emergency or gas service from outdoors.',
    ...(never.length === 0
      ? []
      : [
          `Until tested on site, do not use these, with exhaust or without: ${never.join(', ')}. In a weather that was solved their flue leaves gas in the room with nothing running.`,
        ]),
    ...(unfit.length === 0
      ? []
      : [`Until tested on site, do not use these while any exhaust runs: ${unfit.join(', ')}.`]),
    ...(never.length + unfit.length === 0
      ? []
      : [
          'A finding names only its worst state. Less exhaust may be beyond the limit too, and what cures that state may not be enough: after each change assess the house again.',
        ]),
    ...general,
    'On site a qualified person must make a combustion-safety test of each appliance: the house set up for its worst case, spillage observed and carbon monoxide measured, with the exhaust running and from a cold vent.',
    'A pressure limit that is met, computed or measured, never proves that an appliance drafts or burns well: blocked or cold vents, wind and faults do not show in it.',
    'Programmes disagree about such limits, and several have dropped single-pressure limits in favour of tests of spillage and carbon monoxide.',
    'Have carbon monoxide alarms as local code asks, in any case near the bedrooms and on each floor; an alarm warns of harm and does not prevent it.',
  ];
}

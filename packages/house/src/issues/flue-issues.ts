import { metres, quoted, textOf, type IssueWords } from './words.js';

/** Codes of what can be wrong with a flue. */
export type FlueIssueCode =
  | 'flue.not-an-opening'
  | 'flue.size-missing'
  | 'flue.height-missing'
  | 'flue.several-chimneys'
  | 'flue.hood-and-regulator'
  | 'flue.connector-too-short'
  | 'flue.connectors-do-not-meet';

/** Words for the codes of flues. */
export const flueIssues: Readonly<Record<FlueIssueCode, IssueWords>> = {
  'flue.not-an-opening': {
    atKey: true,
    message: ({ vent }) =>
      `an appliance that is ${textOf(vent)} has no flue that is open to the house`,
    hint: () => 'Remove "flue:", or write the vent that it really has.',
    remedy: 'Describe flues of natural-draft and fan-assisted appliances, hearths and stoves only.',
  },
  'flue.size-missing': {
    atKey: true,
    message: () => 'the flue has no size',
    hint: () => 'Write "diameter: 5 in", or "size: [8 in, 12 in]" for a rectangular one.',
    remedy: 'Write the clear diameter of the flue, or width and depth of a rectangular one.',
  },
  'flue.height-missing': {
    atKey: true,
    message: () => 'the flue has no height, and no appliance on the same vent has a chimney',
    hint: () => 'Write "height: 22 ft", or "sharesVentWith:" the appliance whose chimney it joins.',
    remedy: 'Write the height of the chimney at one of the appliances on it.',
  },
  'flue.several-chimneys': {
    message: ({ other }) => `the chimney of this vent is already described at ${quoted(other)}`,
    hint: () => 'Keep one height; the other appliance then joins that chimney.',
    remedy: 'Describe a chimney once, at one of the appliances that share it.',
  },
  'flue.hood-and-regulator': {
    message: () => 'an appliance with a draft hood has no barometric regulator',
    hint: () => 'Write "draftHood: no", or remove the regulator.',
    remedy: 'Keep the draft hood or the barometric regulator.',
  },
  'flue.connector-too-short': {
    message: ({ riseM, lengthM }) =>
      `the connector rises ${metres(riseM)}, and it is only ${metres(lengthM)} long`,
    hint: () => 'Write its whole length, the rising part included.',
    remedy: 'Check length and rise of the connector.',
  },
  'flue.connectors-do-not-meet': {
    message: ({ other, endM, meetingM }) =>
      `its connector ends ${metres(endM)} above the floor, and that of ${quoted(other)} ${metres(meetingM)}`,
    hint: () => 'Correct the collar height or the rise, or leave one of both out.',
    remedy: 'Connectors on one chimney end at the same height; check collars and rises.',
  },
};

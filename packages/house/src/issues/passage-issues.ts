import { metres, textOf, type IssueWords } from './words.js';

/** Codes of what can be wrong with doors, shafts and what else lets air pass between zones. */
export type PassageIssueCode =
  | 'door.cannot-be-shut'
  | 'door.louvre-above-door'
  | 'forced-air.shares-sum'
  | 'forced-air.leaks-everything';

/** Words for the codes of passages. */
export const passageIssues: Readonly<Record<PassageIssueCode, IssueWords>> = {
  'door.cannot-be-shut': {
    message: ({ kind }) =>
      `${/^[aeiou]/.test(textOf(kind)) ? 'an' : 'a'} ${textOf(kind)} cannot be shut`,
    hint: () => 'Remove the position, or write "kind: door".',
    remedy: 'Leave out positions of what has no leaf, or call it a door.',
  },
  'door.louvre-above-door': {
    message: ({ heightM, doorM }) =>
      `the louvres are ${metres(heightM)} high, and the door is ${metres(doorM)}`,
    hint: () => 'Write the height of the louvred part, or the height of the door under "open:".',
    remedy: 'Check both heights; louvres cannot reach above the door that they are in.',
  },
  'forced-air.shares-sum': {
    atKey: true,
    message: ({ sumPercent }) =>
      `the shares of the rooms make ${textOf(sumPercent)} % together, not 100 %`,
    hint: () => 'Each share is one of the flow of all registers on this side.',
    remedy: 'Write shares that make 100 % over all rooms, for supplies and for returns.',
  },
  'forced-air.leaks-everything': {
    message: ({ side }) =>
      `the ${textOf(side)} ducts leak all that the fan moves, so nothing is left for registers`,
    hint: ({ side }) => `Check the leakage, and the pressure under "${textOf(side)}Pressure:".`,
    remedy: 'Check the leakage of the ducts against the flow of the fan.',
  },
};

import { choices, enumeration, quoted, textOf, writeInstead, type IssueWords } from './words.js';

/** Codes of what can be wrong with ducts, dampers and plenums. */
export type PathIssueCode =
  | 'duct.size-missing'
  | 'duct.several-sizes'
  | 'duct.fitting-unknown'
  | 'duct.loss-missing'
  | 'duct.several-losses'
  | 'duct.inline-needs-both'
  | 'duct.needed'
  | 'damper.size-missing'
  | 'damper.leakage-missing'
  | 'damper.open-before-it-opens'
  | 'damper.kind-not-here'
  | 'plenum.face-area-missing'
  | 'plenum.other-zone';

/** Words for the codes of ducts, dampers and plenums. */
export const pathIssues: Readonly<Record<PathIssueCode, IssueWords>> = {
  'duct.size-missing': {
    atKey: true,
    message: () => 'the duct has no size',
    hint: writeInstead,
    remedy: 'Write the diameter of a round duct, or the inner sides or axes of another.',
  },
  'duct.several-sizes': {
    message: ({ keys }) => `${enumeration(keys)} each say how wide the duct is`,
    hint: () => 'Keep one of them; write stretches of different sizes as a list.',
    remedy: 'Keep one size for each stretch, and write several stretches as a list.',
  },
  'duct.fitting-unknown': {
    atKey: true,
    message: ({ found }) => `no loss is known for a fitting ${quoted(found)}`,
    hint: ({ suggestion }) =>
      suggestion === undefined
        ? 'Write its own: "{ count: 2, loss: 1.2 }" or "{ equivalentLength: 10 ft }".'
        : `Did you mean ${quoted(suggestion)}? If not, write its own loss: "{ loss: 1.2 }".`,
    remedy: 'Use a name of the table of fittings, or give the fitting a loss or equivalent length.',
  },
  'duct.loss-missing': {
    atKey: true,
    message: () => 'nothing says how much pressure it takes',
    hint: writeInstead,
    remedy: 'Write a loss coefficient, a free area, or its share of the duct’s area.',
  },
  'duct.several-losses': {
    message: ({ keys }) => `${enumeration(keys)} each say how much pressure it takes`,
    hint: () => 'Keep one of them.',
    remedy: 'Keep the one that is known best.',
  },
  'duct.inline-needs-both': {
    message: () => 'an inline fan has a duct on both sides',
    hint: () => 'Write "inletDuct:" before the fan and "duct:" behind it.',
    remedy: 'Write both ducts, or say that the fan is in the unit or remote.',
  },
  'duct.needed': {
    atKey: true,
    message: ({ key }) => `"${textOf(key)}" says something only beside a duct that is described`,
    hint: () =>
      'Describe the duct under "duct:", or remove it: the flow is then that as installed.',
    remedy:
      'Describe the duct, or remove the key; the flow is then that of the device as installed.',
  },
  'damper.size-missing': {
    message: () => 'the damper has no size, and there is no duct to take it from',
    hint: () => 'Write its diameter: "{ kind: motorized, diameter: 8 in }".',
    remedy: 'Write the diameter of the damper, or the duct that it sits in.',
  },
  'damper.leakage-missing': {
    message: () => 'a damper that is stuck shut passes only what it leaks, and no leakage is given',
    hint: () => 'Write "leakageClass:" in the damper, or "closedLeakage:" beside it.',
    remedy: 'Give the leakage of the damper, by its class or as measured.',
  },
  'damper.open-before-it-opens': {
    message: ({ opensAtPa, fullyOpenAtPa }) =>
      `the damper would be fully open at ${textOf(fullyOpenAtPa)} Pa, and starts to open at ${textOf(opensAtPa)} Pa`,
    hint: () => 'Write the higher pressure under "fullyOpenAt".',
    remedy: 'Check both pressures; a damper is fully open at the higher one.',
  },
  'damper.kind-not-here': {
    message: ({ kind, where }) => `a ${textOf(kind)} damper has no place under "${textOf(where)}"`,
    hint: ({ allowed }) => `Here it is ${choices(allowed)}.`,
    remedy:
      'Write inlets that the air opens under `openings`, and those that a motor opens with a driver under `makeUp`.',
  },
  'plenum.face-area-missing': {
    message: () => 'no area says how wide its air comes out beside the exhaust',
    hint: () => 'Write "faceArea: 240 in2".',
    remedy: 'Write the face area of the plenum; the face velocity follows from it.',
  },
  'plenum.other-zone': {
    message: ({ hood, zone }) =>
      `${quoted(hood)} stands in ${quoted(zone)}, and its plenum does not`,
    hint: ({ zone }) => `Write "zone: ${textOf(zone)}".`,
    remedy: 'Put the plenum in the zone of its hood.',
  },
};

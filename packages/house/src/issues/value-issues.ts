import {
  dimensions,
  quantityProblems,
  type Dimension,
  type QuantityProblemCode,
} from '@evendraft/units';
import { choices, metres, quoted, textOf, writeInstead, type IssueWords } from './words.js';

/** Codes of what can be wrong with one value or key. */
export type ValueIssueCode =
  | 'house.empty'
  | 'house.not-a-map'
  | 'version.unknown'
  | 'key.unknown'
  | 'key.missing'
  | 'key.without-effect'
  | 'value.empty'
  | 'value.wrong-shape'
  | 'value.unknown-word'
  | 'value.too-long'
  | 'value.not-a-number'
  | 'value.not-a-coefficient'
  | 'value.out-of-range'
  | 'leak.pressure-missing'
  | 'leak.area-reference'
  | 'law.out-of-range'
  | 'height.above-ceiling'
  | QuantityProblemCode;

const own: Readonly<Record<Exclude<ValueIssueCode, QuantityProblemCode>, IssueWords>> = {
  'house.empty': {
    message: () => 'the house file is empty',
    hint: () => 'Write at least evendraft: 1, name, floorArea and airtightness.',
    remedy:
      'Write the four keys that every house file has: evendraft, name, floorArea, airtightness.',
  },
  'house.not-a-map': {
    message: ({ found }) => `found ${textOf(found)} where a house file holds keys and values`,
    hint: () => 'Begin with the line evendraft: 1.',
    remedy: 'Write keys and values, beginning with `evendraft: 1`.',
  },
  'version.unknown': {
    message: ({ found, allowed }) =>
      `found version ${quoted(found)} of the house file, but this program reads version ${textOf(allowed)}`,
    hint: ({ allowed }) => `Write evendraft: ${textOf(allowed)}, as a plain number.`,
    remedy: 'Write `evendraft: 1`, or use a program that reads the newer version.',
  },
  'key.unknown': {
    atKey: true,
    message: ({ key }) => `the key ${quoted(key)} is not known here`,
    hint: ({ suggestion, known }) =>
      suggestion === undefined
        ? `Known here: ${textOf(known)}.`
        : `Did you mean ${quoted(suggestion)}?`,
    remedy: 'Use one of the documented keys; a misspelt key would otherwise be ignored silently.',
  },
  'key.missing': {
    message: () => 'this is missing',
    hint: writeInstead,
    remedy: 'Add the key with a value.',
  },
  'key.without-effect': {
    atKey: true,
    message: ({ key, way }) => `${quoted(key)} has no effect beside ${quoted(way)}`,
    hint: () => 'Remove one of both.',
    remedy: 'Remove the key that does not apply, or describe the item in the other way.',
  },
  'value.empty': {
    atKey: true,
    message: () => 'nothing stands after this key',
    hint: (parameters) => `${writeInstead(parameters)} Or remove the key.`.trim(),
    remedy: 'Write a value after the colon, or remove the key.',
  },
  'value.wrong-shape': {
    message: ({ found }) => `found ${textOf(found)}, which cannot stand here`,
    hint: writeInstead,
    remedy: 'Write the value in one of the forms that the message names.',
  },
  'value.unknown-word': {
    message: ({ found, allowed }) => `found ${quoted(found)}, expected ${choices(allowed)}`,
    hint: ({ suggestion }) =>
      suggestion === undefined
        ? 'Write one of these words.'
        : `Did you mean ${quoted(suggestion)}?`,
    remedy: 'Use one of the words that are listed.',
  },
  'value.too-long': {
    message: ({ length, allowed }) =>
      `found a text of ${textOf(length)} characters, and ${textOf(allowed)} are allowed`,
    hint: writeInstead,
    remedy: 'Write one value; often a quote that was never closed causes this.',
  },
  'value.not-a-number': {
    message: ({ found }) => `found ${quoted(found)}, expected a plain number without unit`,
    hint: writeInstead,
    remedy: 'Write a number without a unit.',
  },
  'value.not-a-coefficient': {
    message: ({ found }) => `found ${quoted(found)}, expected a flow over a power of a pressure`,
    hint: writeInstead,
    remedy: 'Write a flow coefficient as `12 cfm/Pa^n`, and its exponent under `exponent`.',
  },
  'value.out-of-range': {
    message: ({ found, allowed }) => `found ${quoted(found)}, allowed is ${textOf(allowed)}`,
    hint: () => 'Check the number and its unit.',
    remedy: 'Check sign, decimal point and unit of the value.',
  },
  'leak.pressure-missing': {
    message: ({ found }) => `${quoted(found)} says no pressure, without which a leak is unknown`,
    hint: writeInstead,
    remedy: 'Write the pressure at which the flow was measured: `310 cfm at 50 Pa`.',
  },
  'leak.area-reference': {
    message: ({ found }) =>
      `the leakage area ${quoted(found)} needs its reference, "at 4 Pa" (discharge coefficient 1) or "at 10 Pa" (0.611)`,
    hint: writeInstead,
    remedy:
      'Write the reference pressure of the leakage area: `55 in2 at 4 Pa` or `90 in2 at 10 Pa`.',
  },
  'law.out-of-range': {
    message: ({ field, found, allowed }) =>
      `its ${textOf(field)} of ${textOf(found)} cannot be computed with; allowed is ${textOf(allowed)}`,
    hint: () => 'Check the numbers and their units.',
    remedy: 'Check the values of the opening or device; one of them is far outside what can be.',
  },
  'height.above-ceiling': {
    message: ({ zone, heightM, ceilingM }) =>
      `${metres(heightM)} is above the ceiling of ${quoted(zone)}, which is ${metres(ceilingM)} high`,
    hint: () => 'A height is counted from the floor of its own zone.',
    remedy: 'Write the height above the floor of the zone in which the item stands.',
  },
};

/** Words for the codes of values, those of quantities included. */
export const valueIssues: Readonly<Record<ValueIssueCode, IssueWords>> = {
  ...own,
  ...(Object.fromEntries(
    Object.entries(quantityProblems).map(([code, { meaning, remedy }]): [string, IssueWords] => [
      code,
      {
        message: ({ found, measured }) =>
          measured === undefined
            ? `found ${quoted(found)}: ${meaning}`
            : `found ${quoted(found)}, which is ${dimensions[measured as Dimension].words}: ${meaning}`,
        hint: writeInstead,
        remedy,
      },
    ]),
  ) as Record<QuantityProblemCode, IssueWords>),
};

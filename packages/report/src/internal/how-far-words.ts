import type { FlowAnswer, HowFar } from '@evendraft/remedies';
import type { TogetherStudy } from '@evendraft/studies';
import type { UnitSystem } from '@evendraft/units';
import { numberPrinter, type NumberPrinter } from './number-printer.js';

/**
 * How far a house may go without make-up air, in sentences.
 *
 * @param howFar - the answers
 * @param system - units of the reader
 * @returns sentences: airtightness by appliance, the largest exhaust, what may run together
 */
export function howFarSentences(howFar: HowFar, system: UnitSystem): readonly string[] {
  const printer = numberPrinter(system);
  const { airtightness, largestExhaust, together, withoutLimit } = howFar;
  return [
    ...airtightness.map(
      ({ appliance, answer }) => `${appliance}, airtightness: ${tightnessWords(answer, printer)}`,
    ),
    ...(largestExhaust === undefined
      ? []
      : [
          `Largest exhaust without make-up air, held constant by the ${largestExhaust.device} while all else runs as it may: ${exhaustWords(largestExhaust.answer, printer)}`,
        ]),
    ...(together === undefined ? [] : togetherSentences(together)),
    ...(withoutLimit.length === 0
      ? []
      : [`The set gives no limit for ${withoutLimit.join(', ')}: not looked at.`]),
  ];
}

function tightnessWords(answer: FlowAnswer, { flow }: NumberPrinter): string {
  if (answer.status === 'none') {
    return `beyond its limit at every airtightness from ${flow(answer.leastM3PerS)} to ${flow(answer.mostM3PerS)} at 50 Pa.`;
  }
  const { flowM3PerS, failsAtM3PerS, situation } = answer;
  if (failsAtM3PerS === undefined) {
    return `within its limit down to ${flow(flowM3PerS)} at 50 Pa; a tighter house was not looked at.${remarks(answer)}`;
  }
  return `reaches its limit at ${flow(flowM3PerS)} at 50 Pa, with ${situation}; a tighter house is beyond it.${remarks(answer)}`;
}

function exhaustWords(answer: FlowAnswer, { flow }: NumberPrinter): string {
  if (answer.status === 'none') {
    return `none; ${flow(answer.leastM3PerS)} is already beyond a limit.`;
  }
  const { flowM3PerS, failsAtM3PerS, situation } = answer;
  return failsAtM3PerS === undefined
    ? `${flow(flowM3PerS)}; more was not looked at.${remarks(answer)}`
    : `${flow(flowM3PerS)}, with ${situation}; more is beyond a limit.${remarks(answer)}`;
}

function remarks({ proved, monotone }: Extract<FlowAnswer, { status: 'found' }>): string {
  return `${monotone ? '' : ' Some flows farther inside fail again.'}${proved ? '' : ' Not every situation is covered by proof.'}`;
}

function togetherSentences({
  largestThatKeep,
  smallestThatBreak,
}: TogetherStudy): readonly string[] {
  const words = (sets: TogetherStudy['largestThatKeep']): string =>
    sets.map((set) => (set.length === 0 ? 'nothing' : set.join(' + '))).join('; ');
  return [
    largestThatKeep.length === 0
      ? 'Even with nothing switched on a limit is not kept.'
      : `Largest sets that keep every limit when they run together, each at its highest speed: ${words(largestThatKeep)}.`,
    ...(smallestThatBreak.length === 0 || largestThatKeep.length === 0
      ? []
      : [`Smallest sets that break a limit: ${words(smallestThatBreak)}.`]),
  ];
}

import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from './assessment.js';
import { arithmeticWords } from './internal/arithmetic-words.js';
import {
  draftCureHeads,
  draftCureIntroduction,
  draftCureRows,
} from './internal/draft-cure-words.js';
import { fullStop } from './internal/full-stop.js';
import { judgedRows, testedStateWords } from './internal/judged-rows.js';
import { numberPrinter, type NumberPrinter } from './internal/number-printer.js';
import { makeUpSentence } from './internal/size-words.js';
import { cureWords } from './internal/cure-words.js';
import { importanceRows, uncertaintyWords } from './internal/uncertainty-words.js';
import type { JudgedSet } from './judged-set.js';
import type { ReportNote } from './report-extras.js';

/**
 * Results of an assessment that have no drawing of their own, as texts of the page.
 *
 * @param assessment - what was found
 * @param system - units of the reader
 * @returns cures with their numbers, the programme's own test, further limit sets, what matters most
 */
export function notesFromAssessment(
  assessment: Assessment,
  system: UnitSystem,
): readonly ReportNote[] {
  return [
    ...cureNotes(assessment, system),
    ...setNotes(assessment, system, "By the programme's own test"),
    ...assessment.beside.flatMap((set) => [
      {
        title: `Beside it: ${set.limitSet.name}`,
        sentences: judgedSentences(set, system),
      },
      ...setNotes(set, system, `Its own test: ${set.limitSet.name}`),
    ]),
    ...uncertaintyNotes(assessment, system),
  ];
}

function cureNotes(assessment: Assessment, system: UnitSystem): readonly ReportNote[] {
  const { cures } = assessment;
  const title = 'Cures, each solved again';
  if (cures.status === 'nothing to cure') return [];
  if (cures.status === 'not solved') return [{ title, sentences: [fullStop(cures.why)] }];
  const printer = numberPrinter(system);
  const { signedPressure } = printer;
  const sentence = makeUpSentence(cures, system);
  return [
    {
      title,
      sentences: [
        ...(sentence === undefined ? [] : [sentence]),
        ...cures.appliances.flatMap(({ appliance, cures: own }) =>
          own.map((cure) => {
            const { judged, verdict } = cure.after;
            const numbers =
              judged === undefined
                ? ''
                : `, ${signedPressure(judged.valuePa)} Pa against ${signedPressure(judged.limitPa)} Pa`;
            return `For the ${appliance}: ${cureWords(cure, system)} After it ${verdict}${numbers}.`;
          }),
        ),
        ...draftCureSentences(assessment, { printer, system }),
        'A cure is still to be built, assessed and tested; none is a clearance.',
      ],
    },
  ];
}

function draftCureSentences(
  assessment: Assessment,
  { printer, system }: { readonly printer: NumberPrinter; readonly system: UnitSystem },
): readonly string[] {
  const flues = draftCureRows(assessment, printer);
  const { cures } = assessment;
  const left =
    cures.status === 'solved' && cures.fluesNotSolved !== undefined
      ? [fullStop(cures.fluesNotSolved)]
      : [];
  if (flues.length === 0) return left;
  return [
    ...draftCureIntroduction(),
    ...flues.flatMap(({ appliance, rows }) =>
      rows.map(({ cure, cells }) => {
        const [then, ...numbers] = cells;
        const told = numbers.flatMap((value, index) =>
          value === '' ? [] : [`${draftCureHeads[index + 1]!} ${value}`],
        );
        const words = cure === undefined ? 'As it is.' : cureWords(cure, system);
        return `Flue of the ${appliance}: ${words} Then: ${then}; ${told.join(', ')}.`;
      }),
    ),
    ...left,
  ];
}

function setNotes(
  { programmeTest, houseFindings }: JudgedSet,
  system: UnitSystem,
  title: string,
): readonly ReportNote[] {
  const meant = houseFindings.filter(({ applies }) => applies !== 'no');
  return [
    ...(meant.length === 0
      ? []
      : [
          {
            title: 'The house as a whole',
            sentences: meant.map(
              ({ verdict, title: rule, arithmetic }) =>
                `${rule}: ${verdict}. ${arithmetic.map((line) => `${arithmeticWords(line, system)}.`).join(' ')}`,
            ),
          },
        ]),
    ...(programmeTest === undefined
      ? []
      : [
          {
            title,
            sentences: [testedStateWords(programmeTest), ...judgedSentences(programmeTest, system)],
          },
        ]),
  ];
}

function judgedSentences(set: Pick<JudgedSet, 'findings'>, system: UnitSystem): readonly string[] {
  return judgedRows(set, numberPrinter(system)).map(([appliance, verdict, value, limit, , why]) =>
    value === ''
      ? `${appliance}: ${verdict}. ${fullStop(why ?? '')}`
      : `${appliance}: ${verdict}, ${value} Pa against ${limit} Pa, with ${why}.`,
  );
}

function uncertaintyNotes({ uncertainty }: Assessment, system: UnitSystem): readonly ReportNote[] {
  if (uncertainty === undefined) return [];
  return [
    {
      title: 'How sure the numbers are',
      sentences: [
        uncertaintyWords(uncertainty),
        ...importanceRows(uncertainty, numberPrinter(system)).map(
          ([zone, low, half, high, inputs]) =>
            `${zone}: ${half} Pa in half of the draws, ${low} to ${high} Pa in 90 of 100. What matters most: ${inputs}.`,
        ),
      ],
    },
  ];
}

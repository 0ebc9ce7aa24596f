import { drawPressureLadder } from '../drawings/pressure-ladder.js';
import { answerParts } from '../internal/answer-parts.js';
import { ladderData } from '../internal/drawing-data.js';
import { outcomeWords } from '../internal/cure-words.js';
import { findingsByUrgency } from '../internal/findings-by-urgency.js';
import { fullStop } from '../internal/full-stop.js';
import { markup, type Markup } from '../internal/markup.js';
import { makeUpSentence } from '../internal/size-words.js';
import { ladderTable } from '../tables/drawing-tables.js';
import { verdictTable } from '../tables/finding-tables.js';
import { htmlFigure } from './html-figure.js';
import type { HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';

/** The first page has room for so many; the section of findings has them all. */
const verdictsShown = 8;

/**
 * The first page: how far down, which appliance, what cures it and which make-up air is recommended; the ladder; the
 * verdicts.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function answerSection(input: HtmlInput): Markup {
  const { assessment, system } = input;
  const { incomplete, worst, unsolved, findings, flues, closing } = answerParts(assessment, system);
  const [urgent = '', ...others] = findings;
  const ladder = ladderData(assessment);
  return markup`<section aria-labelledby="answer">
<h2 id="answer">Answer</h2>
${
  incomplete.length === 0
    ? undefined
    : markup`<div class="box warning" role="note">${incomplete.map(
        (sentence) => markup`<p>${sentence}</p>
`,
      )}</div>
`
}${[worst, urgent, ...cureSentences(input)].map((sentence) => markup`<p class="lead">${sentence}</p>\n`)}
<p>${[...unsolved, ...others, ...flues, ...unrecommended(input), ...closing].join(' ')}</p>
${
  ladder === undefined
    ? undefined
    : htmlFigure(
        {
          id: 'ladder',
          data: ladder,
          draw: drawPressureLadder,
          caption:
            'Pressure ladder of the worst case. Thick line: limit; dashed box: called near; ' +
            'hatched: beyond it; dot: worst value.',
        },
        system,
      )
}
${ladder !== undefined && ladder.appliances.length === 0 ? htmlTable(ladderTable(ladder), { system }) : undefined}
${htmlTable(verdictTable(assessment), { system, rowsAtMost: verdictsShown })}
</section>
`;
}

/** What cures it stands before the ladder, so that it is on the first sheet however many appliances there are. */
function cureSentences(input: HtmlInput): readonly string[] {
  const { assessment, extras } = input;
  const { cures } = assessment;
  const best = extras.makeUpOptions?.options.find((each) => each.recommended !== undefined);
  if (best !== undefined) {
    return [
      `What cures it, the recommended make-up air: ${best.name}, ${fullStop(best.recommended ?? '')} With it the finding is ${best.verdict}; a test on site decides.`,
    ];
  }
  const worst = findingsByUrgency(assessment.findings).find((each) => each.cures.length > 0);
  const solved =
    cures.status === 'solved'
      ? cures.appliances.find(({ appliance }) => appliance === worst?.appliance)
      : undefined;
  if (solved !== undefined) {
    return [`What cures it: for the ${solved.appliance}, ${outcomeWords(solved.cures, input)}`];
  }
  const cure = worst?.cures[0];
  return cure === undefined ? [] : [`What would cure it, tried first: ${fullStop(cure)}`];
}

/** Where no make-up air is recommended: why. */
function unrecommended({ assessment, extras, system }: HtmlInput): readonly string[] {
  if (extras.makeUpOptions?.options.some(({ recommended }) => recommended !== undefined)) return [];
  const sentence = makeUpSentence(assessment.cures, system);
  return sentence === undefined ? [] : [sentence];
}

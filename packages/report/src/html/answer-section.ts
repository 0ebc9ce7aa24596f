import { drawPressureLadder } from '../drawings/pressure-ladder.js';
import { answerParts } from '../internal/answer-parts.js';
import { cureThatKeeps } from '../internal/cure-that-keeps.js';
import { ladderData } from '../internal/drawing-data.js';
import { findingsByUrgency } from '../internal/findings-by-urgency.js';
import { fullStop } from '../internal/full-stop.js';
import { markup, type Markup } from '../internal/markup.js';
import { cureWords } from '../internal/terminal-cures.js';
import { verdictTable } from '../tables/finding-tables.js';
import { htmlFigure } from './html-figure.js';
import type { HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';

/** The first page has room for so many; the section of findings has them all. */
const verdictsShown = 8;

/**
 * The first page: how far down, which appliance, what cures it; the ladder; the verdicts; the
 * make-up air that is recommended.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function answerSection(input: HtmlInput): Markup {
  const { assessment, extras, system } = input;
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
<p>${[...unsolved, ...others, ...flues, ...closing].join(' ')}</p>
${
  ladder === undefined
    ? undefined
    : htmlFigure(
        {
          id: 'ladder',
          data: ladder,
          draw: drawPressureLadder,
          caption:
            'Pressure ladder of the worst case. The thick line is the limit, the dashed box around ' +
            'it the band called near, the hatched part is beyond it; the dot is the worst value.',
        },
        system,
      )
}
${htmlTable(verdictTable(assessment), { system, rowsAtMost: verdictsShown })}
${recommended(extras)}</section>
`;
}

function cureSentences({ assessment, extras, system }: HtmlInput): readonly string[] {
  const best = extras.makeUpOptions?.options.find((each) => each.recommended !== undefined);
  if (best !== undefined) return [`What cures it: ${fullStop(best.name)}`];
  const keeping = cureThatKeeps(assessment);
  if (keeping !== undefined) {
    return [`What cures its suction, as solved again: ${cureWords(keeping, { system })}`];
  }
  const worst = findingsByUrgency(assessment.findings).find(({ cures }) => cures.length > 0);
  const cure = worst?.cures[0];
  return cure === undefined ? [] : [`What would cure it, tried first: ${fullStop(cure)}`];
}

function recommended({ makeUpOptions }: HtmlInput['extras']): Markup {
  const best = makeUpOptions?.options.find((each) => each.recommended !== undefined);
  if (best === undefined) return markup``;
  return markup`<div class="box"><h3>Recommended make-up air</h3>
<p>${best.name}: ${fullStop(best.recommended ?? '')} With it the finding is ${best.verdict}; a test on site decides.</p></div>
`;
}

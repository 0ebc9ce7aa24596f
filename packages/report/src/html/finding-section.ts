import type { Finding } from '@evendraft/rules';
import { drawExceedance } from '../drawings/exceedance.js';
import { findingsByUrgency } from '../internal/findings-by-urgency.js';
import { fullStop } from '../internal/full-stop.js';
import { markup, type Markup } from '../internal/markup.js';
import { situationWords } from '../internal/situation-words.js';
import { sourceWords } from '../internal/source-words.js';
import { exceedanceTable } from '../tables/drawing-tables.js';
import { codeScreenTable } from '../tables/extra-tables.js';
import { limitSourceTable } from '../tables/finding-tables.js';
import { htmlFigure } from './html-figure.js';
import { htmlFacts, htmlList, type HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';
import { verdictTag } from './verdict-tag.js';

/** More would make a page that nobody reads; the tables hold the rest. */
const toldAtMost = 30;

/**
 * Every finding with its numbers, where its limit comes from and what would cure it; then how likely
 * each limit is exceeded, and code screens.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function findingSection(input: HtmlInput): Markup {
  const { assessment, extras, system } = input;
  const findings = findingsByUrgency(assessment.findings);
  const left = findings.length - toldAtMost;
  return markup`${findings.length === 0 ? markup`<p>Nothing was judged.</p>` : undefined}
${findings.slice(0, toldAtMost).map((finding) => oneFinding(finding, input))}
${left > 0 ? markup`<p class="note">And ${left} more findings, in the table.</p>` : undefined}
${htmlTable(limitSourceTable(assessment), { system })}
${
  extras.exceedance === undefined
    ? undefined
    : markup`${htmlFigure(
        {
          id: 'exceedance',
          data: extras.exceedance,
          draw: drawExceedance,
          caption: 'How likely the worst case is beyond each limit; the whisker is the interval.',
        },
        system,
      )}${htmlTable(exceedanceTable(extras.exceedance), { system })}`
}
${extras.codeScreens === undefined ? undefined : htmlTable(codeScreenTable(extras.codeScreens), { system })}`;
}

function oneFinding(finding: Finding, { assessment, printer }: HtmlInput): Markup {
  const { appliance, zone, verdict, judged, reason, cures, notes } = finding;
  const signed = (pressurePa: number): string => printer.signedPressure(pressurePa);
  return markup`<h3>${appliance} in ${zone} ${verdictTag(verdict)}</h3>
${reason === undefined ? undefined : markup`<p>${fullStop(reason)}</p>`}
${
  judged === undefined
    ? undefined
    : htmlFacts([
        ['Value', `${signed(judged.valuePa)} Pa, ${judged.quantity}`],
        ['Limit', `${signed(judged.limitPa)} Pa, for: ${fullStop(judged.condition)}`],
        ['Situation', `With ${situationWords(judged.situation, assessment, printer)}.`],
        ['Source of the limit', fullStop(sourceWords(judged.source))],
        ["The programme's own test set-up", fullStop(judged.testSetUp)],
      ])
}
${htmlList(notes.map(fullStop))}
${
  cures.length === 0
    ? undefined
    : markup`<p>What would cure it, in the usual order; what was solved again follows with its numbers:</p>
<ol>${cures.map((cure) => markup`<li>${fullStop(cure)}</li>`)}</ol>`
}
`;
}

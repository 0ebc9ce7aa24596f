import { drawFlueDraft } from '../drawings/flue-draft.js';
import type { ApplianceDraft } from '../draft-results.js';
import { calledFor, draftIntroduction, flueSentences } from '../internal/draft-words.js';
import { fullStop } from '../internal/full-stop.js';
import { markup, type Markup } from '../internal/markup.js';
import { airSentence, sharedAirs } from '../internal/spilled-air-words.js';
import { flueTable } from '../tables/drawing-tables.js';
import { draftTables } from '../tables/draft-tables.js';
import { htmlFigure } from './html-figure.js';
import { htmlList, type HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';

/** Drawings of flues; what is beyond is in the table. */
const drawnAtMost = 6;

/**
 * Whether flues draw, spill or run backwards: three answers, each flue, draft by temperature, the air of rooms.
 *
 * @param input - assessment, further results, units
 * @returns HTML; undefined where there is nothing of flues
 */
export function draftSection(input: HtmlInput): Markup | undefined {
  const { assessment, extras, system } = input;
  const { draft } = assessment;
  const { flues = [] } = extras;
  if (draft === undefined && flues.length === 0) return undefined;
  const [answers, ...tables] = draftTables(assessment, system);
  return markup`${
    draft?.status === 'solved'
      ? draftIntroduction(draft).map((sentence) => markup`<p>${sentence}</p>\n`)
      : draft && markup`<p>${fullStop(draft.why)}</p>`
  }
${answers && htmlTable(answers, { system })}
${draft?.status === 'solved' ? draft.appliances.map((found) => oneFlue(found, input)) : undefined}
${flues.slice(0, drawnAtMost).map((data, index) =>
  htmlFigure(
    {
      id: `flue-${index + 1}`,
      data,
      draw: drawFlueDraft,
      caption: `${data.flue}. Here draft counts upward, room minus vent: above zero the flue draws. In the hatched part it is weaker than ${data.weakestBy}. Outside it is no clearance.`,
    },
    system,
  ),
)}
${tables.map((table) => htmlTable(table, { system }))}
${draft?.status === 'solved' ? htmlList(sharedAirs(draft).map((each) => airSentence(each, input))) : undefined}
${htmlTable(flueTable(flues), { system })}
${draft?.status === 'solved' ? htmlList(draft.notStudied.map(({ appliance, reason }) => `Not solved, ${appliance}: ${fullStop(reason)}`)) : undefined}`;
}

function oneFlue(found: ApplianceDraft, input: HtmlInput): Markup {
  return markup`<h3>${found.appliance} in ${found.zone}</h3>
${htmlList([...flueSentences(found, input), ...calledFor(found).map((action) => `What that calls for: ${action}`)])}`;
}

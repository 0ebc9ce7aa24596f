import { drawExhaustCurve } from '../drawings/exhaust-curve.js';
import { drawFanAndSystem } from '../drawings/fan-and-system.js';
import { drawMakeUpOptions } from '../drawings/make-up-options.js';
import { markup, type Markup } from '../internal/markup.js';
import { exhaustCurveTable, fanTable, makeUpOptionTable } from '../tables/drawing-tables.js';
import { deliveredFlowTable, makeUpFlowTable } from '../tables/result-tables.js';
import { htmlFigure } from './html-figure.js';
import type { HtmlInput } from './html-section.js';
import { htmlTable, linesOfStates } from './html-table.js';

/** Drawings of one kind; what is beyond is in the table. */
const drawnAtMost = 6;

/**
 * The air moved: exhaust against pressure, fans against duct and house, make-up options.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function airSection({ assessment, extras, system }: HtmlInput): Markup {
  const { exhaustCurve, fans = [], makeUpOptions } = extras;
  return markup`${
    exhaustCurve === undefined
      ? undefined
      : markup`${htmlFigure(
          {
            id: 'exhaust',
            data: exhaustCurve,
            draw: drawExhaustCurve,
            caption: 'How deep the house goes as more air is exhausted.',
          },
          system,
        )}${htmlTable(exhaustCurveTable(exhaustCurve), { system })}`
  }
${fans.slice(0, drawnAtMost).map((data, index) =>
  htmlFigure(
    {
      id: `fan-${index + 1}`,
      data,
      draw: drawFanAndSystem,
      caption: `${data.device}, ${data.speed}: where the fan's curve meets what it works against.`,
    },
    system,
  ),
)}
${htmlTable(fanTable(fans), { system })}
${htmlTable(deliveredFlowTable(assessment), { system, linesAtMost: linesOfStates })}
${
  makeUpOptions === undefined
    ? undefined
    : markup`${htmlFigure(
        {
          id: 'options',
          data: makeUpOptions,
          draw: drawMakeUpOptions,
          caption: 'What each make-up option leaves of the suction.',
        },
        system,
      )}${htmlTable(makeUpOptionTable(makeUpOptions), { system })}`
}
${htmlTable(makeUpFlowTable(assessment), { system, linesAtMost: linesOfStates })}`;
}

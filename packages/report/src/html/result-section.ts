import { drawDeviceShares } from '../drawings/device-shares.js';
import { drawHouseSection } from '../drawings/house-section.js';
import { drawStateStrip } from '../drawings/state-strip.js';
import { drawWindRose } from '../drawings/wind-rose.js';
import { stripData, windRoseData } from '../internal/drawing-data.js';
import { markup, type Markup } from '../internal/markup.js';
import {
  sectionFlowTable,
  sectionTable,
  sharesTable,
  windTable,
} from '../tables/drawing-tables.js';
import { unsolvedTable, zoneTable } from '../tables/result-tables.js';
import { htmlFigure } from './html-figure.js';
import type { HtmlInput } from './html-section.js';
import { htmlTable } from './html-table.js';
import { situationMatrix } from './situation-matrix.js';

/**
 * The study: the house in section, each zone's extremes, every situation, the wind, the devices' shares.
 *
 * @param input - assessment, further results, units
 * @returns HTML
 */
export function resultSection(input: HtmlInput): Markup {
  const { assessment, extras, system } = input;
  const strip = stripData(assessment);
  const rose = windRoseData(assessment);
  return markup`${htmlTable(unsolvedTable(assessment), { system })}
${
  extras.section === undefined
    ? undefined
    : markup`${htmlFigure(
        {
          id: 'section',
          data: extras.section,
          draw: drawHouseSection,
          caption:
            'The house in section. The closer the hatch, the deeper the zone; an arrow is as wide ' +
            'as its flow, dark where a fan drives it.',
        },
        system,
      )}${htmlTable(sectionTable(extras.section), { system })}${htmlTable(sectionFlowTable(extras.section), { system, rowsAtMost: 40 })}`
}
${htmlTable(zoneTable(assessment), { system })}
${
  strip === undefined
    ? undefined
    : htmlFigure(
        {
          id: 'strip',
          data: strip,
          draw: drawStateStrip,
          caption: 'Every situation, worst on the left; a number marks the worst of a state.',
        },
        system,
      )
}
${situationMatrix(input)}
${
  extras.shares === undefined
    ? undefined
    : markup`${htmlFigure(
        {
          id: 'shares',
          data: extras.shares,
          draw: drawDeviceShares,
          caption: 'What each device adds to the fall; a white bar pushes air in.',
        },
        system,
      )}${htmlTable(sharesTable(extras.shares), { system })}`
}
${
  rose === undefined
    ? undefined
    : markup`${htmlFigure(
        {
          id: 'winds',
          data: rose,
          draw: drawWindRose,
          caption: 'The longer a spoke, the deeper the house with wind from there.',
        },
        system,
      )}${htmlTable(windTable(rose), { system })}`
}`;
}

import type { UnitSystem } from '@evendraft/units';
import type { DrawingOptions } from '../drawings/drawing-options.js';
import { markup, type Markup } from '../internal/markup.js';

/** Widths in which every drawing is made: one for a sheet of paper or a wide screen, one for a phone. */
const widePx = 680;
const narrowPx = 328;

/** A drawing of the page. */
export interface FigureParts<Data> {
  /** Letters and hyphens, unique on the page. */
  readonly id: string;
  readonly caption: string;
  readonly data: Data;
  readonly draw: (data: Data, options: DrawingOptions) => string;
}

/**
 * A drawing in both widths; the style shows the one that fits.
 *
 * @param parts - data, function that draws them, caption
 * @param system - units of the reader
 * @returns HTML
 */
export function htmlFigure<Data>(parts: FigureParts<Data>, system: UnitSystem): Markup {
  const { id, caption, data, draw } = parts;
  const drawn = (width: number, suffix: string): Markup => ({
    finished: draw(data, { width, system, id: `${id}-${suffix}` }),
  });
  return markup`<figure>
<div class="wide">${drawn(widePx, 'wide')}</div>
<div class="narrow">${drawn(narrowPx, 'narrow')}</div>
<figcaption>${caption}</figcaption>
</figure>
`;
}

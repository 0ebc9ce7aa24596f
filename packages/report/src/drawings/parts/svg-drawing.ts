import { markup, type Markup } from '../../internal/markup.js';
import { ink, px, textSize } from './marks.js';

/** What makes a drawing whole. */
export interface SvgParts {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** A short name, read first. */
  readonly title: string;
  /** What the drawing shows, in a sentence or two, for who cannot see it. */
  readonly description: string;
  readonly body: readonly Markup[];
}

const fonts = "'Helvetica Neue', Arial, 'Liberation Sans', sans-serif";

/**
 * A whole drawing: SVG with title and description, its hatches, and no style but its own attributes.
 *
 * @param parts - size, words and what is drawn
 * @returns an SVG element that also stands alone as a file
 */
export function svgDrawing(parts: SvgParts): string {
  const { id, title, description, body } = parts;
  const width = px(parts.width);
  const height = px(parts.height);
  const words = `${id}-title ${id}-desc`;
  return markup`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" preserveAspectRatio="xMinYMin meet" width="${width}" height="${height}" role="img" aria-labelledby="${words}" font-family="${fonts}" font-size="${textSize}" fill="${ink.line}"><title id="${id}-title">${title}</title><desc id="${id}-desc">${description}</desc>${hatches(id)}<rect width="${width}" height="${height}" fill="${ink.paper}"/>${body}</svg>`
    .finished;
}

/**
 * How a hatch of a drawing is used as a fill.
 *
 * @param id - the drawing's id
 * @param name - which hatch
 * @returns a value for `fill`
 */
export function hatchFill(id: string, name: HatchName): string {
  return `url(#${id}-${name})`;
}

/** Hatches from light to dark, and the one beyond a limit, all of them readable in black and white. */
export type HatchName = 'light' | 'medium' | 'dark' | 'beyond';

function hatches(id: string): Markup {
  return markup`<defs>${[
    hatch(`${id}-light`, { spacing: 9, color: ink.mid, angle: 45 }),
    hatch(`${id}-medium`, { spacing: 6, color: ink.deep, angle: 45 }),
    hatch(`${id}-dark`, { spacing: 4, color: ink.deep, angle: 45 }),
    hatch(`${id}-beyond`, { spacing: 6, color: ink.beyond, angle: -45 }),
  ]}</defs>`;
}

function hatch(
  id: string,
  {
    spacing,
    color,
    angle,
  }: { readonly spacing: number; readonly color: string; readonly angle: number },
): Markup {
  return markup`<pattern id="${id}" width="${spacing}" height="${spacing}" patternUnits="userSpaceOnUse" patternTransform="rotate(${angle})"><line x1="0" y1="0" x2="0" y2="${spacing}" stroke="${color}" stroke-width="1.4" stroke-opacity="0.55"/></pattern>`;
}

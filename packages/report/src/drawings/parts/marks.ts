import { markup, type Markup } from '../../internal/markup.js';

/** Colours of every drawing: few, and told apart by how dark they are. */
export const ink = {
  line: '#1c2126',
  soft: '#5a626a',
  rule: '#c9cdd1',
  fill: '#e9ecee',
  deep: '#1f5060',
  mid: '#6f9aa6',
  beyond: '#8a2f1c',
  paper: '#ffffff',
} as const;

/** Size of ordinary text in a drawing [px]. */
export const textSize = 12;

/** The strokes of curves, so that they can be told apart without colour. */
export const strokes: readonly { readonly color: string; readonly dash: string }[] = [
  { color: ink.deep, dash: 'none' },
  { color: ink.beyond, dash: '7 4' },
  { color: ink.line, dash: '2 3' },
  { color: ink.soft, dash: '10 3 2 3' },
];

/** A text in a drawing. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly bold?: boolean;
  readonly color?: string;
  /** A white edge, where the text crosses lines. */
  readonly halo?: boolean;
}

/**
 * A text in a drawing; its baseline is at `y`.
 *
 * @param text - one line
 * @param label - place and dress
 * @returns SVG
 */
export function label(text: string, label: Label): Markup {
  const { anchor = 'start', size = textSize, bold = false, color = ink.line, halo = false } = label;
  const dress = [
    anchor === 'start' ? markup`` : markup` text-anchor="${anchor}"`,
    size === textSize ? markup`` : markup` font-size="${px(size)}"`,
    bold ? markup` font-weight="600"` : markup``,
    color === ink.line ? markup`` : markup` fill="${color}"`,
    halo
      ? markup` paint-order="stroke" stroke="${ink.paper}" stroke-width="3" stroke-linejoin="round"`
      : markup``,
  ];
  return markup`<text x="${px(label.x)}" y="${px(label.y)}"${dress}>${text}</text>`;
}

/** A straight line's dress. */
export interface LineDress {
  readonly color?: string;
  readonly width?: number;
  readonly dash?: string;
}

/**
 * A straight line.
 *
 * @param from - start [px]
 * @param to - end [px]
 * @param dress - colour, width and dashes
 * @returns SVG
 */
export function line(
  from: readonly [number, number],
  to: readonly [number, number],
  dress: LineDress = {},
): Markup {
  const { color = ink.line, width = 1, dash } = dress;
  return markup`<line x1="${px(from[0])}" y1="${px(from[1])}" x2="${px(to[0])}" y2="${px(to[1])}" stroke="${color}" stroke-width="${width}"${dashes(dash)}/>`;
}

/** A box of a drawing [px]. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * A rectangle.
 *
 * @param box - place and size [px]
 * @param dress - fill, and the edge where there is one
 * @returns SVG
 */
export function rectangle(
  box: Box,
  dress: { readonly fill: string; readonly edge?: string; readonly dash?: string },
): Markup {
  const { fill, edge, dash } = dress;
  return markup`<rect x="${px(box.x)}" y="${px(box.y)}" width="${px(Math.max(0, box.width))}" height="${px(Math.max(0, box.height))}" fill="${fill}"${edge === undefined ? undefined : markup` stroke="${edge}"`}${dashes(dash)}/>`;
}

/**
 * A line through points.
 *
 * @param points - at least one [px]
 * @param dress - colour, width and dashes
 * @returns SVG
 */
export function polyline(
  points: readonly (readonly [number, number])[],
  dress: LineDress = {},
): Markup {
  const { color = ink.line, width = 1.8, dash } = dress;
  const path = points.map(([x, y]) => `${px(x)},${px(y)}`).join(' ');
  return markup`<polyline points="${path}" fill="none" stroke="${color}" stroke-width="${width}"${dashes(dash)} stroke-linejoin="round"/>`;
}

function dashes(dash: string | undefined): Markup | undefined {
  return dash === undefined || dash === 'none' ? undefined : markup` stroke-dasharray="${dash}"`;
}

/**
 * A number as it stands in SVG: tenths are finer than any screen.
 *
 * @param value - length or place [px]
 * @returns the number in tenths
 */
export function px(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

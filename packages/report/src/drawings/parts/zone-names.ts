import { markup, type Markup } from '../../internal/markup.js';
import { plainText } from '../../internal/plain-text.js';
import { textWidth, wrapLabel } from './fit-text.js';
import { keyLetter } from './keyed-list.js';
import { label, textSize, type Box } from './marks.js';
import type { SectionPlaces } from './section-places.js';
import { tenths } from './tenths.js';
import { lineHeight } from './text-rows.js';

/** How a zone is named in its box: by its name, or by a letter where that has no room. */
export interface ZoneName {
  readonly zone: string;
  readonly lines: readonly string[];
  /** Present where a list beside the drawing has to say which zone it is. */
  readonly letter?: string;
}

/** Room that words keep from the walls of a zone [px]. */
const margin = 6;
const linesAtMost = 4;

/**
 * How zones are named in their boxes. A name stands in its box only whole; else a letter stands for it.
 *
 * @param zones - zones with their boxes
 * @returns one entry a zone, in order
 */
export function zoneNames(zones: SectionPlaces['zones']): readonly ZoneName[] {
  let letters = 0;
  return zones.map(({ zone, box }) => {
    const room = box.width - 2 * margin - (box.width < 110 ? 0 : 16);
    const lines = wrapLabel(zone, { width: room, size: textSize });
    const whole = lines.join(' ') === plainText(zone);
    // One more line holds the pressure.
    const rooms = Math.min(linesAtMost, Math.floor((box.height - 4) / lineHeight) - 1);
    if (whole && lines.length <= rooms) return { zone, lines };
    letters += 1;
    const letter = keyLetter(letters - 1);
    return { zone, lines: [letter], letter };
  });
}

/** Name and pressure of a zone, laid out in the middle of its box. */
export interface ZoneWords {
  readonly lines: readonly { readonly text: string; readonly bold: boolean }[];
  /** What they cover [px]. */
  readonly box: Box;
}

/**
 * Lays out name and pressure of a zone.
 *
 * @param name - how it is named
 * @param place - box and pressure of the zone [px], [Pa]
 * @returns lines and what they cover; no lines where there is no room for one
 */
export function zoneWords(
  name: ZoneName,
  place: { readonly zoneBox: Box; readonly pressurePa: number | undefined },
): ZoneWords {
  const { zoneBox, pressurePa } = place;
  const value = pressurePa === undefined ? '' : `${tenths(pressurePa)} Pa`;
  const lines =
    zoneBox.height < 2 * lineHeight + 4
      ? [{ text: [...name.lines, value].join(' ').trim(), bold: true }]
      : [
          ...name.lines.map((text) => ({ text, bold: true })),
          ...(value === '' ? [] : [{ text: shortest(value, zoneBox.width), bold: false }]),
        ];
  const shown = zoneBox.height < lineHeight ? [] : lines;
  const width = Math.max(0, ...shown.map(({ text }) => textWidth(text, textSize)));
  const height = shown.length * lineHeight;
  return {
    lines: shown,
    box: {
      x: zoneBox.x + (zoneBox.width - width) / 2,
      y: zoneBox.y + (zoneBox.height - height) / 2,
      width,
      height,
    },
  };
}

/**
 * Name and pressure of a zone.
 *
 * @param words - as they are laid out
 * @returns SVG
 */
export function drawnZoneWords({ lines, box }: ZoneWords): Markup {
  const x = box.x + box.width / 2;
  return markup`${lines.map(({ text, bold }, index) =>
    label(text, { x, y: box.y + 12 + index * lineHeight, anchor: 'middle', bold, halo: true }),
  )}`;
}

/** Every pressure of the drawing is in pascals; where there is no room for the unit, the number stands alone. */
function shortest(value: string, width: number): string {
  return textWidth(value, textSize) <= width ? value : value.replace(' Pa', '');
}

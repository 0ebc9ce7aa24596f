import { markup, type Markup } from '../../internal/markup.js';
import { textWidth } from './fit-text.js';
import { ink, label, line, textSize, type Box } from './marks.js';
import { roundTicks, straightScale, type Interval, type Scale } from './scale.js';

/** One axis of a chart, in the unit that is printed. */
export interface AxisDescription {
  /** What is measured, with its unit. */
  readonly title: string;
  /** Smallest and largest value that must be shown. */
  readonly domain: Interval;
}

/** A chart's axes, drawn, and the places that belong to values on them. */
export interface ChartFrame {
  readonly x: Scale;
  readonly y: Scale;
  /** The plotting area [px]. */
  readonly area: Box;
  readonly drawn: Markup;
}

const titleRoom = 22;

/**
 * Axes with round values, faint lines across, and a title each: the one of y lies above it, flat, so
 * that nobody has to turn the head.
 *
 * @param box - room for the chart with its words [px]
 * @param axes - both axes
 * @returns the frame; it is drawn first
 */
export function chartFrame(
  box: Box,
  axes: { readonly x: AxisDescription; readonly y: AxisDescription },
): ChartFrame {
  const yTicks = roundTicks(axes.y.domain, 5);
  const words = yTicks.map(tickWords);
  const left = Math.max(...words.map((each) => textWidth(each, textSize))) + 8;
  const area: Box = {
    x: box.x + left,
    y: box.y + titleRoom,
    width: box.width - left - 14,
    height: box.height - titleRoom - 40,
  };
  const xTicks = roundTicks(axes.x.domain, Math.max(2, Math.floor(area.width / 90)));
  const x = straightScale(ends(xTicks), [area.x, area.x + area.width]);
  const y = straightScale(ends(yTicks), [area.y + area.height, area.y]);
  const bottom = area.y + area.height;
  const drawn = markup`${[
    label(axes.y.title, { x: box.x, y: box.y + 12, color: ink.soft }),
    ...yTicks.map((tick) =>
      line([area.x, y(tick)], [area.x + area.width, y(tick)], {
        color: tick === 0 ? ink.line : ink.rule,
      }),
    ),
    ...yTicks.map((tick, index) =>
      label(words[index] ?? '', { x: area.x - 6, y: y(tick) + 4, anchor: 'end', color: ink.soft }),
    ),
    ...xTicks.map((tick) => line([x(tick), bottom], [x(tick), bottom + 5], { color: ink.soft })),
    ...xTicks.map((tick) =>
      label(tickWords(tick), { x: x(tick), y: bottom + 18, anchor: 'middle', color: ink.soft }),
    ),
    label(axes.x.title, {
      x: area.x + area.width,
      y: bottom + 35,
      anchor: 'end',
      color: ink.soft,
    }),
  ]}`;
  return { x, y, area, drawn };
}

/**
 * The number on an axis, with a real minus sign.
 *
 * @param value - a round value
 * @returns the number in words for a label
 */
export function tickWords(value: number): string {
  return String(value + 0).replace('-', '\u2212');
}

function ends(ticks: readonly number[]): Interval {
  return [ticks[0] ?? 0, ticks.at(-1) ?? 1];
}

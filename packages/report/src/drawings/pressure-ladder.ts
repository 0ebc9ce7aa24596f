import type { LimitedQuantity, Verdict } from '@evendraft/rules';
import { ladderScale } from '../internal/ladder-scale.js';
import { plainText } from '../internal/plain-text.js';
import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import { tickWords } from './parts/chart-frame.js';
import { textWidth, wrapLabel } from './parts/fit-text.js';
import { keyedList, keyLetter } from './parts/keyed-list.js';
import { ink, label, line, rectangle, textSize } from './parts/marks.js';
import type { Scale } from './parts/scale.js';
import { spreadLabels } from './parts/spread-labels.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
import { lineHeight, textLines } from './parts/text-rows.js';
import { tenths } from './parts/tenths.js';

/** The worst case as a ladder that leads down from outdoors. */
export interface PressureLadderDrawingData {
  /** The situation in words, for the description. */
  readonly situation: string;
  /** Zones in that situation, zone minus outdoors. */
  readonly zones: readonly { readonly zone: string; readonly pressurePa: number }[];
  /** Judged appliances, each in its own worst situation, the most urgent first. */
  readonly appliances: readonly {
    readonly appliance: string;
    readonly verdict: Verdict;
    readonly quantity: LimitedQuantity;
    readonly valuePa: number;
    readonly limitPa: number;
    readonly nearBandPa: number;
  }[];
}

type LadderAppliance = PressureLadderDrawingData['appliances'][number];

const ladderHeight = 216;
/** Room above a ladder for a name of one line, and for what its values are against [px]. */
const headRoom = 44;
const footRoom = 40;
const axisRoom = 40;
const leastColumn = 140;
const zonesShown = 10;
const appliancesShown = 8;

/**
 * The pressure ladder: zones as rungs at their pressure, and a ladder for each appliance with its
 * limit as a line, the band called near around it, and its worst value.
 *
 * @param data - zones and judged appliances
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawPressureLadder(
  data: PressureLadderDrawingData,
  options: DrawingOptions,
): string {
  const { width, id } = options;
  const shown = data.appliances.slice(0, appliancesShown);
  const zonesRoom = width < 500 ? 150 : 176;
  const first = Math.max(1, Math.floor((width - axisRoom - zonesRoom) / leastColumn));
  const next = Math.max(1, Math.floor((width - axisRoom) / leastColumn));
  const rows = [shown.slice(0, first), ...chunks(shown.slice(first), next)];
  const { scaleOf, ticks, stretched } = ladderScale(
    [...data.zones.map(({ pressurePa }) => pressurePa), ...shown.map(({ valuePa }) => valuePa)],
    shown.map(({ limitPa }) => limitPa),
  );
  const { names, key } = rungNames(data.zones, { room: zonesRoom, width });
  let end = 0;
  const body = rows.map((appliances, index) => {
    const left = axisRoom + (index === 0 ? zonesRoom : 0);
    const column = Math.min(190, (width - left) / Math.max(1, appliances.length));
    const heads = appliances.map(({ appliance }) =>
      wrapLabel(appliance, { width: column - 10, size: textSize }),
    );
    const most = Math.max(1, ...heads.map((lines) => lines.length));
    const top = end + headRoom + (most - 1) * lineHeight;
    end = top + ladderHeight + footRoom;
    const y = scaleOf([top, top + ladderHeight]);
    return markup`${[
      axis({ y, ticks, width, top }),
      ...(index === 0 ? [zoneRungs(data.zones, { y, top, names })] : []),
      ...appliances.map((each, position) =>
        applianceLadder(each, {
          ...{ y, id, top, room: column },
          x: left + (position + 0.5) * column,
          name: heads[position] ?? [],
        }),
      ),
    ]}`;
  });
  const list = key(end);
  const foot = [
    stretched ? 'The scale is stretched towards zero.' : '',
    data.appliances.length > shown.length
      ? `${data.appliances.length - shown.length} more in the table.`
      : '',
  ]
    .join(' ')
    .trim();
  const height = list.end + (foot === '' ? 0 : 22);
  return svgDrawing({
    id,
    width,
    height,
    title: 'Pressure ladder of the worst case',
    description: describe(data),
    body: [...body, list.drawn, label(foot, { x: 0, y: height - 4, color: ink.soft })],
  });
}

function axis(parts: {
  readonly y: Scale;
  readonly ticks: readonly number[];
  readonly width: number;
  readonly top: number;
}): Markup {
  const { y, ticks, width, top } = parts;
  let last = Number.POSITIVE_INFINITY;
  return markup`${[
    label('Pa', { x: axisRoom - 8, y: top - 12, anchor: 'end', color: ink.soft }),
    ...[...ticks].reverse().map((tick) => {
      const at = y(tick);
      const crowded = Math.abs(at - last) < textSize + 1 && tick !== 0;
      if (!crowded) last = at;
      const rule = line([axisRoom, at], [width, at], { color: tick === 0 ? ink.line : ink.rule });
      return crowded
        ? rule
        : markup`${rule}${label(tickWords(tick), { x: axisRoom - 8, y: at + 4, anchor: 'end', color: ink.soft })}`;
    }),
  ]}`;
}

/** Zones at their rungs: by name where every name has room, else by a letter that a list under the ladder explains. */
function rungNames(
  zones: PressureLadderDrawingData['zones'],
  { room, width }: { readonly room: number; readonly width: number },
): {
  readonly names: readonly string[];
  readonly key: (top: number) => { readonly drawn: Markup; readonly end: number };
} {
  const shown = zones.slice(0, zonesShown);
  const names = shown.map(({ zone, pressurePa }) => `${tenths(pressurePa)} ${plainText(zone)}`);
  if (names.every((name) => textWidth(name, textSize) <= room - 30)) {
    return { names, key: (end) => ({ drawn: markup``, end: end - 14 }) };
  }
  return {
    names: shown.map(({ pressurePa }, index) => `${tenths(pressurePa)} ${keyLetter(index)}`),
    key: (top) =>
      keyedList(
        shown.map(({ zone }, index) => ({ mark: keyLetter(index), text: zone })),
        { width, top },
      ),
  };
}

function zoneRungs(
  zones: PressureLadderDrawingData['zones'],
  place: { readonly y: Scale; readonly top: number; readonly names: readonly string[] },
): Markup {
  const { y, top, names } = place;
  const shown = zones.slice(0, zonesShown);
  const places = spreadLabels(
    shown.map(({ pressurePa }) => y(pressurePa)),
    { apart: textSize + 3, from: top + 6, to: top + ladderHeight - 2 },
  );
  const x = axisRoom + 8;
  const more = zones.length - shown.length;
  return markup`${[
    label('Zones', { x, y: top - 30, bold: true }),
    label('against outdoors', { x, y: top - 15, color: ink.soft, size: 11 }),
    line([x, y(0)], [x, top + ladderHeight], { color: ink.soft }),
    ...shown.map(({ pressurePa }, index) => {
      const at = places[index] ?? 0;
      return markup`${[
        line([x - 5, y(pressurePa)], [x + 8, y(pressurePa)], { color: ink.deep, width: 3 }),
        line([x + 8, y(pressurePa)], [x + 15, at], { color: ink.soft }),
        label(names[index] ?? '', { x: x + 18, y: at + 4, halo: true }),
      ]}`;
    }),
    ...(more > 0
      ? [
          label(`and ${more} more zones`, {
            x,
            y: top + ladderHeight + 16,
            color: ink.soft,
            size: 11,
          }),
        ]
      : []),
  ]}`;
}

function applianceLadder(
  appliance: LadderAppliance,
  place: {
    readonly y: Scale;
    readonly id: string;
    readonly top: number;
    readonly x: number;
    readonly room: number;
    readonly name: readonly string[];
  },
): Markup {
  const { y, id, top, x, room, name } = place;
  const { limitPa, valuePa, nearBandPa, verdict } = appliance;
  const half = Math.min(22, room / 2 - 34);
  const bottom = top + ladderHeight;
  const band = { from: y(Math.min(0, limitPa + nearBandPa)), to: y(limitPa - nearBandPa) };
  const [limitAt = 0, valueAt = 0] = [y(limitPa), y(valuePa)];
  return markup`${[
    textLines(name, {
      x,
      y: top - 30 - (name.length - 1) * lineHeight,
      anchor: 'middle',
      bold: true,
    }),
    label(appliance.quantity === 'change from baseline' ? 'from baseline' : 'against outdoors', {
      x,
      y: top - 15,
      anchor: 'middle',
      color: ink.soft,
      size: 11,
    }),
    rectangle(
      { x: x - half, y: limitAt, width: 2 * half, height: bottom - limitAt },
      { fill: hatchFill(id, 'beyond') },
    ),
    rectangle(
      { x: x - half, y: band.from, width: 2 * half, height: Math.min(bottom, band.to) - band.from },
      { fill: ink.fill, edge: ink.soft, dash: '2 2' },
    ),
    line([x - half, y(0)], [x - half, bottom], { color: ink.soft }),
    line([x + half, y(0)], [x + half, bottom], { color: ink.soft }),
    line([x - half - 7, limitAt], [x + half + 7, limitAt], { width: 3 }),
    label(`limit ${tenths(limitPa)}`, {
      x: x - room / 2 + 2,
      y: Math.max(limitAt - 5, top + 10),
      size: 11,
      halo: true,
    }),
    markup`<circle cx="${round(x)}" cy="${round(valueAt)}" r="6" fill="${verdict === 'within the limit' ? ink.paper : ink.line}" stroke="${ink.line}" stroke-width="2"/>`,
    label(tenths(valuePa), {
      x: x + half + 9,
      y: valueAt + (Math.abs(valueAt - limitAt) < 10 ? 15 : 4),
      bold: true,
      halo: true,
    }),
    label(verdict, { x, y: bottom + 18, anchor: 'middle', bold: verdict === 'beyond the limit' }),
  ]}`;
}

function describe({ situation, zones, appliances }: PressureLadderDrawingData): string {
  const deepest = zones
    .slice(0, 5)
    .map(({ zone, pressurePa }) => `${zone} ${tenths(pressurePa)} Pa`)
    .join(', ');
  const judged = appliances
    .slice(0, appliancesShown)
    .map(
      ({ appliance, verdict, valuePa, limitPa }) =>
        `${appliance}: ${tenths(valuePa)} Pa against a limit of ${tenths(limitPa)} Pa, ${verdict}`,
    )
    .join('; ');
  return `With ${situation}: ${deepest}. ${judged === '' ? 'No appliance was judged' : judged}.`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

function chunks<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}

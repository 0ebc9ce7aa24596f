import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import type { HouseSectionDrawingData, SectionState } from './house-section-data.js';
import { flowArrows } from './parts/flow-arrows.js';
import { fitText, wrapLabel } from './parts/fit-text.js';
import { tickWords } from './parts/chart-frame.js';
import { ink, label, line, rectangle, textSize, type Box } from './parts/marks.js';
import { sectionPlaces, type SectionPlaces } from './parts/section-places.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';

const sideBySideFrom = 560;
const panelHeight = 330;
const headRoom = 40;

/**
 * The house in section, baseline and worst state: zones tinted and hatched by how deep they stand,
 * arrows as wide as their flow, the neutral level dashed.
 *
 * @param data - zones and two states
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawHouseSection(data: HouseSectionDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const beside = width >= sideBySideFrom;
  const panelWidth = beside ? (width - 20) / 2 : width;
  const all = [data.baseline, data.worst];
  const deepest = Math.min(-1, ...all.flatMap(pressuresOf));
  const mostFlow = Math.max(
    1e-9,
    ...all.flatMap(({ flows }) => flows.map((flow) => Math.abs(flow.volumeFlowM3PerS))),
  );
  const panels = all.map((state, index) => {
    const box: Box = {
      x: beside ? index * (panelWidth + 20) : 0,
      y: beside ? 0 : index * (panelHeight + 20),
      width: panelWidth,
      height: panelHeight,
    };
    return panel(state, { box, data, options, deepest, mostFlow });
  });
  const height = beside ? panelHeight : 2 * panelHeight + 20;
  return svgDrawing({
    id,
    width,
    height: height + 40,
    title: 'The house in section: baseline and worst state',
    description: all.map(describe).join(' '),
    body: [...panels, ...key(deepest, { id, y: height + 8, width })],
  });
}

interface PanelParts {
  readonly box: Box;
  readonly data: HouseSectionDrawingData;
  readonly options: DrawingOptions;
  readonly deepest: number;
  readonly mostFlow: number;
}

function panel(state: SectionState, parts: PanelParts): Markup {
  const { box, data, options, deepest, mostFlow } = parts;
  const places = sectionPlaces(data.zones, {
    x: box.x,
    y: box.y + headRoom,
    width: box.width,
    height: box.height - headRoom - 26,
  });
  return markup`${[
    label(fitText(state.title, box.width, 13), { x: box.x, y: box.y + 15, bold: true, size: 13 }),
    line([box.x, places.groundAt], [box.x + box.width, places.groundAt], {
      color: ink.soft,
      width: 1.5,
    }),
    ...places.zones.map(({ zone, box: zoneBox }) =>
      zoneFace({ zone, zoneBox, deepest, id: options.id, state }),
    ),
    ...neutralLines(state, places),
    flowArrows(state.flows, { places, mostFlow }),
    ...places.zones.map(({ zone, box: zoneBox }) => zoneWords({ zone, zoneBox, state })),
  ]}`;
}

function zoneFace(parts: {
  readonly zone: string;
  readonly zoneBox: Box;
  readonly deepest: number;
  readonly id: string;
  readonly state: SectionState;
}): Markup {
  const { zone, zoneBox, deepest, id, state } = parts;
  const pressure = state.pressures.find((each) => each.zone === zone)?.pressurePa;
  const depth = pressure === undefined ? 0 : Math.max(0, pressure / deepest);
  const hatch = hatchOf(depth);
  return markup`${[
    rectangle(zoneBox, { fill: ink.paper, edge: ink.line }),
    ...(hatch === undefined ? [] : [rectangle(zoneBox, { fill: hatchFill(id, hatch) })]),
  ]}`;
}

function zoneWords(parts: {
  readonly zone: string;
  readonly zoneBox: Box;
  readonly state: SectionState;
}): Markup {
  const { zone, zoneBox, state } = parts;
  const pressure = state.pressures.find((each) => each.zone === zone)?.pressurePa;
  const x = zoneBox.x + zoneBox.width / 2;
  const room = zoneBox.width - (zoneBox.width < 90 ? 10 : 26);
  if (zoneBox.height < 30 || room < 24) return markup``;
  const lines = zoneBox.height < 60 ? 1 : 2;
  const name = wrapLabel(zone, { width: room, size: textSize, lines });
  const value = pressure === undefined ? [] : [`${tenths(pressure)} Pa`];
  const texts = [
    ...name.map((text) => ({ text, bold: true })),
    ...value.map((text) => ({ text: fitText(text, room + 14, textSize), bold: false })),
  ];
  const top = zoneBox.y + zoneBox.height / 2 - (texts.length * 15) / 2 - (lines === 1 ? 0 : 4);
  return markup`${texts.map(({ text, bold }, index) =>
    label(text, { x, y: top + 12 + index * 15, anchor: 'middle', bold, halo: true }),
  )}`;
}

function neutralLines(state: SectionState, places: SectionPlaces): readonly Markup[] {
  return state.neutralLevels.flatMap(({ zone, heightM }) => {
    const place = places.zones.find((each) => each.zone === zone);
    if (place === undefined) return [];
    const y = places.yOf(heightM);
    if (y < place.box.y || y > place.box.y + place.box.height) return [];
    return [
      line([place.box.x, y], [place.box.x + place.box.width, y], { dash: '7 3 2 3', width: 1.6 }),
    ];
  });
}

function hatchOf(depth: number): 'light' | 'medium' | 'dark' | undefined {
  if (depth < 0.1) return undefined;
  if (depth < 0.4) return 'light';
  return depth < 0.75 ? 'medium' : 'dark';
}

function key(
  deepest: number,
  place: { readonly id: string; readonly y: number; readonly width: number },
): readonly Markup[] {
  const { id, y, width } = place;
  const steps = [
    { hatch: 'light', from: 0.1 },
    { hatch: 'medium', from: 0.4 },
    { hatch: 'dark', from: 0.75 },
  ] as const;
  const room = Math.min(110, width / 3);
  return [
    ...steps.flatMap(({ hatch, from }, index) => {
      const box = { x: index * room, y, width: 18, height: 12 };
      return [
        rectangle(box, { fill: ink.paper, edge: ink.soft }),
        rectangle(box, { fill: hatchFill(id, hatch) }),
        label(`from ${tickWords(Number((from * deepest).toFixed(1)))} Pa`, {
          x: box.x + 23,
          y: y + 10,
          size: 11,
        }),
      ];
    }),
    line([0, y + 24], [18, y + 24], { dash: '7 3 2 3', width: 1.6 }),
    label('neutral level: level with outdoors', { x: 23, y: y + 28, size: 11 }),
  ];
}

function pressuresOf({ pressures }: SectionState): readonly number[] {
  return pressures.map(({ pressurePa }) => pressurePa);
}

function describe({ title, pressures }: SectionState): string {
  const words = pressures
    .slice(0, 10)
    .map(({ zone, pressurePa }) => `${zone} ${tenths(pressurePa)} Pa`);
  return `${title}: ${words.join(', ')}.`;
}

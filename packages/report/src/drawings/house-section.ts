import { markup, type Markup } from '../internal/markup.js';
import type { DrawingOptions } from './drawing-options.js';
import type { HouseSectionDrawingData, SectionFlow, SectionState } from './house-section-data.js';
import { tickWords } from './parts/chart-frame.js';
import { wrapLabel } from './parts/fit-text.js';
import { drawnFlows, flowArrows } from './parts/flow-arrows.js';
import { keyedList } from './parts/keyed-list.js';
import { ink, label, line, rectangle, type Box } from './parts/marks.js';
import { sectionPlaces, type SectionPlaces } from './parts/section-places.js';
import { hatchFill, svgDrawing } from './parts/svg-drawing.js';
import { tenths } from './parts/tenths.js';
import { lineHeight, textLines } from './parts/text-rows.js';
import { drawnZoneWords, zoneNames, zoneWords } from './parts/zone-names.js';

const sideBySideFrom = 560;
/** Side by side, zones that would be narrower have no room for words; the states then stand one above the other [px]. */
const leastZoneWidth = 84;
const houseHeight = 264;
/** Where a wide drawing has the states one above the other, so that both fit on a sheet [px]. */
const stackedHeight = 216;
const footRoom = 26;
const between = 20;
const titleSize = 13;
/** From the key of hatches to the list of numbers [px]. */
const keyHeight = 44;

/**
 * The house in section, baseline and worst state: zones tinted and hatched by how deep they stand,
 * numbered arrows as wide as their flow, the neutral level dashed.
 *
 * @param data - zones and two states
 * @param options - width, units, id
 * @returns an SVG element
 */
export function drawHouseSection(data: HouseSectionDrawingData, options: DrawingOptions): string {
  const { width, id } = options;
  const states = [data.baseline, data.worst];
  const { panels, height } = layout(data, width);
  const [first] = panels;
  const deepest = Math.min(-1, ...states.flatMap(pressuresOf));
  const mostFlow = Math.max(
    1e-9,
    ...states.flatMap(({ flows }) => flows.map((flow) => Math.abs(flow.volumeFlowM3PerS))),
  );
  const flows = states.map((state, index) => {
    const places = panels[index]?.places;
    return places === undefined ? [] : drawnFlows(state.flows, { places, mostFlow });
  });
  const named = flowNames([...flows].reverse().flat());
  const names = zoneNames(first?.places.zones ?? []);
  const list = keyedList(
    [
      ...names.flatMap(({ letter, zone }) =>
        letter === undefined ? [] : [{ mark: letter, text: zone }],
      ),
      ...named.texts.map((text, index) => ({ mark: String(index + 1), text })),
    ],
    { width, top: height + 8 + keyHeight },
  );
  return svgDrawing({
    id,
    width,
    height: list.end + 4,
    title: 'The house in section: baseline and worst state',
    description: states.map(describe).join(' '),
    body: [
      ...panels.map(({ title, places, box }, index) => {
        const state = states[index] ?? data.worst;
        const words = places.zones.flatMap(({ zone, box: zoneBox }, place) => {
          const name = names[place];
          const pressurePa = state.pressures.find((each) => each.zone === zone)?.pressurePa;
          return name === undefined ? [] : [zoneWords(name, { zoneBox, pressurePa })];
        });
        return markup`${[
          textLines(title, { x: box.x, y: box.y + 15, bold: true, size: titleSize }),
          line([box.x, places.groundAt], [box.x + box.width, places.groundAt], {
            color: ink.soft,
            width: 1.5,
          }),
          ...places.zones.map((each) => zoneFace(each, { deepest, id, state })),
          ...neutralLines(state, places),
          flowArrows(flows[index] ?? [], {
            ...{ places, mostFlow, numberOf: named.numberOf },
            words: words.map((each) => each.box),
          }),
          ...words.map(drawnZoneWords),
        ]}`;
      }),
      ...key(deepest, { id, y: height + 8, width }),
      list.drawn,
    ],
  });
}

interface Panel {
  readonly title: readonly string[];
  readonly box: Box;
  readonly places: SectionPlaces;
}

/** Both states side by side where that leaves room for words in every zone, else one above the other. */
function layout(
  data: HouseSectionDrawingData,
  width: number,
): { readonly panels: readonly Panel[]; readonly height: number } {
  const laid = (
    beside: boolean,
  ): { readonly panels: readonly Panel[]; readonly height: number } => {
    const panelWidth = beside ? (width - between) / 2 : width;
    const titles = [data.baseline, data.worst].map(({ title }) =>
      wrapLabel(title, { width: panelWidth, size: titleSize }),
    );
    const heads = titles.map(({ length }) => 25 + length * lineHeight);
    const most = Math.max(...heads);
    const tall = !beside && width >= sideBySideFrom ? stackedHeight : houseHeight;
    let end = 0;
    const panels = titles.map((title, index) => {
      const head = beside ? most : (heads[index] ?? most);
      const box = {
        x: beside ? index * (panelWidth + between) : 0,
        y: beside ? 0 : end,
        width: panelWidth,
        height: head + tall + footRoom,
      };
      end = box.y + box.height + (beside || index > 0 ? 0 : between);
      const house = { ...box, y: box.y + head, height: tall };
      return { title, box, places: sectionPlaces(data.zones, house) };
    });
    return { panels, height: end };
  };
  if (width < sideBySideFrom) return laid(false);
  const side = laid(true);
  const narrowest = Math.min(
    ...side.panels.flatMap(({ places }) => places.zones.map(({ box }) => box.width)),
    ...(data.zones.length === 0 ? [width] : []),
  );
  const beside = data.zones.filter(({ kind }) => kind === 'garage' || kind === 'shaft').length;
  return narrowest < (beside > 0 ? 60 : leastZoneWidth) ? laid(false) : side;
}

/** A number for each flow that is drawn in either state; a name that two share says where it is, too. */
function flowNames(flows: readonly SectionFlow[]): {
  readonly numberOf: (flow: SectionFlow) => number;
  readonly texts: readonly string[];
} {
  const keyOf = ({ name, from, to }: SectionFlow): string =>
    JSON.stringify([name, [from ?? '', to ?? ''].sort()]);
  const kept = new Map<string, SectionFlow>();
  for (const flow of flows) if (!kept.has(keyOf(flow))) kept.set(keyOf(flow), flow);
  const keys = [...kept.keys()];
  const all = [...kept.values()];
  return {
    numberOf: (flow) => keys.indexOf(keyOf(flow)) + 1,
    texts: all.map(({ name, from, to }) => {
      const shared = all.filter((other) => other.name === name).length > 1;
      const ends = [from, to].filter((each) => each !== undefined);
      return shared ? `${name}, ${ends.join(' to ')}` : name;
    }),
  };
}

function zoneFace(
  { zone, box }: SectionPlaces['zones'][number],
  parts: { readonly deepest: number; readonly id: string; readonly state: SectionState },
): Markup {
  const { deepest, id, state } = parts;
  const pressure = state.pressures.find((each) => each.zone === zone)?.pressurePa;
  const depth = pressure === undefined ? 0 : Math.max(0, pressure / deepest);
  const hatch = hatchOf(depth);
  return markup`${[
    rectangle(box, { fill: ink.paper, edge: ink.line }),
    ...(hatch === undefined ? [] : [rectangle(box, { fill: hatchFill(id, hatch) })]),
  ]}`;
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

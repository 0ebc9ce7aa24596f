import { markup, type Markup } from '../../internal/markup.js';
import type { SectionFlow } from '../house-section-data.js';
import { freePlace } from './free-place.js';
import { ink, label, line, px, type Box } from './marks.js';
import type { SectionPlaces } from './section-places.js';
import { spreadLabels } from './spread-labels.js';

/** What arrows are drawn into. */
export interface FlowArrowsPlace {
  readonly places: SectionPlaces;
  /** The flow of the widest arrow [m³/s]. */
  readonly mostFlow: number;
  /** The number under which the list beside the drawing names a flow. */
  readonly numberOf: (flow: SectionFlow) => number;
  /** The words of the zones, which numbers between zones keep clear of [px]. */
  readonly words: readonly Box[];
}

interface Arrow {
  readonly flow: SectionFlow;
  readonly size: number;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

type Side = 'left' | 'right';

/** Flows that are less of the largest one are left out; the table has them. */
const leastShare = 0.01;
const arrowsASide = 8;
const widest = 13;
/** How far an arrow to outdoors reaches beyond the wall [px]. */
const reach = 32;
/** How far it reaches into the zone [px]. */
const inwards = 10;
/** From the end of an arrow to the middle of its number [px]. */
const numberBeyond = 11;
const apart = 22;

/**
 * The flows of one state that are drawn: the largest, through the walls of each side, and all between zones.
 *
 * @param flows - flows of one state
 * @param place - zones and scale
 * @returns the largest first
 */
export function drawnFlows(
  flows: readonly SectionFlow[],
  place: Pick<FlowArrowsPlace, 'places' | 'mostFlow'>,
): readonly SectionFlow[] {
  const room = { left: arrowsASide, right: arrowsASide };
  return flows
    .filter(({ volumeFlowM3PerS }) => Math.abs(volumeFlowM3PerS) >= leastShare * place.mostFlow)
    .sort((a, b) => Math.abs(b.volumeFlowM3PerS) - Math.abs(a.volumeFlowM3PerS))
    .filter((flow) => {
      if (!isOuter(flow)) return true;
      const side = sideOf(flow, place.places);
      room[side] -= 1;
      return room[side] >= 0;
    });
}

/**
 * Arrows of the flows, as wide as the flow, each with its number. What was made for air goes through the wall that
 * its zone stands at, leakage through the other one if it can; a thin line leads to a zone that stands at none.
 *
 * @param flows - flows that are drawn
 * @param place - zones, scale and numbers
 * @returns SVG
 */
export function flowArrows(flows: readonly SectionFlow[], place: FlowArrowsPlace): Markup {
  const through = (side: Side): readonly SectionFlow[] =>
    flows.filter((flow) => isOuter(flow) && sideOf(flow, place.places) === side);
  return markup`${[
    ...wallArrows(through('left'), 'left', place),
    ...wallArrows(through('right'), 'right', place),
    ...innerArrows(
      flows.filter((flow) => !isOuter(flow)),
      place,
    ),
  ]}`;
}

function isOuter({ from, to }: SectionFlow): boolean {
  return (from === undefined) !== (to === undefined);
}

function sideOf(flow: SectionFlow, places: SectionPlaces): Side {
  const box = boxOf(flow.from ?? flow.to, places);
  if (box === undefined) return 'left';
  const atLeft = box.x <= places.walls.left + 1;
  const atRight = box.x + box.width >= places.walls.right - 1;
  if (atLeft !== atRight) return atLeft ? 'left' : 'right';
  return flow.kind === 'leakage' ? 'right' : 'left';
}

function wallArrows(
  flows: readonly SectionFlow[],
  side: Side,
  place: FlowArrowsPlace,
): readonly Markup[] {
  const { places } = place;
  const heights = spreadLabels(
    flows.map(({ heightM }) => places.yOf(heightM)),
    { apart, from: places.room.y + 14, to: places.room.y + places.room.height - 6 },
  );
  return flows.flatMap((flow, index) => {
    const box = boxOf(flow.from ?? flow.to, places);
    if (box === undefined) return [];
    const y = heights[index] ?? 0;
    // What stands beside the house has its arrows in the gap between the two.
    const beyond = box.x > places.walls.right + 1;
    const out = side === 'left' || beyond ? -1 : 1;
    const wall = side === 'left' ? places.walls.left : beyond ? box.x : places.walls.right;
    const edge = out < 0 ? box.x : box.x + box.width;
    const [inside, outside] = [wall - out * inwards, wall + out * reach];
    const leaves = (flow.from === undefined) === flow.volumeFlowM3PerS < 0;
    const ends = leaves ? ([inside, outside] as const) : ([outside, inside] as const);
    const middle = Math.min(Math.max(y, box.y + 6), box.y + box.height - 6);
    return [
      ...(Math.abs(edge - wall) > 1
        ? [line([inside, y], [edge - out * 4, middle], { color: ink.soft, dash: '2 2' })]
        : []),
      arrow({ flow, size: sizeOf(flow, place), from: [ends[0], y], to: [ends[1], y] }),
      arrowNumber(flow, place, [outside + out * numberBeyond, y]),
    ];
  });
}

/** The number of a flow on a round ground, so that it can be read over lines and hatches. */
function arrowNumber(
  flow: SectionFlow,
  { numberOf }: FlowArrowsPlace,
  [x, y]: readonly [number, number],
): Markup {
  return markup`${[
    markup`<circle cx="${px(x)}" cy="${px(y)}" r="8" fill="${ink.paper}" stroke="${ink.soft}"/>`,
    label(String(numberOf(flow)), { x, y: y + 3.8, anchor: 'middle', size: 10.5, bold: true }),
  ]}`;
}

function boxOf(name: string | undefined, places: SectionPlaces): Box | undefined {
  return places.zones.find(({ zone }) => zone === name)?.box;
}

/** Through the walls and floors between zones; what passes the same one stands side by side. */
function innerArrows(flows: readonly SectionFlow[], place: FlowArrowsPlace): readonly Markup[] {
  const before = new Map<string, number>();
  return flows.flatMap((flow) => {
    const pair = JSON.stringify([flow.from, flow.to].sort());
    const index = before.get(pair) ?? 0;
    before.set(pair, index + 1);
    return innerArrow(flow, index, place);
  });
}

function innerArrow(flow: SectionFlow, index: number, place: FlowArrowsPlace): readonly Markup[] {
  const backwards = flow.volumeFlowM3PerS < 0;
  const from = boxOf(backwards ? flow.to : flow.from, place.places);
  const to = boxOf(backwards ? flow.from : flow.to, place.places);
  if (from === undefined || to === undefined) return [];
  const size = sizeOf(flow, place);
  const beside = from.y < to.y + to.height - 1 && to.y < from.y + from.height - 1;
  if (beside) {
    const rightwards = from.x < to.x;
    const wall = rightwards ? to.x : from.x;
    const y = Math.min(from.y + from.height, to.y + to.height) - 12 - 22 * index;
    const step = rightwards ? 13 : -13;
    return [
      arrow({ flow, size, from: [wall - step, y], to: [wall + step, y] }),
      innerNumber(flow, place, [
        [wall - step - Math.sign(step) * numberBeyond, y],
        [wall + step + Math.sign(step) * numberBeyond, y],
        [wall, y - numberBeyond - size / 2 - 2],
      ]),
    ];
  }
  const [left, right] = [Math.max(from.x, to.x), Math.min(from.x + from.width, to.x + to.width)];
  const x = Math.min(left + 22 + 38 * index, right - 14);
  const upwards = to.y < from.y;
  const floor = upwards ? from.y : to.y;
  const step = upwards ? -13 : 13;
  const aside = numberBeyond + size / 2 + 3;
  return [
    arrow({ flow, size, from: [x, floor - step], to: [x, floor + step] }),
    innerNumber(flow, place, [
      [x + aside, floor + 11],
      [x + aside, floor - 11],
      [x - aside, floor + 11],
      [x - aside, floor - 11],
    ]),
  ];
}

/** The number of a flow between zones at the first place that is clear of words. */
function innerNumber(
  flow: SectionFlow,
  place: FlowArrowsPlace,
  at: readonly [Point, ...Point[]],
): Markup {
  const disc = ([x, y]: Point): Box => ({ x: x - 8, y: y - 8, width: 16, height: 16 });
  const [first, ...others] = at;
  const box = freePlace([disc(first), ...others.map(disc)], { curves: [], texts: place.words });
  return arrowNumber(flow, place, [box.x + 8, box.y + 8]);
}

type Point = readonly [number, number];

function sizeOf(
  { volumeFlowM3PerS }: SectionFlow,
  { mostFlow }: Pick<FlowArrowsPlace, 'mostFlow'>,
): number {
  return Math.max(1.4, (widest * Math.abs(volumeFlowM3PerS)) / mostFlow);
}

/** A shaft and a head, filled dark for what a fan moves and open for what moves by itself. */
function arrow({ flow, size, from, to }: Arrow): Markup {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const head = Math.min(length / 2, 5 + size / 2);
  const half = size / 2;
  const wing = half + 3;
  const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const shaft = length - head;
  const points = [
    [0, -half],
    [shaft, -half],
    [shaft, -wing],
    [length, 0],
    [shaft, wing],
    [shaft, half],
    [0, half],
  ];
  const path = points.map(([x = 0, y = 0]) => `${px(x)},${px(y)}`).join(' ');
  const driven = flow.kind === 'device';
  return markup`<polygon points="${path}" transform="translate(${px(from[0])} ${px(from[1])}) rotate(${px(angle)})" fill="${driven ? ink.line : ink.paper}" stroke="${ink.line}" stroke-width="1.1"/>`;
}

import { markup, type Markup } from '../../internal/markup.js';
import type { SectionFlow } from '../house-section-data.js';
import { fitText } from './fit-text.js';
import { ink, label, line, px, type Box } from './marks.js';
import type { SectionPlaces } from './section-places.js';
import { spreadLabels } from './spread-labels.js';

/** What arrows are drawn into. */
export interface FlowArrowsPlace {
  readonly places: SectionPlaces;
  /** The flow of the widest arrow [m³/s]. */
  readonly mostFlow: number;
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
const reach = 34;
/** How far it reaches into the zone [px]. */
const inwards = 10;
const apart = 27;

/**
 * Arrows of the flows, as wide as the flow. What was made for air goes through the wall that its zone
 * stands at, leakage through the other one if it can; a thin line leads to a zone that stands at none.
 *
 * @param flows - flows of one state
 * @param place - zones and scale
 * @returns SVG
 */
export function flowArrows(flows: readonly SectionFlow[], place: FlowArrowsPlace): Markup {
  const seen = flows
    .filter(({ volumeFlowM3PerS }) => Math.abs(volumeFlowM3PerS) >= leastShare * place.mostFlow)
    .sort((a, b) => Math.abs(b.volumeFlowM3PerS) - Math.abs(a.volumeFlowM3PerS));
  const outer = seen.filter(({ from, to }) => (from === undefined) !== (to === undefined));
  const inner = seen.filter(({ from, to }) => from !== undefined && to !== undefined);
  const through = (side: Side): readonly SectionFlow[] =>
    outer.filter((flow) => sideOf(flow, place) === side).slice(0, arrowsASide);
  return markup`${[
    ...wallArrows(through('left'), 'left', place),
    ...wallArrows(through('right'), 'right', place),
    ...inner.flatMap((flow) => innerArrow(flow, place)),
  ]}`;
}

function sideOf(flow: SectionFlow, { places }: FlowArrowsPlace): Side {
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
      label(fitText(flow.name, places.sideRoom + 14, 10.5), {
        x: wall + out * (places.sideRoom - 1),
        y: y - 9,
        size: 10.5,
        anchor: out < 0 ? 'start' : 'end',
        halo: true,
      }),
    ];
  });
}

function boxOf(name: string | undefined, places: SectionPlaces): Box | undefined {
  return places.zones.find(({ zone }) => zone === name)?.box;
}

/** Through the wall or the floor between two zones. */
function innerArrow(flow: SectionFlow, place: FlowArrowsPlace): readonly Markup[] {
  const backwards = flow.volumeFlowM3PerS < 0;
  const from = boxOf(backwards ? flow.to : flow.from, place.places);
  const to = boxOf(backwards ? flow.from : flow.to, place.places);
  if (from === undefined || to === undefined) return [];
  const size = sizeOf(flow, place);
  const beside = from.y < to.y + to.height - 1 && to.y < from.y + from.height - 1;
  if (beside) {
    const rightwards = from.x < to.x;
    const wall = rightwards ? to.x : from.x;
    const y = Math.min(from.y + from.height, to.y + to.height) - 12;
    const step = rightwards ? 13 : -13;
    return [arrow({ flow, size, from: [wall - step, y], to: [wall + step, y] })];
  }
  const [left, right] = [Math.max(from.x, to.x), Math.min(from.x + from.width, to.x + to.width)];
  const x = left + (right - left) * 0.16;
  const upwards = to.y < from.y;
  const floor = upwards ? from.y : to.y;
  const step = upwards ? -13 : 13;
  return [arrow({ flow, size, from: [x, floor - step], to: [x, floor + step] })];
}

function sizeOf({ volumeFlowM3PerS }: SectionFlow, { mostFlow }: FlowArrowsPlace): number {
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

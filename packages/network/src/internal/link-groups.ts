import type { FlowLaw, FlowLawDescription } from '@evendraft/airflow';
import type { Arena } from './arena.js';
import type { KernelGroup } from './kernel.js';

/** Fewer links than this of one class join the group of class 0. */
const smallestGroup = 6;

/** What is needed to group links. */
export interface LinksToGroup {
  readonly laws: readonly FlowLaw<FlowLawDescription>[];
  readonly descriptions: readonly FlowLawDescription[];
  /** Places of the ends of links; zones below `zoneCount`. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly zoneCount: number;
}

/** Links of one block and record length. */
interface Shape {
  readonly block: unknown;
  readonly recordLength: number;
  readonly members: number[];
  readonly classes: number[];
}

/**
 * Links that share a block, a record length and a class, each group with room for all its links, those with an
 * end at a boundary first, in the order of their zones.
 */
export function groupLinks(links: LinksToGroup, arena: Arena): KernelGroup[] {
  return shapesOf(links).flatMap(({ recordLength, members, classes }) => {
    return [...membersByClass(members, classes)].map(([recordClass, group]): KernelGroup => {
      const law = links.laws[group[0]!]!;
      return {
        law,
        constant: law.constant === true,
        tallyBlock: law.tallyBlock,
        tallyStartBlock: law.tallyStartBlock,
        members: inOrder(group, links),
        described: Int32Array.from(group),
        recordLength,
        recordClass,
        records: arena.floats(recordLength * group.length),
        zoneEnd: arena.ints(law.tallyBlock === undefined ? 0 : links.zoneCount + 1),
        begin: 0,
        interior: 0,
        end: 0,
      };
    });
  });
}

function shapesOf({ laws, descriptions }: LinksToGroup): Shape[] {
  const shapes: Shape[] = [];
  for (let link = 0; link < laws.length; link++) {
    const law = laws[link]!;
    const description = descriptions[link]!;
    const recordLength = law.recordLength(description);
    let shape: Shape | undefined;
    for (const known of shapes) {
      if (known.block === law.block && known.recordLength === recordLength) shape = known;
    }
    if (shape === undefined) {
      shape = { block: law.block, recordLength, members: [], classes: [] };
      shapes.push(shape);
    }
    shape.members.push(link);
    shape.classes.push(law.recordClass(description));
  }
  return shapes;
}

function membersByClass(
  members: readonly number[],
  classes: readonly number[],
): Map<number, readonly number[]> {
  const usual = usualClasses(classes);
  if (usual.size === 0) return new Map([[0, members]]);
  const byClass = new Map<number, number[]>();
  members.forEach((link, k) => {
    const recordClass = usual.has(classes[k]!) ? classes[k]! : 0;
    const group = byClass.get(recordClass);
    if (group === undefined) byClass.set(recordClass, [link]);
    else group.push(link);
  });
  return byClass;
}

/**
 * Classes that enough links share, found by sorting those that share a rough hash with enough others: most of
 * thousands of random exponents are alone.
 */
function usualClasses(classes: readonly number[]): ReadonlySet<number> {
  const usual = new Set<number>();
  if (classes.length < smallestGroup) return usual;
  const mask = 2 ** Math.ceil(Math.log2(4 * classes.length)) - 1;
  const hash = (value: number): number => (value * 1e9) & mask;
  const counts = new Int32Array(mask + 1);
  for (let k = 0; k < classes.length; k++) counts[hash(classes[k]!)]!++;
  const sorted = Float64Array.from(
    classes.filter((value) => counts[hash(value)]! >= smallestGroup),
  ).sort();
  for (let k = 0; k + smallestGroup <= sorted.length; k++) {
    if (sorted[k] === sorted[k + smallestGroup - 1]) usual.add(sorted[k]!);
  }
  return usual;
}

/** Links with one zone first, then by the zone of least place: a counting sort. */
function inOrder(members: readonly number[], { from, to, zoneCount }: LinksToGroup): Int32Array {
  const keys = new Int32Array(members.length);
  const ends = new Int32Array(2 * zoneCount + 2);
  for (let k = 0; k < members.length; k++) {
    const start = from[members[k]!]!;
    const end = to[members[k]!]!;
    const between = start < zoneCount && end < zoneCount;
    const key = (between ? zoneCount + 1 : 0) + Math.min(start, end, zoneCount);
    keys[k] = key;
    ends[key]!++;
  }
  for (let key = 1; key < ends.length; key++) ends[key]! += ends[key - 1]!;
  const ordered = new Int32Array(members.length);
  for (let k = members.length - 1; k >= 0; k--) ordered[--ends[keys[k]!]!] = members[k]!;
  return ordered;
}

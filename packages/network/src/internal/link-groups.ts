import type { FlowLaw, FlowLawDescription } from '@evendraft/airflow';

/** Links of one law and record length, by their index in the description. */
export interface LinkGroup {
  readonly law: FlowLaw<FlowLawDescription>;
  readonly recordLength: number;
  /** In the order of their zones. */
  readonly members: Int32Array;
  /** In the order of the description. */
  readonly described: Int32Array;
}

/** What is needed to group links. */
export interface LinksToGroup {
  readonly laws: readonly FlowLaw<FlowLawDescription>[];
  readonly descriptions: readonly FlowLawDescription[];
  /** Places of the ends of links; zones below `zoneCount`. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly zoneCount: number;
}

/** Links that share a block and a record length, those of the zones of least place first. */
export function groupLinks(links: LinksToGroup): LinkGroup[] {
  const groups: { law: FlowLaw<FlowLawDescription>; recordLength: number; members: number[] }[] =
    [];
  for (let link = 0; link < links.laws.length; link++) {
    const law = links.laws[link]!;
    const recordLength = law.recordLength(links.descriptions[link]!);
    let group: (typeof groups)[number] | undefined;
    for (const known of groups) {
      if (known.law.block === law.block && known.recordLength === recordLength) group = known;
    }
    if (group === undefined) {
      group = { law, recordLength, members: [] };
      groups.push(group);
    }
    group.members.push(link);
  }
  return groups.map(({ members, ...group }) => ({
    ...group,
    members: inOrder(members, links),
    described: Int32Array.from(members),
  }));
}

/** By the zone of least place: a counting sort. */
function inOrder(members: readonly number[], { from, to, zoneCount }: LinksToGroup): Int32Array {
  const keys = new Int32Array(members.length);
  const ends = new Int32Array(zoneCount + 1);
  for (let k = 0; k < members.length; k++) {
    const key = Math.min(from[members[k]!]!, to[members[k]!]!, zoneCount);
    keys[k] = key;
    ends[key]!++;
  }
  for (let key = 1; key < ends.length; key++) ends[key]! += ends[key - 1]!;
  const ordered = new Int32Array(members.length);
  for (let k = members.length - 1; k >= 0; k--) ordered[--ends[keys[k]!]!] = members[k]!;
  return ordered;
}

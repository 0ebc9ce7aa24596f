import type { NetworkDescription } from '../network-description.js';

/** Places of what a description names. */
export interface DescriptionIndex {
  /** Place of a zone in the description, by id. */
  readonly zoneIndex: ReadonlyMap<string, number>;
  readonly boundaryIndex: ReadonlyMap<string, number>;
  /** Nodes at the ends of each link: zones in the order of the description, then boundaries; −1 for an unknown id. */
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** Looks up the ends of all links once: for thousands of links that is a good part of laying them out. */
export function indexDescription({
  zones,
  boundaries,
  links,
}: NetworkDescription): DescriptionIndex {
  const zoneIndex = indexById(zones);
  const boundaryIndex = indexById(boundaries);
  const nodeOf = (id: string): number => {
    const zone = zoneIndex.get(id);
    if (zone !== undefined) return zone;
    const boundary = boundaryIndex.get(id);
    return boundary === undefined ? -1 : zones.length + boundary;
  };
  const from = new Int32Array(links.length);
  const to = new Int32Array(links.length);
  for (let link = 0; link < links.length; link++) {
    from[link] = nodeOf(links[link]!.from);
    to[link] = nodeOf(links[link]!.to);
  }
  return { zoneIndex, boundaryIndex, from, to };
}

/** Places of items in their list, by id. */
export function indexById(items: readonly { readonly id: string }[]): Map<string, number> {
  const index = new Map<string, number>();
  for (let place = 0; place < items.length; place++) index.set(items[place]!.id, place);
  return index;
}

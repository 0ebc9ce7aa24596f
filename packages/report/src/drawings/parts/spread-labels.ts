/**
 * Moves labels apart along a line so that none touches another, each as near its own place as order allows.
 *
 * @param wanted - where each label would stand, in any order [px]
 * @param room - least distance between two and the range they may use [px]
 * @returns where each stands, in the order given [px]
 *
 * @example
 * spreadLabels([50, 52], { apart: 14, from: 0, to: 100 }); // => [44, 58]
 */
export function spreadLabels(
  wanted: readonly number[],
  room: { readonly apart: number; readonly from: number; readonly to: number },
): readonly number[] {
  const order = wanted.map((_, index) => index);
  order.sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  // Labels that touch form a block, which stands at the mean of what its labels want.
  const blocks: { members: number[]; first: number }[] = [];
  for (const index of order) {
    blocks.push({ members: [index], first: wanted[index] ?? 0 });
    settle(blocks, wanted, room);
  }
  const placed = new Array<number>(wanted.length).fill(0);
  for (const { members, first } of blocks) {
    members.forEach((index, step) => {
      placed[index] = first + step * room.apart;
    });
  }
  return placed;
}

function settle(
  blocks: { members: number[]; first: number }[],
  wanted: readonly number[],
  room: { readonly apart: number; readonly from: number; readonly to: number },
): void {
  for (;;) {
    const last = blocks.at(-1);
    if (last === undefined) return;
    const mean =
      last.members.reduce((sum, index, step) => sum + (wanted[index] ?? 0) - step * room.apart, 0) /
      last.members.length;
    const highest = room.to - (last.members.length - 1) * room.apart;
    last.first = Math.max(room.from, Math.min(mean, highest));
    const before = blocks.at(-2);
    if (before === undefined) return;
    if (before.first + before.members.length * room.apart <= last.first) return;
    before.members.push(...last.members);
    blocks.pop();
  }
}

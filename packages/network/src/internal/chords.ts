import type { Kernel } from './kernel.js';

/** Half-length of the chord that stands for each law in the first, linear solve [Pa]. */
const chordPa = 4;

/** Chords of all laws over ±4 Pa with the records that are prepared, for links that are all on at scale 1. */
export function describeChords(kernel: Kernel): void {
  const { described, activeCount, activeLink, groups, links } = kernel;
  const { pressureDifferencePa, massFlowKgPerS } = links.state;
  for (const side of [-1, 1]) {
    for (let link = 0; link < activeCount; link++) pressureDifferencePa[link] = side * chordPa;
    for (const group of groups) group.law.block(group, links.state);
    for (let place = 0; place < activeCount; place++) {
      const link = activeLink[place]!;
      described.chordSlope[link]! += (side * massFlowKgPerS[place]!) / (2 * chordPa);
      described.chordFlow[link]! += massFlowKgPerS[place]! / 2;
    }
  }
  for (let place = 0; place < activeCount; place++) {
    links.chordSlope[place] = described.chordSlope[activeLink[place]!]!;
    links.chordFlow[place] = described.chordFlow[activeLink[place]!]!;
  }
}

import type { Kernel } from './kernel.js';
import { evaluate } from './sweep.js';

/** Half-length of the chord that stands for each law in the first, linear solve [Pa]. */
const chordPa = 4;

/** Chords of all laws over ±4 Pa with the records that are prepared, for links that are all on at scale 1. */
export function describeChords(kernel: Kernel): void {
  const { described, activeCount, activeLink, links } = kernel;
  const { chordSlope, chordFlow } = links;
  const { massFlowKgPerS } = links.state;
  evaluateAt(kernel, -chordPa);
  chordFlow.set(massFlowKgPerS);
  evaluateAt(kernel, chordPa);
  for (let place = 0; place < activeCount; place++) {
    const low = chordFlow[place]!;
    const high = massFlowKgPerS[place]!;
    const link = activeLink[place]!;
    described.chordSlope[link] = chordSlope[place] = (high - low) / (2 * chordPa);
    described.chordFlow[link] = chordFlow[place] = (high + low) / 2;
  }
}

/** Evaluates all laws at one pressure difference. */
function evaluateAt(kernel: Kernel, pressureDifferencePa: number): void {
  const { activeCount, groups, links } = kernel;
  links.state.pressureDifferencePa.fill(pressureDifferencePa, 0, activeCount);
  for (const group of groups) if (group.begin < group.end) evaluate(kernel, group);
}

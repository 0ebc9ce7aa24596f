import type Fraction from 'fraction.js';

import { exact } from './exact.js';

const points = [
  'n', 'nne', 'ne', 'ene', 'e', 'ese', 'se', 'sse',
  's', 'ssw', 'sw', 'wsw', 'w', 'wnw', 'nw', 'nnw',
] as const; // prettier-ignore

const letters: Readonly<Record<string, string>> = { north: 'n', east: 'e', south: 's', west: 'w' };

/** Degrees clockwise from north of one of the sixteen compass points: `NW` or `north-west` is 315. */
export function readCompassPoint(text: string): Fraction | undefined {
  if (text.length > 20) return undefined;
  const short = text
    .toLowerCase()
    .replace(/north|east|south|west/g, (word) => letters[word] ?? word)
    .replace(/[\s.-]/g, '');
  const index = points.findIndex((point) => point === short);
  return index < 0 ? undefined : exact('22.5').mul(index);
}

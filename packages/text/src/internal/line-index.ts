import type { TextPosition } from '../issue.js';

/** Gives line and column of an offset, counted from 1; an offset beyond the end is the end. */
export function lineIndex(text: string): (offset: number) => TextPosition {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return (offset) => {
    const inside = Math.min(Math.max(offset, 0), text.length);
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= inside) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: inside - (starts[low] ?? 0) + 1 };
  };
}

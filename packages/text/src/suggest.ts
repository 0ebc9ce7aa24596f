/**
 * The candidate that a mistyped word most likely meant, if one is near enough.
 *
 * Case, spaces, hyphens and underscores do not count. Otherwise the distance is the number of
 * letters inserted, dropped, changed or swapped with their neighbour: at most one in up to three
 * letters, two in up to seven, three beyond. Of equals the first wins.
 *
 * @param found - what was typed
 * @param candidates - what would have been accepted
 * @returns a candidate as it is given, or `undefined`
 *
 * @example
 * suggest('hodo', ['hood', 'dryer']); // => 'hood'
 * suggest('floor_area', ['floorArea']); // => 'floorArea'
 * suggest('chimney', ['hood', 'dryer']); // => undefined
 */
export function suggest(found: string, candidates: readonly string[]): string | undefined {
  const word = plain(found);
  if (word.length === 0 || word.length > 60) return undefined;
  const allowed = word.length <= 3 ? 1 : word.length <= 7 ? 2 : 3;
  // A word of which every letter would have to change is no near miss.
  let bestDistance = Math.min(allowed, word.length - 1) + 1;
  let best: string | undefined;
  for (const candidate of candidates) {
    const other = plain(candidate);
    if (Math.abs(other.length - word.length) >= bestDistance) continue;
    const distance = editDistance(word, other);
    if (distance < bestDistance) {
      bestDistance = distance;
      best = candidate;
    }
  }
  return best;
}

function plain(text: string): string {
  return text.toLowerCase().replace(/[\s_-]/g, '');
}

/** Optimal string alignment: each letter is inserted, dropped, changed or swapped at most once. */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, changed);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? a.length;
}

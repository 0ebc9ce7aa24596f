/**
 * The candidate closest to a mistyped text, if it is close enough to be meant.
 *
 * Distance counts inserted, dropped, changed and swapped neighbouring characters (optimal string
 * alignment); at most one for up to three characters, two for more, and never all of them.
 */
export function nearMiss(found: string, candidates: readonly string[]): string | undefined {
  if (found.length === 0 || found.length > 40) return undefined;
  const allowed = found.length <= 3 ? 1 : 2;
  let best: string | undefined;
  let bestDistance = Math.min(allowed, found.length - 1) + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - found.length) >= bestDistance) continue;
    const distance = editDistance(found, candidate);
    if (distance < bestDistance) {
      bestDistance = distance;
      best = candidate;
    }
  }
  return best;
}

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

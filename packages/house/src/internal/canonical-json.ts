/**
 * JSON with the keys of every map in order, so that the same data always give the same text.
 *
 * @param value - plain data that was already found to be a house
 * @returns the text
 */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(inOrder(value));
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  // A map without a prototype keeps keys such as __proto__ as data.
  const ordered: Record<string, unknown> = Object.create(null) as Record<string, unknown>;
  for (const [key, each] of entries) ordered[key] = inOrder(each);
  return ordered;
}

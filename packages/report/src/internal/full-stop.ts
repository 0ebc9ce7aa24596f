/**
 * A sentence that ends, whether its author ended it or not.
 *
 * @param text - a sentence
 * @returns the text with a mark at its end
 */
export function fullStop(text: string): string {
  const trimmed = text.trim();
  return /[.!?]$/u.test(trimmed) ? trimmed : `${trimmed}.`;
}

/**
 * A number with its noun: `1 state`, `2 states`.
 *
 * @param count - how many
 * @param singular - the noun for one
 * @param plural - the noun for more, where it does not just take an s
 * @returns number and noun
 */
export function countWords(count: number, singular: string, plural = `${singular}s`): string {
  return `${count} ${count === 1 ? singular : plural}`;
}

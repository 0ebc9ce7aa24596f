import type { Finding } from '@evendraft/rules';

/**
 * Every remark of the findings once, with the appliances it belongs to unless it belongs to all.
 *
 * @param findings - findings with their notes
 * @returns sentences in the order of first mention
 */
export function noteWords(findings: readonly Finding[]): readonly string[] {
  const holders = new Map<string, string[]>();
  for (const { appliance, notes } of findings) {
    for (const note of new Set(notes)) {
      const names = holders.get(note);
      if (names === undefined) holders.set(note, [appliance]);
      else names.push(appliance);
    }
  }
  return [...holders].map(([note, names]) =>
    names.length === findings.length ? note : `${names.join(', ')}: ${note}`,
  );
}

import type { ApplianceDraft } from './draft-results.js';

/**
 * Whether an appliance's flue leaves gas in the room in a situation that was solved, though it be only from cold.
 *
 * @param found - the appliance
 * @returns true unless its flue draws from cold wherever it was solved
 */
export function spillsSomewhere({ worst }: Pick<ApplianceDraft, 'worst'>): boolean {
  return worst !== undefined && worst.verdict !== 'drafts from cold';
}

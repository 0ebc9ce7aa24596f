import type { Assessment } from '@evendraft/report';
import type { StateBalance } from '@evendraft/studies';

/**
 * The situation that drawings show: that of the attribution, or the deepest one.
 *
 * @param assessment - what was found
 * @returns the situation; undefined where none was solved
 */
export function worstSituation({
  attribution,
  worstCase,
}: Pick<Assessment, 'attribution' | 'worstCase'>): StateBalance | undefined {
  const { situations } = worstCase;
  const attributed = situations.find(
    ({ label, weather, airtightness }) =>
      label === attribution?.label &&
      weather === attribution.weather &&
      airtightness === attribution.airtightness,
  );
  return attributed ?? situations[0];
}

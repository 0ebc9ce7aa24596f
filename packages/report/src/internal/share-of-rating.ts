import type { DeliveredFlow } from '@evendraft/studies';

/**
 * What a device delivers as a share of its rating: `86%`.
 *
 * @param device - rated and delivered flow
 * @returns a whole percentage, empty where there is no rating to compare with
 */
export function shareOfRating(device: DeliveredFlow): string {
  if (device.ratedFlowM3PerS === 0) return '';
  const percent = Math.round((100 * device.deliveredFlowM3PerS) / device.ratedFlowM3PerS);
  return `${percent + 0}%`;
}

import type { DeliveredFlow } from '@evendraft/studies';
import type { NumberPrinter } from './number-printer.js';

/**
 * One device's row of a table: its name, speed, rated and delivered flow, share of the rating, what started it.
 *
 * @param device - what it delivers
 * @param printer - prints flows
 * @returns six cells
 */
export function deliveredFlowCells(
  device: DeliveredFlow,
  printer: NumberPrinter,
): readonly string[] {
  return [
    device.device,
    device.speed,
    printer.flow(device.ratedFlowM3PerS),
    printer.flow(device.deliveredFlowM3PerS),
    shareOfRating(device),
    device.interlocked ? 'by interlock' : '',
  ];
}

/** What it delivers as a whole percentage of its rating, empty where there is no rating. */
function shareOfRating(device: DeliveredFlow): string {
  if (device.ratedFlowM3PerS === 0) return '';
  const percent = Math.round((100 * device.deliveredFlowM3PerS) / device.ratedFlowM3PerS);
  return `${percent + 0}%`;
}

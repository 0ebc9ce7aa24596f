import type { MakeUpFlow } from '@evendraft/studies';
import type { NumberPrinter } from './number-printer.js';

/**
 * One make-up opening's row of a table: its name, its damper, its flow, and its face velocity where asked.
 *
 * @param opening - what it lets in
 * @param printer - prints flows and speeds
 * @param faces - whether there is a column for face velocities
 * @returns three or four cells; the fourth is empty where no face area is known
 */
export function makeUpCells(
  opening: MakeUpFlow,
  printer: NumberPrinter,
  faces: boolean,
): readonly string[] {
  const { faceVelocityMPerS: velocity } = opening;
  return [
    opening.opening,
    opening.damper,
    printer.flow(opening.flowM3PerS),
    ...(faces ? [velocity === undefined ? '' : printer.faceVelocity(velocity)] : []),
  ];
}

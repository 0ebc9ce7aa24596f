import { deliveredFlowCells } from './delivered-flow-cells.js';
import { makeUpCells } from './make-up-cells.js';
import { situationWords } from './situation-words.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * What each device delivers against its rating, and what make-up openings let in, in the worst
 * situation.
 *
 * @param section - page, assessment and printer
 */
export function terminalFlows(section: TerminalSection): void {
  const { page, assessment, printer } = section;
  const worst = assessment.worstCase.situations[0];
  if (worst === undefined || worst.devices.length + worst.makeUp.length === 0) return;
  const interlocked = worst.devices.some((device) => device.interlocked);
  page.heading('Air moved in the worst situation');
  page.paragraph(`With ${situationWords(worst, assessment)}.`);
  if (worst.devices.length > 0) {
    page.blank();
    page.table(
      [
        { header: 'Device', minimum: 10 },
        { header: 'Speed', minimum: 6 },
        { header: 'Rated', align: 'right' },
        { header: 'Delivered', align: 'right' },
        { header: 'Share', align: 'right' },
        ...(interlocked ? [{ header: 'Started', minimum: 9 }] : []),
      ],
      worst.devices.map((device) => deliveredFlowCells(device, printer)),
    );
  }
  if (worst.makeUp.length > 0) {
    const faces = worst.makeUp.some(({ faceVelocityMPerS }) => faceVelocityMPerS !== undefined);
    page.blank();
    page.table(
      [
        { header: 'Make-up opening', minimum: 10 },
        { header: 'Damper' },
        { header: 'Into the house', align: 'right' },
        ...(faces ? [{ header: 'Face velocity', align: 'right' } as const] : []),
      ],
      worst.makeUp.map((opening) => makeUpCells(opening, printer, faces)),
    );
  }
}

import { attributionWords } from './attribution-words.js';
import { situationWords } from './situation-words.js';
import type { TerminalSection } from './terminal-findings.js';

/**
 * Which device costs how many pascals, and the ladder of switching on.
 *
 * @param section - page, assessment and printer
 */
export function terminalAttribution({ page, assessment, printer }: TerminalSection): void {
  const { attribution } = assessment;
  if (attribution === undefined || attribution.shares.length === 0) return;
  page.heading(`What each device adds in ${attribution.zone}`);
  page.paragraph(
    `With ${situationWords(attribution, assessment, printer)}. ${attributionWords(attribution, printer)}`,
  );
  page.blank();
  page.table(
    [
      { header: 'Device', minimum: 9 },
      { header: 'Adds on average', align: 'right' },
      { header: 'Alone', align: 'right' },
      { header: 'As the last', align: 'right' },
      { header: 'Once on, with those above', align: 'right' },
    ],
    attribution.ladder.map(({ device, speed, pressurePa }) => {
      const share = attribution.shares.find((each) => each.device === device);
      return [
        `${device} ${speed}`,
        ...(share === undefined ? [0, 0, 0] : [share.sharePa, share.alonePa, share.lastPa]).map(
          printer.signedPressure,
        ),
        printer.signedPressure(pressurePa),
      ];
    }),
  );
}

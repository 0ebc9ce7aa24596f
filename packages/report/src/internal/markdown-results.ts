import type { WorstPressure } from '@evendraft/studies';
import { countWords } from './count-words.js';
import { deepestPerState } from './deepest-per-state.js';
import { fullStop } from './full-stop.js';
import type { MarkdownSection } from './markdown-findings.js';
import type { MarkdownColumn } from './markdown-page.js';
import { roundedUp } from './proof-sentences.js';
import { deliveredFlowCells } from './delivered-flow-cells.js';
import { makeUpCells } from './make-up-cells.js';
import { rangeWarningWords } from './range-warning-words.js';
import { conditionWords, situationWords } from './situation-words.js';

/**
 * The study itself: each zone's extremes, every situation, the air moved in each state, and what
 * could not be solved.
 *
 * @param section - page, assessment and printer
 */
export function markdownResults(section: MarkdownSection): void {
  unsolved(section);
  zones(section);
  situations(section);
  devices(section);
  makeUp(section);
  beyondRange(section);
}

const right = (header: string): MarkdownColumn => ({ header, align: 'right' });

function unsolved({ page, assessment }: MarkdownSection): void {
  const all = assessment.worstCase.unsolved;
  if (all.length === 0) return;
  page.heading(2, `Not solved: ${countWords(all.length, 'situation')}`);
  page.bullets(
    all.map((each) => {
      const concerns = each.concerns.length === 0 ? '' : ` (${each.concerns.join(', ')})`;
      return `${situationWords(each, assessment)}: ${each.reason}${concerns}. ${fullStop(each.hint)}`;
    }),
  );
}

function zones({ page, assessment, printer }: MarkdownSection): void {
  const { worstCase, house } = assessment;
  if (worstCase.zones.length === 0) return;
  const kinds = new Map(house.zones.map(({ id, kind }) => [id, kind]));
  const where = (worst: WorstPressure): string =>
    `${worst.label} (${conditionWords(worst, assessment)})`;
  page.heading(2, 'Zones');
  page.paragraph(
    "Pressures in Pa, zone minus outdoors at the zone's floor; negative is depressurized. A fall " +
      'is the change from the baseline: same weather and doors, everything off.',
  );
  page.table(
    [
      { header: 'Zone' },
      { header: 'Kind' },
      right('Lowest'),
      { header: 'With' },
      right('Largest fall'),
      right('Its baseline'),
      { header: 'With' },
    ],
    worstCase.zones.map(({ zone, lowest, largestFall }) => [
      zone,
      kinds.get(zone) ?? '',
      printer.signedPressure(lowest.pressurePa),
      where(lowest),
      printer.signedPressure(largestFall.changeFromBaselinePa),
      printer.signedPressure(largestFall.baselinePa),
      where(largestFall),
    ]),
  );
}

function situations({ page, assessment, printer }: MarkdownSection): void {
  const all = assessment.worstCase.situations;
  if (all.length === 0) return;
  const names = [...new Set(all.flatMap((each) => each.zones.map(({ zone }) => zone)))];
  page.heading(2, 'All situations, worst first');
  page.paragraph(
    'For each zone its pressure in Pa and, in brackets, its change from the baseline. On the ' +
      "right the proof of each row: the largest share of a zone's through-flow that does not add " +
      'up, how close in Pa every exact answer lies, and the iterations taken.',
  );
  page.table(
    [
      right('No.'),
      { header: 'Running' },
      { header: 'Weather' },
      ...names.map(right),
      right('Unbalanced'),
      right('Within'),
      right('Iterations'),
    ],
    all.map(({ zones: pressures, proof, ...situation }, index) => {
      const byName = new Map(pressures.map((each) => [each.zone, each]));
      return [
        String(index + 1),
        situation.label,
        conditionWords(situation, assessment),
        ...names.map((name) => {
          const found = byName.get(name);
          if (found === undefined) return '';
          const change = printer.signedPressure(found.changeFromBaselinePa);
          return `${printer.signedPressure(found.pressurePa)} (${change})`;
        }),
        roundedUp(proof.largestRelativeResidual),
        proof.enclosureRadiusPa === undefined ? 'not shown' : roundedUp(proof.enclosureRadiusPa),
        String(proof.iterations),
      ];
    }),
  );
}

function devices({ page, assessment, printer }: MarkdownSection): void {
  const states = deepestPerState(assessment.worstCase.situations);
  const rows = states.flatMap((state) =>
    state.devices.map((device) => [state.label, ...deliveredFlowCells(device, printer)]),
  );
  if (rows.length === 0) return;
  page.heading(2, 'Delivered flow of each device');
  page.paragraph('Each state in the weather in which it goes deepest, against the rated flow.');
  page.table(
    [
      { header: 'Running' },
      { header: 'Device' },
      { header: 'Speed' },
      right('Rated'),
      right('Delivered'),
      right('Share'),
      { header: 'Started' },
    ],
    rows,
  );
}

function makeUp({ page, assessment, printer }: MarkdownSection): void {
  const states = deepestPerState(assessment.worstCase.situations);
  const faces = states.some(({ makeUp: openings }) =>
    openings.some(({ faceVelocityMPerS }) => faceVelocityMPerS !== undefined),
  );
  const rows = states.flatMap((state) =>
    state.makeUp.map((opening) => [state.label, ...makeUpCells(opening, printer, faces)]),
  );
  if (rows.length === 0) return;
  page.heading(2, 'Make-up air');
  page.paragraph('Flow into the house; negative is outwards. Each state as above.');
  page.table(
    [
      { header: 'Running' },
      { header: 'Opening' },
      { header: 'Damper' },
      right('Flow'),
      ...(faces ? [right('Face velocity')] : []),
    ],
    rows,
  );
}

function beyondRange({ page, assessment }: MarkdownSection): void {
  const sentences = rangeWarningWords(assessment.worstCase);
  if (sentences.length === 0) return;
  page.heading(2, 'Laws beyond their range');
  page.bullets(sentences);
}

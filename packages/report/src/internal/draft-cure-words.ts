import { verdictsByUrgency, type CombustionFinding, type Verdict } from '@evendraft/rules';
import type { DraftAfterCure, SolvedCure } from '@evendraft/remedies';
import type { Assessment } from '../assessment.js';
import type { NumberPrinter } from './number-printer.js';

/** Heads of what is told of a flue after a cure; the last is the most urgent finding of draft, spillage and gas. */
export const draftCureHeads = [
  'Flue then',
  'Draft',
  'Cold start',
  'CO',
  'Finding after it',
] as const;

/** Cells of a flue, by {@link draftCureHeads}. */
export type DraftCureCells = readonly [string, string, string, string, Verdict];

/** A flue with its cures, the flue as it is first. */
export interface DraftCureRows {
  readonly appliance: string;
  readonly rows: readonly { readonly cure?: SolvedCure; readonly cells: DraftCureCells }[];
}

/**
 * What the flue of each appliance does as it is and with each cure.
 *
 * @param assessment - what was found
 * @param printer - prints pressures
 * @returns appliances whose flue was to be cured, with their rows
 */
export function draftCureRows(
  { cures, draft }: Assessment,
  printer: NumberPrinter,
): readonly DraftCureRows[] {
  if (cures.status !== 'solved') return [];
  return cures.appliances.flatMap(({ appliance, cures: own }) => {
    const solved = own.flatMap((cure) =>
      cure.draft === undefined ? [] : [{ cure, draft: cure.draft }],
    );
    if (solved.length === 0) return [];
    const found =
      draft?.status === 'solved'
        ? draft.appliances.find((each) => each.appliance === appliance)
        : undefined;
    const verdict = found?.worst?.verdict;
    const asItIs: DraftAfterCure | undefined = found && {
      ...(verdict === undefined ? {} : { verdict }),
      findings: found.findings,
    };
    return [
      {
        appliance,
        rows: [
          ...(asItIs === undefined ? [] : [{ cells: cellsOf(asItIs, printer) }]),
          ...solved.map(({ cure, draft: after }) => ({ cure, cells: cellsOf(after, printer) })),
        ],
      },
    ];
  });
}

/**
 * What the columns of cured flues mean, and that none of it is a clearance.
 *
 * @returns sentences
 */
export function draftCureIntroduction(): readonly string[] {
  return [
    'While an appliance spills or an alarm sounds: stop it, open doors and windows, leave, and call the emergency or gas service from outdoors. What follows is for afterwards.',
    'Each flue solved again with each cure, in the situations that then press it most: what it does, draft once warm in Pa (negative draws), how long it spills from a cold start, carbon monoxide at rest in ppm where most gathers. A flue that drafts in this is still to be tested on site.',
  ];
}

function cellsOf(
  { verdict, why, findings }: DraftAfterCure,
  printer: NumberPrinter,
): DraftCureCells {
  const urgent = verdictsByUrgency.find((each) =>
    findings.some(({ finding }) => finding.verdict === each),
  );
  const [draft, spillage, gas] = [
    largest(findings, (each) => each.about === 'draft'),
    largest(
      findings,
      (each) => each.about === 'spillage time' && each.finding.why.includes('cold'),
    ),
    largest(findings, (each) => each.about === 'carbon monoxide'),
  ];
  return [
    verdict ?? (why?.includes('no flue') === true ? 'no open flue' : 'not judged'),
    draft === undefined || draft === null ? '' : printer.signedPressure(draft),
    spillage === null ? 'no end' : spillage === undefined ? '' : `${Math.round(spillage)} s`,
    gas === null ? 'no end' : gas === undefined ? '' : gas.toFixed(0),
    urgent ?? 'not judged',
  ];
}

/** The greatest number found of those asked for; null where one has no end, undefined where there is none. */
function largest(
  findings: readonly CombustionFinding[],
  wanted: (finding: CombustionFinding) => boolean,
): number | null | undefined {
  return findings
    .filter(wanted)
    .reduce<number | null | undefined>(
      (most, { found }) =>
        most === null || found === null ? null : Math.max(most ?? found, found),
      undefined,
    );
}

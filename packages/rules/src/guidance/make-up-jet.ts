import type { Diffuser, DiffuserKind, Source } from '@evendraft/house';
import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import type { RuleFinding } from '../rule-finding.js';
import { velocityGuidance } from './make-up-velocity.js';

/**
 * How far the air of an outlet carries: its velocity on the axis falls as K √A/x beyond the distance K √A [-].
 *
 * Source: ASHRAE Handbook Fundamentals, chapter on space air diffusion, centreline velocities of jets; from memory.
 * A ceiling diffuser spreads its air and has no number here.
 */
export const jetConstants: Readonly<Record<Exclude<DiffuserKind, 'ceiling diffuser'>, number>> = {
  'open end': 6,
  grille: 4.7,
  'perforated panel': 4,
};

const jets: Source = {
  document: 'ASHRAE Handbook Fundamentals',
  section: 'space air diffusion, centreline velocities of jets',
  status: 'memory',
};

/** Air that comes out of an outlet beside a hood. */
export interface JudgeJetInput {
  readonly subject: string;
  readonly flowM3PerS: number;
  /** Face of the outlet [m²]. */
  readonly areaM2: number;
  readonly diffuser: Diffuser;
  /** Other guidance than the published one [m/s]. */
  readonly largestMPerS?: number;
}

/**
 * Whether make-up air arrives at a hood fast enough to push fumes out of its grip.
 *
 * v(x) = v0 K √A/x, at most v0. It is held against the guidance at a hood; where the outlet is turned away, or its
 * kind is not known to throw a jet, the finding says what it rests on.
 *
 * @param input - flow, face, kind and distance of the outlet
 * @returns the finding; undefined where the distance is not given
 */
export function judgeJetAtHood(input: JudgeJetInput): RuleFinding | undefined {
  const { subject, flowM3PerS, areaM2, diffuser } = input;
  const { kind = 'grille', distanceToHoodM: distanceM, directedAway = false } = diffuser;
  if (distanceM === undefined) return undefined;
  const guidance = velocityGuidance['at the hood'];
  const largest = input.largestMPerS ?? guidance.largestMPerS;
  const face = flowM3PerS / areaM2;
  // A ceiling diffuser slows faster than any jet named here; the slowest of them errs towards a warning.
  const constant = jetConstants[kind === 'ceiling diffuser' ? 'perforated panel' : kind];
  const arriving = face * Math.min(1, (constant * Math.sqrt(areaM2)) / distanceM);
  return judgedBy(
    {
      id: 'make-up-jet-at-hood',
      title: 'Make-up air that arrives at the hood',
      region: 'everywhere',
      source: input.largestMPerS === undefined ? guidance.source : ownGuidance,
      notes: [
        'Guidance, not a limit.',
        guidance.effect,
        `How the jet slows: ${jets.document}, ${jets.section ?? ''}, from memory; walls and ceilings beside it carry it farther.`,
        ...(diffuser.kind === undefined ? ['Its kind is not given: taken as a grille.'] : []),
        ...(directedAway ? ['It is turned away from the hood: less arrives than is judged.'] : []),
      ],
    },
    {
      subject,
      why: 'It brings in make-up air beside a hood.',
      arithmetic: [
        line('face velocity', 'flow / face area', amount.speed(face)),
        line('distance', 'to the hood, given', amount.length(distanceM)),
        line(
          'velocity at the hood',
          `face velocity × ${constant} × √(face area) / distance, at most the face velocity`,
          amount.speed(arriving),
        ),
        line('guidance', 'largest', amount.speed(largest)),
      ],
    },
    {
      held: directedAway
        ? 'within the limit'
        : { value: arriving, limit: largest, sense: 'at most' },
      satisfiedBy: ['A larger or perforated outlet, farther from the hood or turned away from it.'],
    },
  );
}

const ownGuidance: Source = { document: 'given by the caller', status: 'our choice' };

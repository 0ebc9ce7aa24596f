import type { Source } from '@evendraft/house';
import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import type { RuleFinding } from '../rule-finding.js';

/** Where the velocity of make-up air is told. */
export type VelocityPlace = 'at the hood' | 'at a diffuser' | 'in a quiet duct' | 'in a hood duct';

/** Guidance on one velocity. */
export interface VelocityGuidance {
  readonly largestMPerS: number;
  readonly source: Source;
  /** What a larger one does, as a sentence. */
  readonly effect: string;
}

const manuals: Source = {
  document: 'residential duct design manuals',
  section: 'from uncertain memory; an editable default',
  status: 'memory',
};

/**
 * Guidance on velocities of make-up air and hood ducts.
 *
 * Source: guidance for commercial kitchens (75 fpm near a hood) and residential duct manuals (700 fpm at a supply
 * outlet, 900 fpm quiet, 1,500 fpm hood ducts); from memory.
 */
export const velocityGuidance: Readonly<Record<VelocityPlace, VelocityGuidance>> = {
  'at the hood': {
    largestMPerS: siOf('75 fpm', 'speed'),
    source: { document: 'design guidance for commercial kitchens', status: 'memory' },
    effect: 'Faster air crosses the plume and can push fumes out of the grip of the hood.',
  },
  'at a diffuser': {
    largestMPerS: siOf('700 fpm', 'speed'),
    source: manuals,
    effect: 'Faster air is heard and felt in the room.',
  },
  'in a quiet duct': {
    largestMPerS: siOf('900 fpm', 'speed'),
    source: manuals,
    effect: 'Faster air is heard in living rooms.',
  },
  'in a hood duct': {
    largestMPerS: siOf('1500 fpm', 'speed'),
    source: manuals,
    effect: 'Faster air is loud and costs much of the pressure of the fan.',
  },
};

/** A velocity to be held against guidance. */
export interface JudgeVelocityInput {
  /** Id of the opening, duct or device. */
  readonly subject: string;
  readonly place: VelocityPlace;
  /** Flow through it [m³/s]. */
  readonly flowM3PerS: number;
  /** Area that it goes through: the free face of the outlet, or the inside of the duct [m²]. */
  readonly areaM2: number;
  /** Other guidance than the published one [m/s]. */
  readonly largestMPerS?: number;
}

/**
 * Velocity of make-up air at the hood or in a duct, held against guidance.
 *
 * v = flow / area. Near the hood the velocity at the outlet is taken, which is the largest on the way:
 * beyond it the jet slows, so the finding errs towards a warning.
 *
 * @param input - place, flow and area
 * @returns the finding
 */
export function judgeVelocity(input: JudgeVelocityInput): RuleFinding {
  const { subject, place, flowM3PerS, areaM2 } = input;
  const guidance = velocityGuidance[place];
  const largest = input.largestMPerS ?? guidance.largestMPerS;
  const velocity = flowM3PerS / areaM2;
  return judgedBy(
    {
      id: `velocity-${place.replaceAll(' ', '-')}`,
      title: `Velocity of air ${place}`,
      region: 'everywhere',
      source:
        input.largestMPerS === undefined
          ? guidance.source
          : { document: 'given by the caller', status: 'our choice' },
      notes: ['Guidance, not a limit.', guidance.effect],
    },
    {
      subject,
      why: `Air moves ${place}.`,
      arithmetic: [
        line('flow', 'given', amount.flow(flowM3PerS)),
        line('area', 'given', amount.area(areaM2)),
        line(
          'velocity',
          'flow / area',
          Number.isFinite(velocity) ? amount.speed(velocity) : 'none',
        ),
        line('guidance', 'largest', amount.speed(largest)),
      ],
    },
    {
      held: { value: velocity, limit: largest, sense: 'at most' },
      satisfiedBy: [
        place === 'at the hood'
          ? 'A larger or more even outlet, farther from the hood and turned away from it.'
          : place === 'at a diffuser'
            ? 'A larger outlet.'
            : 'A larger duct.',
      ],
    },
  );
}

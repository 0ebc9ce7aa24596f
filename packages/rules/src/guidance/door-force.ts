import type { Source } from '@evendraft/house';
import { doorForce } from '@evendraft/studies';
import { judgedBy, type Rule } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import { RulesArgumentError } from '../rules-argument-error.js';
import type { RuleFinding } from '../rule-finding.js';

/** A door with a pressure across it. */
export interface DoorForceInput {
  /** Id of the door. */
  readonly door: string;
  /** Pressure that holds the door shut; negative where it pushes the door open [Pa]. */
  readonly holdingPressurePa: number;
  readonly widthM: number;
  readonly heightM: number;
  /** From the handle to the latch edge [m]. */
  readonly handleToEdgeM: number;
  /** Force of a closer at the handle [N]; none when absent. */
  readonly closerN?: number;
  /** True for a door between rooms, which accessibility rules speak of. */
  readonly interior: boolean;
}

/** One guide on what a person can open. */
export interface DoorForceGuide {
  readonly id: string;
  readonly title: string;
  readonly largestN: number;
  readonly interiorOnly: boolean;
  readonly source: Source;
}

const lifeSafety: Source = {
  document: 'NFPA 101, Life Safety Code',
  section: 'force to open a door leaf',
  status: 'memory',
};

/**
 * What a person can open: 30 lbf sets a door in motion, 15 lbf opens it, 5 lbf for interior doors.
 *
 * Source: life-safety code and accessibility standards; from memory.
 */
export const doorForceGuides: readonly DoorForceGuide[] = [
  {
    id: 'door-set-in-motion',
    title: 'Force that sets a door in motion',
    largestN: siOf('30 lbf', 'force'),
    interiorOnly: false,
    source: lifeSafety,
  },
  {
    id: 'door-open',
    title: 'Force that opens a door',
    largestN: siOf('15 lbf', 'force'),
    interiorOnly: false,
    source: lifeSafety,
  },
  {
    id: 'door-accessible',
    title: 'Force that opens an interior door, accessibility',
    largestN: siOf('5 lbf', 'force'),
    interiorOnly: true,
    source: { document: 'accessibility standards (ICC A117.1, ADA)', status: 'memory' },
  },
];

/**
 * The force on a door held against what a person can open; a door pushed open is told apart.
 *
 * force = ± pressure part of `doorForce` + closer: negative where the pressure outdoes the closer.
 *
 * @param input - pressure, size, handle and closer
 * @param guides - other guides than those from memory
 * @returns one finding for each guide that is for the door
 * @throws RulesArgumentError where the handle is not on the door
 */
export function judgeDoorForce(
  input: DoorForceInput,
  guides: readonly DoorForceGuide[] = doorForceGuides,
): readonly RuleFinding[] {
  const force = openingForce(input);
  const { door, holdingPressurePa, widthM, heightM, handleToEdgeM, closerN = 0, interior } = input;
  const flies = force < 0;
  return guides
    .filter(({ interiorOnly }) => interior || !interiorOnly)
    .map((guide) => {
      const rule: Rule = {
        id: guide.id,
        title: guide.title,
        region: 'everywhere',
        source: guide.source,
        notes: [
          'Guidance from memory on what a person can open; a child or a frail person can open less.',
          flies
            ? 'The pressure outdoes the closer: unlatched, the door flies open, and shut against it, it may not latch.'
            : 'The pressure holds the door shut: it sticks, and let go, it slams.',
        ],
      };
      return judgedBy(
        rule,
        {
          subject: door,
          why: interior ? 'It is a door between rooms.' : 'It is a door to outdoors.',
          arithmetic: [
            line('pressure', 'that holds it shut', amount.pressure(holdingPressurePa)),
            line('width', 'given', amount.length(widthM)),
            line('height', 'given', amount.length(heightM)),
            line('handle', 'to the latch edge', amount.length(handleToEdgeM)),
            line('closer', 'at the handle', amount.force(closerN)),
            line(
              'force',
              'pressure × area × width / (2 × (width − handle)) + closer',
              amount.force(force),
            ),
            line('largest', 'of the guide', amount.force(guide.largestN)),
          ],
        },
        {
          held: { value: Math.abs(force), limit: guide.largestN, sense: 'at most' },
          satisfiedBy: [
            'Less pressure across the door: make-up air, or air that can pass beside it.',
          ],
        },
      );
    });
}

/** Force at the handle that opens the door; negative where the pressure outdoes the closer [N]. */
function openingForce(input: DoorForceInput): number {
  const { holdingPressurePa, widthM, heightM, handleToEdgeM, closerN = 0 } = input;
  if (!(handleToEdgeM >= 0 && handleToEdgeM < widthM)) {
    throw new RulesArgumentError('handleToEdgeM', handleToEdgeM, 'from 0 to less than the width');
  }
  const ofPressure = doorForce(holdingPressurePa, { widthM, heightM, handleToEdgeM, closerN: 0 });
  return Math.sign(holdingPressurePa) * ofPressure + closerN;
}

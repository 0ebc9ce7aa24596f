import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms, type CombustionRoom } from '../internal/combustion-rooms.js';
import { outdoorOpenings } from '../internal/outdoor-openings.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import type { ArithmeticLine } from '../rule-finding.js';
import type { CombustionOpening, ScreenFacts } from '../screen-facts.js';
import { freeAreaOf } from './louvre-free-area.js';

const onIn2PerBtu = (btuPerHour: string) =>
  siOf('1 in2', 'area') / siOf(`${btuPerHour} Btu/h`, 'power');
const twoDirect = onIn2PerBtu('4000');
const twoHorizontal = onIn2PerBtu('2000');
const single = onIn2PerBtu('3000');

/**
 * Free area of the one opening to outdoors that a room with gas appliances may have [m²].
 *
 * Source: NFPA 54-2012, 9.3.3.2, read: 1 in² for each 3,000 Btu/h.
 *
 * @param inputW - input of all appliances in the room [W]
 * @returns the free area [m²]
 */
export function singleOutdoorOpening(inputW: number): number {
  return single * inputW;
}

/** Openings to outdoors for combustion air. Source: NFPA 54-2012, 9.3.3, read. */
export const combustionAirOutdoorOpenings: Screen = {
  rule: {
    id: 'combustion-air-outdoor-openings',
    title: 'Openings from a room with gas appliances to outdoors',
    region: 'United States',
    source: {
      document: 'NFPA 54',
      edition: '2012',
      section: '9.3.3.1 and 9.3.3.2',
      status: 'found',
    },
    notes: [
      'With one opening it begins within 12 in. of the top, with two one is high and one low; their place is not judged. An intake stands 12 in. or more above grade (9.3.8.8).',
    ],
  },
  run({ house, facts }) {
    return combustionRooms(this.rule, house, (room) => {
      const openings = outdoorOpenings({ house, facts }, room.zone);
      const [first, second] = [...(openings ?? [])].sort(
        (one, other) => freeAreaOf(other) - freeAreaOf(one),
      );
      if (first === undefined) {
        return openings === undefined
          ? lacks(
              this.rule,
              {
                subject: room.zone,
                why: room.why,
                arithmetic: [
                  ...room.arithmetic,
                  line(
                    'one opening',
                    '1 in² for each 3,000 Btu/h',
                    amount.area(singleOutdoorOpening(room.inputW)),
                  ),
                ],
              },
              ['its openings to outdoors for combustion air, if it has any'],
            )
          : judgedBy(
              this.rule,
              { subject: room.zone, why: room.why, arithmetic: room.arithmetic },
              {
                held: { value: 0, limit: singleOutdoorOpening(room.inputW), sense: 'at least' },
                satisfiedBy: ['Openings to outdoors, or air from other rooms by another method.'],
              },
            );
      }
      const lines = (openings ?? []).map((one) =>
        line(
          'opening to outdoors',
          `free area, ${one.path ?? 'direct'}`,
          amount.area(freeAreaOf(one)),
        ),
      );
      return second === undefined
        ? judgeOne(this, { room, facts, free: freeAreaOf(first), lines })
        : judgeTwo(this, { room, pair: [first, second], lines });
    });
  },
};

function judgeTwo(
  { rule }: Screen,
  given: {
    readonly room: CombustionRoom;
    readonly pair: readonly [CombustionOpening, CombustionOpening];
    readonly lines: readonly ArithmeticLine[];
  },
) {
  const { room, pair, lines } = given;
  const horizontal = pair.some(({ path }) => path === 'horizontal duct');
  const each = (horizontal ? twoHorizontal : twoDirect) * room.inputW;
  return judgedBy(
    rule,
    {
      subject: room.zone,
      why: room.why,
      arithmetic: [
        ...room.arithmetic,
        ...lines,
        line(
          'each of two',
          horizontal
            ? '1 in² for each 2,000 Btu/h, horizontal ducts'
            : '1 in² for each 4,000 Btu/h, direct or vertical ducts',
          amount.area(each),
        ),
      ],
    },
    {
      held: { value: freeAreaOf(pair[1]), limit: each, sense: 'at least' },
      satisfiedBy: ['Two openings of that free area, or more where louvres cover them.'],
    },
  );
}

function judgeOne(
  { rule }: Screen,
  given: {
    readonly room: CombustionRoom;
    readonly facts: ScreenFacts;
    readonly free: number;
    readonly lines: readonly ArithmeticLine[];
  },
) {
  const { room, facts, free, lines } = given;
  const connectors = room.appliances.map(
    ({ id, flue }) => facts.appliances?.[id]?.ventConnectorAreaM2 ?? flue?.connector[0]?.areaM2,
  );
  const known = connectors.filter((area) => area !== undefined);
  const connectorArea = known.reduce((sum, area) => sum + area, 0);
  const byInput = singleOutdoorOpening(room.inputW);
  const limit = Math.max(byInput, connectorArea);
  const whole = known.length === connectors.length;
  const arithmetic = [
    ...room.arithmetic,
    ...lines,
    line('by input', '1 in² for each 3,000 Btu/h', amount.area(byInput)),
    line(
      'by vent connectors',
      'all connectors in the room together',
      whole ? amount.area(connectorArea) : 'not stated',
    ),
    line('least', 'the larger of the two', amount.area(limit)),
  ];
  // Short by what is known is short whatever the connectors are.
  if (!whole && free >= limit) {
    return lacks(rule, { subject: room.zone, why: room.why, arithmetic }, [
      'the area of every vent connector in the room',
    ]);
  }
  return judgedBy(
    rule,
    { subject: room.zone, why: room.why, arithmetic },
    {
      held: { value: free, limit, sense: 'at least' },
      satisfiedBy: ['One opening of that free area within 12 in. of the top, or two openings.'],
    },
  );
}

import type { Appliance } from '@evendraft/house';
import { notMeantFor, withoutLimit } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside, takesRoomAir } from '../internal/burners.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import type { ArithmeticLine } from '../rule-finding.js';

/** Air that a hearth takes, by rules of thumb that texts give [m³/s]. */
const rulesOfThumb = {
  open: [
    thumb('open fireplace', '500 cfm', 'national oilheat research manual, read'),
    thumb('start and burn-down behind glass doors, low end', '100 cfm', 'university text, read'),
    thumb('start and burn-down behind glass doors, high end', '200 cfm', 'university text, read'),
    thumb('large open fire, up to', '800 cfm', 'university text, read'),
  ],
  closed: [
    thumb('wood stove at full fire, low end', '17 cfm', 'newspaper science column, read'),
    thumb('wood stove at full fire, high end', '20 cfm', 'newspaper science column, read'),
  ],
} as const;

/**
 * The air that fireplaces and stoves take, as rules of thumb have it. A flow, not a limit.
 *
 * Source: a national oilheat research manual, a university text and a newspaper column, read.
 */
export const hearthAir: Screen = {
  rule: {
    id: 'hearth-air',
    title: 'Air that a fireplace or stove takes, by rules of thumb',
    region: 'everywhere',
    source: {
      document: 'National oilheat research manual; university cold-climate text; newspaper column',
      status: 'found',
    },
    notes: [
      'The texts differ by more than four times. A hearth is exhaust: describe it as a device of that flow to see what it does to the other appliances.',
    ],
  },
  run({ house }) {
    const hearths = burnersInside(house).filter((one) => isHearth(one) && takesRoomAir(one));
    if (hearths.length === 0) {
      return [
        notMeantFor(this.rule, {
          why: 'No fireplace or stove inside takes its air from the room.',
        }),
      ];
    }
    return hearths.map((one) =>
      withoutLimit(
        this.rule,
        {
          subject: one.id,
          why: `It is a ${one.kind}, ${one.vent}.`,
          arithmetic: one.vent === 'open hearth' ? rulesOfThumb.open : rulesOfThumb.closed,
        },
        'The texts give what it takes and no limit for it.',
      ),
    );
  },
};

function isHearth({ vent, kind }: Appliance): boolean {
  return (
    vent === 'open hearth' ||
    vent === 'closed stove' ||
    kind === 'fireplace' ||
    kind === 'wood stove'
  );
}

function thumb(label: string, flow: string, text: string): ArithmeticLine {
  return line(label, text, amount.flow(siOf(flow, 'volumeFlow')));
}

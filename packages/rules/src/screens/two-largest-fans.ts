import { judgedBy, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside, burnsSolidFuel, named } from '../internal/burners.js';
import { exhaustSystems, highestFlow, suppliesWith } from '../internal/exhaust-systems.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const perFloorArea = siOf('0.15 cfm/ft2', 'flowPerArea');

/**
 * Net exhaust of the two largest fans against 15 cfm for each 100 ft² of floor.
 *
 * Source: ASHRAE 62.2, 6.4 (2010 to 2019), restated by a government page; to whom it applies, and that
 * outdoor air supplied with the fans is taken off, from memory.
 */
export const twoLargestFans: Screen = {
  rule: {
    id: 'two-largest-fans',
    title: 'Net exhaust of the two largest fans',
    region: 'United States',
    source: {
      document: 'ASHRAE 62.2',
      edition: '2010 to 2019',
      section: '6.4',
      status: 'found second-hand',
    },
    notes: [
      'Whom it applies to, and that supply which starts with the fans is taken off, is from memory. A committee member said that the limit presumes a tight house. Newer editions accept a recognised test of combustion safety instead.',
      'A summer cooling fan, which runs with windows open, is not counted; nor are fans of the attic or under the slab.',
    ],
  },
  run({ house }) {
    const concerned = burnersInside(house).filter(
      (one) => one.vent === 'natural draft' || one.vent === 'open hearth' || burnsSolidFuel(one),
    );
    if (concerned.length === 0) {
      return [
        notMeantFor(this.rule, {
          why: 'No atmospherically vented or solid-fuel appliance stands inside.',
        }),
      ];
    }
    const fans = exhaustSystems(house).slice(0, 2);
    const supplies = new Map(
      fans.flatMap(({ id }) =>
        suppliesWith(house, id).map(({ device, flowM3PerS }) => [device.id, flowM3PerS] as const),
      ),
    );
    const exhaust = fans.reduce((sum, fan) => sum + highestFlow(fan), 0);
    const supply = [...supplies.values()].reduce((sum, flow) => sum + flow, 0);
    const net = exhaust - supply;
    const allowed = perFloorArea * house.floorAreaM2;
    return [
      judgedBy(
        this.rule,
        {
          why: `Inside stand ${named(concerned)}.`,
          arithmetic: [
            ...fans.map((fan) =>
              line(fan.id, 'rated flow at its highest speed', amount.flow(highestFlow(fan))),
            ),
            ...[...supplies].map(([id, flow]) =>
              line(id, 'supply that runs with them, taken off', amount.flow(flow)),
            ),
            line('net exhaust', 'the two largest less supply', amount.flow(net)),
            line('floor area', 'given', amount.area(house.floorAreaM2)),
            line('allowed by area', '15 cfm for each 100 ft²', amount.flowPerArea(perFloorArea)),
            line('allowed', 'floor area × allowed by area', amount.flow(allowed)),
            line('excess', 'net exhaust less allowed', amount.flow(net - allowed)),
          ],
        },
        {
          held: { value: net, limit: allowed, sense: 'at most' },
          satisfiedBy: [
            'Cut the two fans by the excess, or supply the excess from outdoors while they run.',
            'Direct-vent or sealed appliances in place of those named.',
          ],
        },
      ),
    ];
  },
};

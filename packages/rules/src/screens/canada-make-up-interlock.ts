import { lacks, notMeantFor, judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import {
  burnersInside,
  burnsSolidFuel,
  isNeitherDirectNorMechanical,
  named,
} from '../internal/burners.js';
import { exhaustSystems, highestFlow, suppliesWith } from '../internal/exhaust-systems.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const trigger = siOf('75 L/s', 'volumeFlow');

/**
 * Make-up air by a supply fan interlocked with the exhaust, in houses with spillage-prone appliances.
 *
 * Source: National Building Code of Canada 2010 and 2015, 9.32.3.8.(1) to (5); structure found in a
 * statement of intent, the number from memory.
 */
export const canadaMakeUpInterlock: Screen = {
  rule: {
    id: 'canada-make-up-interlock',
    title: 'Supply fan interlocked with exhaust',
    region: 'Canada',
    source: {
      document: 'National Building Code of Canada',
      edition: '2010 and 2015',
      section: '9.32.3.8.(1) to (5)',
      status: 'memory',
    },
    notes: [
      'A test by CGSB-51.71 that shows that the house cannot be drawn down so far is an exemption. Provinces differ: Ontario asks, with solid fuel, for a heat-recovery ventilator whose exhaust never exceeds its intake.',
      'A fan under a basement slab against soil gas needs no make-up air (Ontario).',
    ],
  },
  run({ house }) {
    const prone = burnersInside(house).filter(
      (one) => isNeitherDirectNorMechanical(one) || burnsSolidFuel(one),
    );
    const why =
      prone.length > 0
        ? `Inside stand ${named(prone)}, which suction can upset: all exhaust is concerned.`
        : 'Without such appliances only devices with a net exhaust above 75 L/s are concerned.';
    const concerned = exhaustSystems(house).filter(
      (device) => prone.length > 0 || highestFlow(device) > trigger,
    );
    if (concerned.length === 0) {
      return [notMeantFor(this.rule, { why })];
    }
    return concerned.map((device) => {
      const flow = highestFlow(device);
      const supplies = suppliesWith(house, device.id);
      const supplied = supplies.reduce((sum, { flowM3PerS }) => sum + flowM3PerS, 0);
      const arithmetic = [
        prone.length > 0
          ? line('trigger', `beside ${named(prone)} all exhaust counts`, amount.flow(0))
          : line('trigger', 'without spillage-prone appliances', amount.flow(trigger)),
        line(device.id, 'rated flow at its highest speed', amount.flow(flow)),
        ...supplies.map(({ device: fan, flowM3PerS }) =>
          line(fan.id, 'supply that runs with it', amount.flow(flowM3PerS)),
        ),
        line('net exhaust', 'flow less supply', amount.flow(flow - supplied)),
      ];
      if (!Number.isFinite(flow)) return lacks(this.rule, { why, arithmetic }, ['its flow']);
      return judgedBy(
        this.rule,
        { subject: device.id, why, arithmetic },
        {
          held: { value: supplied, limit: flow, sense: 'at least' },
          satisfiedBy: [
            `A supply fan of that flow that starts with the ${device.id}, or appliances that suction cannot upset.`,
          ],
        },
      );
    });
  },
};

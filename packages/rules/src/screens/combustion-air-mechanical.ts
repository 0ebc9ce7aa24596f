import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms, perThousandBtuPerHour } from '../internal/combustion-rooms.js';
import { exhaustSystems, highestFlow } from '../internal/exhaust-systems.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const flowPerWatt = siOf('0.35 cfm', 'volumeFlow') / perThousandBtuPerHour;

/**
 * Combustion air by a fan: 0.35 cfm for each 1,000 Btu/h, and what the exhaust of the space takes besides.
 *
 * Source: NFPA 54-2012, 9.3.6 and 9.3.6.1, read.
 */
export const combustionAirMechanical: Screen = {
  rule: {
    id: 'combustion-air-mechanical',
    title: 'Combustion air by a mechanical supply',
    region: 'United States',
    source: { document: 'NFPA 54', edition: '2012', section: '9.3.6', status: 'found' },
    notes: [
      'The burners are interlocked so that none fires while the supply is off (9.3.6.2 and following).',
    ],
  },
  run({ house, facts }) {
    return combustionRooms(this.rule, house, (room) => {
      const forBurners = flowPerWatt * room.inputW;
      const here = exhaustSystems(house).filter(({ zone }) => zone === room.zone);
      const exhaust = here.reduce((sum, device) => sum + highestFlow(device), 0);
      const least = forBurners + exhaust;
      const supply = facts.zones?.[room.zone]?.combustionSupplyM3PerS;
      const arithmetic = [
        ...room.arithmetic,
        line('for the burners', '0.35 cfm for each 1,000 Btu/h', amount.flow(forBurners)),
        ...here.map((device) =>
          line(device.id, 'exhaust from the same room', amount.flow(highestFlow(device))),
        ),
        line('least supply', 'for the burners and all exhaust of the room', amount.flow(least)),
      ];
      if (supply === undefined) {
        return lacks(this.rule, { subject: room.zone, why: room.why, arithmetic }, [
          'a mechanical supply of combustion air, if it has one',
        ]);
      }
      return judgedBy(
        this.rule,
        {
          subject: room.zone,
          why: room.why,
          arithmetic: [...arithmetic, line('supply', 'given', amount.flow(supply))],
        },
        {
          held: { value: supply, limit: least, sense: 'at least' },
          satisfiedBy: ['A supply of that flow, interlocked with the burners.'],
        },
      );
    });
  },
};

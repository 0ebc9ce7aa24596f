import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems, highestFlow } from '../internal/exhaust-systems.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const perArea = siOf('0.02 cfm/ft2', 'flowPerArea');
const perPerson = siOf('15 cfm', 'volumeFlow');

/**
 * Ventilation of a new dwelling in Minnesota that runs all the time.
 *
 * total = 0.02 cfm/ft² × conditioned floor area + 15 cfm × (bedrooms + 1); half of it continuous. Source: Minnesota Rules
 * chapter 1322, table read in two of its cells, formula from memory.
 */
export const minnesotaVentilationRate: Screen = {
  rule: {
    id: 'minnesota-ventilation-rate',
    title: 'Ventilation of a new dwelling that runs all the time',
    region: 'Minnesota',
    source: {
      document: 'Minnesota Rules chapter 1322',
      section: 'ventilation rate',
      status: 'memory',
    },
    notes: [
      'The formula is from memory; with the upper end of its floor-area row it gives the cells of the table that were read: 3 bedrooms, 1,000 to 1,500 ft², 90 and 45 cfm; 2,501 to 3,000 ft², 120 and 60 cfm.',
      'What runs all the time and only exhausts is suction that never ends: it is in every state of the study.',
    ],
  },
  run({ house, facts }) {
    const { bedrooms } = facts;
    const why = 'It is for any new dwelling.';
    const area = line('floor area', 'conditioned', amount.area(house.floorAreaM2));
    if (bedrooms === undefined) {
      return [lacks(this.rule, { why, arithmetic: [area] }, ['the number of bedrooms'])];
    }
    const total = perArea * house.floorAreaM2 + perPerson * (bedrooms + 1);
    const exhaust = exhaustSystems(house)
      .filter(({ continuous }) => continuous)
      .reduce((sum, device) => sum + highestFlow(device), 0);
    const balanced = house.ventilators
      .filter(({ continuous }) => continuous)
      .reduce((sum, { supplyFlowM3PerS }) => sum + supplyFlowM3PerS, 0);
    return [
      judgedBy(
        this.rule,
        {
          why,
          arithmetic: [
            area,
            line('bedrooms', 'given', String(bedrooms)),
            line(
              'total',
              '0.02 cfm for each ft² and 15 cfm for each bedroom and one more',
              amount.flow(total),
            ),
            line('continuous', 'half of the total', amount.flow(total / 2)),
            line('balanced', 'ventilators that run all the time, supply', amount.flow(balanced)),
            line('exhaust', 'devices that run all the time', amount.flow(exhaust)),
          ],
        },
        {
          held: { value: balanced + exhaust, limit: total / 2, sense: 'at least' },
          satisfiedBy: ['A balanced ventilator of that flow that runs all the time.'],
        },
      ),
    ];
  },
};

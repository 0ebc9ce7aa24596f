import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside } from '../internal/burners.js';
import type { Screen } from '../internal/screen.js';

/** Band around the dew point that is called near; our choice [K]. */
const nearK = 5;

/**
 * The gas at the top of the flue is warmer than its dew point in steady firing.
 *
 * Source: common practice, no source; that water condenses below the dew point is physics.
 */
export const flueExitDewPoint: Screen = {
  rule: {
    id: 'flue-exit-dew-point',
    title: 'Gas at the top of the flue against its dew point',
    region: 'everywhere',
    source: { document: 'common practice', status: 'common practice, no source' },
    notes: ['Within 5 K of the dew point is called near (our choice).'],
  },
  run({ house, facts }) {
    const drawing = burnersInside(house).filter(
      ({ vent }) => vent === 'natural draft' || vent === 'fan assisted' || vent === 'induced draft',
    );
    if (drawing.length === 0) {
      return [
        notMeantFor(this.rule, {
          why: 'No appliance inside has a flue that is meant to stay dry.',
        }),
      ];
    }
    return drawing.map(({ id, vent }) => {
      const { flueExitTemperatureC, flueDewPointC } = facts.appliances?.[id] ?? {};
      const about = { subject: id, why: `It is ${vent}.` };
      if (flueExitTemperatureC === undefined || flueDewPointC === undefined) {
        return lacks(this.rule, about, [
          ...(flueExitTemperatureC === undefined
            ? ['the temperature of the gas at the top of its flue']
            : []),
          ...(flueDewPointC === undefined ? ['the dew point of that gas'] : []),
        ]);
      }
      return judgedBy(
        this.rule,
        {
          ...about,
          arithmetic: [
            line('gas at the top', 'given', amount.temperature(flueExitTemperatureC)),
            line('dew point', 'given', amount.temperature(flueDewPointC)),
          ],
        },
        {
          held: {
            value: flueExitTemperatureC,
            limit: flueDewPointC,
            sense: 'at least',
            nearBand: nearK,
          },
          satisfiedBy: ['A smaller or insulated flue, a liner, or an appliance of another vent.'],
        },
      );
    });
  },
};

import { insideZoneKinds } from '@evendraft/house';
import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { exhaustSystems, highestFlow } from '../internal/exhaust-systems.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';

const tightTrigger = siOf('75 L/s', 'volumeFlow');
const otherTrigger = siOf('125 L/s', 'volumeFlow');

/**
 * Whether a house needs a venting test: by its exhaust, its hearth and how tight it is.
 *
 * Source: CMHC procedure, read in a course text for gas technicians that restates it.
 */
export const canadaVentingTest: Screen = {
  rule: {
    id: 'canada-venting-test',
    title: 'Need for a venting test on site',
    region: 'Canada',
    source: {
      document: 'CMHC combustion venting procedure',
      section: 'screening, as a course text for gas technicians restates it',
      status: 'found second-hand',
    },
    notes: [
      'Walls that are not said to be of stucco are taken as not, where the year is known.',
      'An air-sealed house counts as tight from 125 L/s, where any other asks for the test too.',
      'Within means that this screen does not ask for the test; other rules may.',
    ],
  },
  run({ house, facts }) {
    const exhaust = exhaustSystems(house).reduce((sum, device) => sum + highestFlow(device), 0);
    const inside = house.zones.filter(({ kind }) => insideZoneKinds.includes(kind));
    const fireplace = house.appliances.some(
      ({ vent, fuel, zone }) =>
        vent === 'open hearth' && fuel !== 'gas' && inside.some(({ id }) => id === zone),
    );
    const { builtInYear: year, stuccoed = false } = facts;
    const tight =
      stuccoed || (year !== undefined && (year > 1993 || (year > 1970 && exhaust > tightTrigger)));
    const trigger = tight || (year === undefined && !stuccoed) ? tightTrigger : otherTrigger;
    const known = year !== undefined || stuccoed;
    return [
      judgedBy(
        this.rule,
        {
          why: known
            ? `By its year and its walls it counts as a ${tight ? 'tight' : 'usual'} house.`
            : 'Neither its year nor its walls are stated: it is taken as a tight house, the stricter case.',
          arithmetic: [
            line('exhaust', 'all devices at their highest speed', amount.flow(exhaust)),
            line('trigger', tight || !known ? 'tight house' : 'other house', amount.flow(trigger)),
            line('wood fireplace', 'in the house', fireplace ? 'yes' : 'no'),
          ],
        },
        {
          held: fireplace
            ? 'beyond the limit'
            : { value: exhaust, limit: trigger, sense: 'at most' },
          satisfiedBy: ['A venting test on site by a qualified person.'],
        },
      ),
    ];
  },
};

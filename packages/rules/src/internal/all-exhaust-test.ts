import type { Source } from '@evendraft/house';
import type { TestConfiguration } from '../test-configuration.js';

/**
 * The worst-case set-up that the North American programmes share, as a state that can be run.
 *
 * @param source - where the programme asks for it
 * @returns one configuration
 */
export function allExhaustTest(source: Source): TestConfiguration {
  return {
    id: 'all-exhaust',
    words:
      'Dryer and all exhaust fans at high; interior doors and the air handler as they lower the zone most; hearth damper closed, the summer cooling fan off; the appliance of the smallest input fires first, then all.',
    exhaust: 'all',
    without: ['summer cooling fan'],
    doors: 'where worse',
    hearthDamper: 'closed',
    airHandler: 'where it lowers the zone',
    firing: 'smallest input first, then all',
    baseline: 'everything off, doors open',
    source,
  };
}

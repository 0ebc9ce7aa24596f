import { insideZoneKinds } from '@evendraft/house';
import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { line } from '../internal/arithmetic-line.js';
import { burnersInside } from '../internal/burners.js';
import type { Screen } from '../internal/screen.js';

/**
 * Carbon monoxide alarms, as advice: one on each floor and near the bedrooms of a house that burns
 * something or has a garage.
 *
 * Source: common practice; codes differ in where they ask for alarms.
 */
export const coAlarms: Screen = {
  rule: {
    id: 'co-alarms',
    title: 'Carbon monoxide alarms, as advice',
    region: 'everywhere',
    source: { document: 'common practice', status: 'common practice, no source' },
    notes: [
      'An alarm warns of harm and does not prevent it. By UL 2034, from memory, it sounds after 60 to 240 minutes at 70 ppm, 10 to 50 minutes at 150 ppm, 4 to 15 minutes at 400 ppm: it says nothing of lower levels.',
      'CSA F300:22 asks for an alarm with solid fuel in place of a limit of pressure.',
    ],
  },
  run({ house, facts }) {
    const burners = burnersInside(house);
    const garage = house.zones.some(({ kind }) => kind === 'garage');
    if (burners.length === 0 && !garage) {
      return [notMeantFor(this.rule, { why: 'Nothing that burns and no garage was described.' })];
    }
    const why =
      burners.length > 0 ? 'Something burns in the house.' : 'A garage adjoins the house.';
    const zones = house.zones.filter(
      ({ kind }) => insideZoneKinds.includes(kind) && kind !== 'closet',
    );
    const stated = zones.map(({ id }) => ({ id, alarm: facts.zones?.[id]?.coAlarm }));
    const unknown = stated.filter(({ alarm }) => alarm === undefined);
    const bare = stated.filter(({ alarm }) => alarm === false);
    const arithmetic = stated.map(({ id, alarm }) =>
      line(id, 'alarm', alarm === undefined ? 'not stated' : alarm ? 'yes' : 'no'),
    );
    if (bare.length === 0 && unknown.length > 0) {
      return [
        lacks(
          this.rule,
          { why, arithmetic },
          unknown.map(({ id }) => `whether the ${id} has a carbon monoxide alarm`),
        ),
      ];
    }
    return [
      judgedBy(
        this.rule,
        { why, arithmetic },
        {
          held: bare.length > 0 ? 'beyond the limit' : 'within the limit',
          satisfiedBy: ['An alarm on each floor and near the bedrooms, as local code asks.'],
        },
      ),
    ];
  },
};

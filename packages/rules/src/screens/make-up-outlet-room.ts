import { judgedBy, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { joinedZones, openingsToRooms } from '../internal/free-openings.js';
import type { Screen } from '../internal/screen.js';

/**
 * Make-up air enters the room of its exhaust, or a room joined to it by permanent openings that are no
 * smaller than the make-up opening.
 *
 * Source: International Residential Code M1503.6.1; from memory.
 */
export const makeUpOutletRoom: Screen = {
  rule: {
    id: 'make-up-outlet-room',
    title: 'Room that make-up air enters',
    region: 'United States',
    source: {
      document: 'International Residential Code',
      section: 'M1503.6.1',
      status: 'memory',
    },
    notes: ['A door that is usually open is not a permanent opening.'],
  },
  run({ house }) {
    const inlets = [
      ...house.makeUpOpenings.map(({ id, zone, interlock, openLaw }) => ({
        id,
        zone,
        driver: interlock.driver,
        areaM2: openLaw.kind === 'orifice' ? openLaw.areaM2 : undefined,
      })),
      ...house.devices.flatMap(({ id, zone, direction, interlock }) =>
        direction === 'supply' && interlock !== undefined
          ? [{ id, zone, driver: interlock.driver, areaM2: undefined }]
          : [],
      ),
    ];
    if (inlets.length === 0) {
      return [notMeantFor(this.rule, { why: 'No make-up air is interlocked with exhaust.' })];
    }
    return inlets.map(({ id, zone, driver, areaM2 }) => {
      const exhaust = house.devices.find((device) => device.id === driver);
      if (exhaust === undefined) {
        return notMeantFor(this.rule, {
          subject: id,
          why: `It follows the ${driver}, which is not a device with a room.`,
        });
      }
      const same = exhaust.zone === zone;
      const joined = joinedZones(house, exhaust.zone).includes(zone);
      const free = openingsToRooms(house, zone).reduce((sum, one) => sum + one.areaM2, 0);
      const arithmetic = [
        line('exhaust', `room of the ${driver}`, exhaust.zone),
        line('make-up air', 'room that it enters', zone),
        ...(same
          ? []
          : [
              line('permanent openings', 'of that room to others, free area', amount.area(free)),
              line(
                'make-up opening',
                'area',
                areaM2 === undefined ? 'not stated' : amount.area(areaM2),
              ),
            ]),
      ];
      return judgedBy(
        this.rule,
        { subject: id, why: `It follows the ${driver}.`, arithmetic },
        {
          held: same
            ? 'within the limit'
            : !joined
              ? 'beyond the limit'
              : areaM2 === undefined
                ? 'near the limit'
                : { value: free, limit: areaM2, sense: 'at least' },
          satisfiedBy: [
            `An outlet in the ${exhaust.zone}, or permanent openings to it of at least the area of the make-up opening.`,
          ],
        },
      );
    });
  },
};

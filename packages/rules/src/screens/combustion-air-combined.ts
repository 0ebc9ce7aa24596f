import { judgedBy, lacks, notMeantFor } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { combustionRooms } from '../internal/combustion-rooms.js';
import { outdoorOpenings } from '../internal/outdoor-openings.js';
import type { Screen } from '../internal/screen.js';
import { singleOutdoorOpening } from './combustion-air-outdoor-openings.js';
import { standardCombustionVolume } from './combustion-air-volume.js';
import { freeAreaOf } from './louvre-free-area.js';

/**
 * Combustion air partly from indoors and partly from outdoors, with one opening.
 *
 * opening = size for outdoors alone × (1 − available volume / required volume). Source: NFPA 54-2012,
 * 9.3.4, read; its worked example in the annex (California Mechanical Code 2013, Appendix F 3.0).
 */
export const combustionAirCombined: Screen = {
  rule: {
    id: 'combustion-air-combined',
    title: 'Combustion air from indoors and outdoors combined',
    region: 'United States',
    source: { document: 'NFPA 54', edition: '2012', section: '9.3.4', status: 'found' },
    notes: ['Two openings instead of one are reduced by the same factor.'],
  },
  run({ house, facts }) {
    return combustionRooms(this.rule, house, (room) => {
      const required = standardCombustionVolume(room.inputW);
      const ratio = room.volumeM3 / required;
      if (ratio >= 1) {
        return notMeantFor(this.rule, {
          subject: room.zone,
          why: 'Its volume is that of the standard method or more, so no outdoor share is asked for.',
        });
      }
      const full = singleOutdoorOpening(room.inputW);
      const least = full * (1 - ratio);
      const arithmetic = [
        ...room.arithmetic,
        line('required volume', '50 ft³ for each 1,000 Btu/h of input', amount.volume(required)),
        line('ratio', 'volume over required volume', amount.ratio(ratio)),
        line('factor', '1 less ratio', amount.ratio(1 - ratio)),
        line('opening for outdoors alone', '1 in² for each 3,000 Btu/h', amount.area(full)),
        line('opening', 'opening for outdoors alone × factor', amount.area(least)),
        line(
          'round duct',
          'diameter of a round opening of that area; flexible duct one inch larger',
          amount.length(2 * Math.sqrt(least / Math.PI)),
        ),
      ];
      const openings = outdoorOpenings({ house, facts }, room.zone);
      if (openings === undefined) {
        return lacks(this.rule, { subject: room.zone, why: room.why, arithmetic }, [
          'its openings to outdoors for combustion air, if it has any',
        ]);
      }
      const largest = Math.max(0, ...openings.map(freeAreaOf));
      return judgedBy(
        this.rule,
        {
          subject: room.zone,
          why: room.why,
          arithmetic: [
            ...arithmetic,
            line('built', 'largest opening to outdoors, free', amount.area(largest)),
          ],
        },
        {
          held: { value: largest, limit: least, sense: 'at least' },
          satisfiedBy: ['One opening to outdoors of that free area, besides the air of the space.'],
        },
      );
    });
  },
};

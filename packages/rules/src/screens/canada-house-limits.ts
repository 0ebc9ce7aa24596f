import { lacks } from '../internal/answer.js';
import type { Screen } from '../internal/screen.js';
import { judgeHouse } from '../judge-house.js';
import { canada5Pa } from '../limit-sets/canada-5-pa.js';
import { canadaF3261991 } from '../limit-sets/canada-f326-1991.js';

/**
 * The Canadian limits for the house as a whole, 10, 20 and 25 Pa, against the worst case.
 *
 * Source: CSA F300:22, preface, read; CSA F326-M91 from uncertain memory.
 */
export const canadaHouseLimits: Screen = {
  rule: {
    id: 'canada-house-limits',
    title: 'Suction of the whole house',
    region: 'Canada',
    source: {
      document: 'CSA F300; CSA F326-M91',
      edition: '2022; 1991',
      section: 'preface, items d and e; depressurization',
      status: 'found',
    },
  },
  run({ house, worstCase }) {
    if (worstCase === undefined) {
      return [
        lacks(this.rule, { applies: 'unknown', why: 'It is a limit of pressure.' }, [
          'a pressure: run the worst case',
        ]),
      ];
    }
    return [canada5Pa, canadaF3261991].flatMap((limitSet) =>
      judgeHouse({ house, study: worstCase, limitSet }),
    );
  },
};

import { notMeantFor } from '../internal/answer.js';
import type { Screen } from '../internal/screen.js';
import { judgeExtract } from '../judge-extract.js';
import { unitedKingdomExtract } from '../limit-sets/united-kingdom-extract.js';

/**
 * British rates of extract beside open-flued appliances.
 *
 * Source: Approved Document F, 1.8, read; Approved Document J, 1.20 to 1.22, from memory.
 */
export const britishExtract: Screen = {
  rule: {
    id: 'british-extract',
    title: 'Extract beside open-flued appliances',
    region: 'United Kingdom',
    source: {
      document: 'Approved Documents F and J',
      section: '1.8; 1.20 to 1.22',
      status: 'found',
    },
  },
  run({ house }) {
    const findings = judgeExtract(house, unitedKingdomExtract);
    return findings.length > 0
      ? findings
      : [
          notMeantFor(this.rule, {
            why: 'No open-flued or solid-fuel appliance stands in the house.',
          }),
        ];
  },
};

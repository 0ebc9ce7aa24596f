import { parseHouse, type House } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import { beyondLimits } from './beyond-limits.js';

/** Synthetic, made for this project: a loose house whose cold masonry chimney draws badly with nothing running. */
function looseHouseWithColdChimney(): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Cold Stack 4',
    floorArea: '1500 ft2',
    airtightness: '9000 cfm at 50 Pa',
    exhaust: { bath: { kind: 'bath fan', flow: '50 cfm' } },
    appliances: {
      'water heater': {
        vent: 'natural draft',
        fuel: 'gas',
        input: '36 kBtu/h',
        flue: {
          height: '18 ft',
          size: ['12 in', '12 in'],
          construction: 'masonry unlined',
          exteriorShare: '100 %',
          connector: { length: '10 ft', rise: '1 ft', diameter: '4 in', elbows: 3 },
        },
      },
    },
    weather: [{ name: 'hot', outdoorTemperature: '95 F' }],
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

describe('what is beyond a limit', () => {
  it('is found of spillage where the suction is within its limit', async () => {
    const assessment = await assess(looseHouseWithColdChimney(), { cures: 'never', regions: [] });
    expect(assessment.findings.map(({ verdict }) => verdict)).toEqual(['within the limit']);
    const kinds = beyondLimits(assessment);
    expect(kinds.find(({ kind }) => kind === 'spillage time')?.of).toEqual(['water heater']);
    expect(kinds.map(({ kind }) => kind)).not.toContain('suction');
  });

  it('is nothing of kinds that are all within or not judged', async () => {
    const assessment = await assess(looseHouseWithColdChimney(), {
      cures: 'never',
      draft: 'never',
    });
    const within = {
      ...assessment,
      screens: assessment.screens.filter(({ verdict }) => verdict !== 'beyond the limit'),
    };
    expect(beyondLimits(within)).toEqual([]);
    expect(beyondLimits(assessment).length).toBe(
      assessment.screens.length === within.screens.length ? 0 : 1,
    );
  });
});

import { formatIssue } from '@evendraft/text';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullHouse } from '../test-data/screened.js';
import { readScreenFacts } from './read-screen-facts.js';
import { screenFactsIssues } from './screen-facts-issues.js';

const { house, facts } = fullHouse();

/** The issues as a person reads them. */
function told(value: unknown): readonly string[] {
  const result = readScreenFacts(value, house);
  return result.ok ? [] : result.issues.map((issue) => formatIssue(issue, screenFactsIssues));
}

describe('facts for the screens', () => {
  it('come back as they were, from JSON too', () => {
    expect(readScreenFacts(JSON.parse(JSON.stringify(facts)), house)).toEqual({ ok: true, facts });
    expect(readScreenFacts({}, house)).toEqual({ ok: true, facts: {} });
  });

  it.each<[string, unknown, string]>([
    ['are nothing', undefined, 'found nothing, expected keys and values.'],
    [
      'have a mistyped key',
      { appliances: { 'water heater': { flueAreaM: 1 } } },
      'appliances.water heater.flueAreaM: the key "flueAreaM" is not known here; known are draftHoodOutletAreaM2, ventConnectorAreaM2, flueAreaM2, flueCollarAreaM2, nearestReturnM, flueExitTemperatureC, flueDewPointC, airOpeningAreaM2; perhaps "flueAreaM2".',
    ],
    [
      'name a thing that the house does not have',
      { zones: { basment: {} } },
      'zones.basment: the house has no zone "basment"; it has basement, living room, laundry closet; perhaps "basement".',
    ],
    [
      'have a size with its unit',
      { devices: { dryer: { ductLengthM: '20 ft' } } },
      'devices.dryer.ductLengthM: found "20 ft", expected a number.',
    ],
    [
      'have a negative size',
      { devices: { dryer: { ductLengthM: -1 } } },
      'devices.dryer.ductLengthM: found -1, expected 0 or more.',
    ],
    [
      'have an area in square inches',
      { zones: { basement: { combustionOpenings: [{ to: 'outdoors', areaM2: 144 }] } } },
      'zones.basement.combustionOpenings[0].areaM2: found 144, expected 100 or less.',
    ],
    [
      'have a cover that no share is known of',
      {
        zones: {
          basement: { combustionOpenings: [{ to: 'outdoors', areaM2: 1, cover: 'wood louver' }] },
        },
      },
      'zones.basement.combustionOpenings[0].cover: found "wood louver", expected one of none, wood louvre, metal louvre; perhaps "wood louvre".',
    ],
    [
      'lack the size of an opening',
      { zones: { basement: { combustionOpenings: [{ to: 'outdoors' }] } } },
      'zones.basement.combustionOpenings[0].areaM2: missing, expected a number.',
    ],
    [
      'have a source without a name',
      { intakes: { 'kitchen make-up': [{ name: ' ', distanceM: 1, aboveIntakeM: 0 }] } },
      'intakes.kitchen make-up[0].name: the text is empty.',
    ],
  ])('that %s say so at their key', (_, value, message) => {
    expect(told(value)).toEqual([message]);
  });

  it('tell all that is wrong at once, never with an exception or words that are not ours', () => {
    expect(told({ builtInYear: 85, zones: { cellar: 1 }, more: 1 })).toHaveLength(4);
    const anyFacts = fc
      .record({ key: fc.constantFrom(...Object.keys(facts)), value: fc.anything() })
      .map(({ key, value }) => ({ ...facts, [key]: value }));
    fc.assert(
      fc.property(fc.oneof(fc.anything(), anyFacts), (value) => {
        const result = readScreenFacts(value, house);
        if (result.ok) return;
        expect(result.issues.length).toBeGreaterThan(0);
        for (const issue of result.issues) {
          expect(screenFactsIssues.has(issue.code)).toBe(true);
          expect(formatIssue(issue, screenFactsIssues)).not.toMatch(/invalid/i);
        }
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });

  it('raise every code of the catalogue, each with a remedy', () => {
    const raised = new Set<string>();
    for (const value of [
      { zones: { cellar: {} }, more: 1, builtInYear: 85, naturalAirChangePerS: 5 },
      {
        zones: {
          basement: { combustionOpenings: [{ to: 'outside', areaM2: '1' }, { to: 'outdoors' }] },
        },
      },
      { intakes: { 'kitchen make-up': [{ name: '', distanceM: 1, aboveIntakeM: 0 }] } },
    ]) {
      const result = readScreenFacts(value, house);
      if (!result.ok) result.issues.forEach(({ code }) => raised.add(code));
    }
    expect([...raised].sort()).toEqual([...screenFactsIssues.keys()].sort());
    for (const { remedy } of screenFactsIssues.values()) expect(remedy).toMatch(/\.$/);
  });
});

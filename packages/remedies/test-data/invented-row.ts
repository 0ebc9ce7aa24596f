// A house for tests, synthetic, made for this project.
import { parseHouse, type House } from '@evendraft/house';

/** A tight house with a strong hood, a dryer and a natural-draft water heater, but for what is given. */
export function inventedRow(given: Readonly<Record<string, unknown>> = {}): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Test Row 3',
    floorArea: '2000 ft2',
    airtightness: '800 cfm at 50 Pa',
    exhaust: {
      hood: { low: '200 cfm', high: '600 cfm' },
      dryer: '150 cfm',
    },
    appliances: { 'water heater': { vent: 'natural draft', fuel: 'gas' } },
    ...given,
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

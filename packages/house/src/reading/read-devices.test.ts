import { flowAt } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import { parseHouse } from '../parse-house.js';

function read(hood: object) {
  return parseHouse({
    evendraft: 1,
    name: 'Synthetic, made for this project',
    floorArea: '150 m2',
    airtightness: '100 L/s at 50 Pa',
    exhaust: { hood },
  });
}

function speedsOf(hood: object) {
  const result = read(hood);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house.devices[0]!.speeds;
}

test('a cap leaves the speeds up to its own as they are, and takes those above away', () => {
  const all = { low: '100 L/s', medium: '200 L/s', high: '400 L/s', shutOffPressure: '200 Pa' };
  const capped = speedsOf({ ...all, cappedAt: 'medium' });
  expect(capped).toEqual(speedsOf(all).slice(0, 2));
  // Half the speed of its fan is a quarter of its pressure: 50 Pa and not 200 Pa.
  const medium = capped[1]!.law;
  expect(flowAt(medium, -49).massFlowKgPerS).toBeGreaterThan(0);
  expect(flowAt(medium, -51).massFlowKgPerS).toBe(0);
  const { high: _, ...weaker } = all;
  expect(flowAt(speedsOf(weaker)[1]!.law, -51).massFlowKgPerS).toBeGreaterThan(0.1);
});

test('a cap at a speed that there is not is refused where it stands', () => {
  const result = read({ low: '100 L/s', high: '400 L/s', cappedAt: 'medum' });
  expect(result.ok).toBe(false);
  expect(result.ok || result.issues).toMatchObject([
    { code: 'reference.unknown', path: ['exhaust', 'hood', 'cappedAt'] },
  ]);
});

import { sensibleHeat } from '@evendraft/studies';
import { parseQuantity, convert, type Dimension } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const amount = z.strictObject({ value: z.number(), unit: z.string() });
const input = z.strictObject({
  flow: amount,
  /** Of the air whose volume flows; standard air is 0.075 lb/ft3. */
  densityKgPerM3: z.number(),
  from: amount,
  to: amount,
  heatUnit: z.string(),
});

/** A printed amount in SI, read as the house file reads it. */
function si({ value, unit }: z.infer<typeof amount>, dimension: Dimension): number {
  const result = parseQuantity(`${value} ${unit}`, dimension);
  if (!result.ok) throw new Error(`${value} ${unit}: ${result.problem.code}`);
  return result.quantity.valueSi;
}

for (const { name, input: given, expected } of publishedCases('sensible-heat', input)) {
  test(`sensible heat: ${name}`, () => {
    const { flow, densityKgPerM3, from, to, heatUnit } = given;
    const heatW = sensibleHeat(si(flow, 'volumeFlow') * densityKgPerM3, {
      from: si(from, 'temperature'),
      to: si(to, 'temperature'),
    });
    const heat = convert(String(heatW), 'W', heatUnit).value;
    const factor = heat / (flow.value * (to.value - from.value));
    expect(disagreements({ heat, factor }, expected)).toEqual([]);
  });
}

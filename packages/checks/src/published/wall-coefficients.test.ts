import { wallPressureCoefficient } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const input = z.strictObject({ sideRatio: z.number(), incidencesDeg: z.array(z.number()) });

for (const { name, input: given, expected } of publishedCases('wall-coefficients', input)) {
  test(`wall coefficients: ${name}`, () => {
    const { sideRatio, incidencesDeg } = given;
    const computed = Object.fromEntries(
      incidencesDeg.map((incidenceDeg) => [
        `${incidenceDeg}°`,
        wallPressureCoefficient({ incidenceDeg, sideRatio }),
      ]),
    );
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

import { parseHouse, type House } from '@evendraft/house';
import {
  limitSetById,
  minnesotaPassiveOpening,
  runScreens,
  weakestDraft,
  type ScreenFacts,
} from '@evendraft/rules';
import { convert, dimensions } from '@evendraft/units';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements, type ComputedTree } from './disagreements.js';
import { publishedCases } from './published-cases.js';

/** One line of a screen's arithmetic, in the unit that it is published in. */
const reading = z.strictObject({
  rule: z.string(),
  subject: z.string().exactOptional(),
  line: z.string(),
  unit: z.string(),
});
const input = z.strictObject({
  screens: z
    .strictObject({
      // The house reader checks its file itself.
      house: z.unknown(),
      facts: z.custom<ScreenFacts>().exactOptional(),
      readings: z.record(z.string(), reading),
    })
    .exactOptional(),
  passiveOpenings: z
    .record(
      z.string(),
      z.strictObject({ column: z.enum(['A', 'B', 'C', 'D']), flowCfm: z.number() }),
    )
    .exactOptional(),
  draft: z
    .strictObject({
      limitSet: z.string(),
      temperatures: z.record(z.string(), z.strictObject({ value: z.string(), unit: z.string() })),
    })
    .exactOptional(),
});

for (const { name, input: given, expected } of publishedCases('codes', input)) {
  test(`codes: ${name}`, () => {
    const { screens, passiveOpenings = {}, draft } = given;
    const openings = Object.entries(passiveOpenings).map(([id, { column, flowCfm }]) => [
      id,
      minnesotaPassiveOpening(column, convert(String(flowCfm), 'cfm', 'm3/s').value)?.diameterIn,
    ]);
    const computed: ComputedTree = {
      ...(screens === undefined ? {} : screened(screens)),
      ...Object.fromEntries(openings),
      ...(draft === undefined ? {} : drafts(draft)),
    };
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

function screened(given: NonNullable<z.infer<typeof input>['screens']>): ComputedTree {
  const { facts } = given;
  const findings = runScreens(houseOf(given.house), facts === undefined ? {} : { facts });
  return Object.fromEntries(
    Object.entries(given.readings).map(([id, { rule, subject, line, unit }]) => {
      const value = findings
        .find((one) => one.rule === rule && (subject === undefined || one.subject === subject))
        ?.arithmetic.find(({ label }) => label === line)?.value;
      if (typeof value !== 'object') return [id, undefined];
      return [id, convert(String(value.si), dimensions[value.dimension].siUnit, unit).value];
    }),
  );
}

function houseOf(file: unknown): House {
  const parsed = parseHouse(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.house;
}

function drafts(given: NonNullable<z.infer<typeof input>['draft']>): ComputedTree {
  const [limit] = limitSetById(given.limitSet)?.draftLimits ?? [];
  return Object.fromEntries(
    Object.entries(given.temperatures).map(([id, { value, unit }]) => [
      id,
      weakestDraft({ corners: limit?.corners ?? [] }, convert(value, unit, 'C').value),
    ]),
  );
}

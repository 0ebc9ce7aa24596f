import * as z from 'zod';
import type { SignOff } from './sign-off.js';

/** Longer texts do not fit into the block. */
const longest = 200;

const words = z.string().trim().min(1).max(longest);
/** A number that is no quantity: a permit, a serial number. Leading zeros need quotes in the file. */
const number = z
  .union([words, z.int().nonnegative()])
  .transform((value) => (typeof value === 'number' ? String(value) : value));
const day = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);

const person = z.strictObject({
  name: words,
  company: z.exactOptional(words),
  credential: z.exactOptional(number),
});

/**
 * Shape of a sign-off file. Strict: an unknown key is an issue. Texts have at most 200 characters, a
 * day is year-month-day.
 */
export const signOffSchema: z.ZodType<SignOff> = z.strictObject({
  evendraftSignOff: z.literal(1),
  address: z.exactOptional(words),
  permit: z.exactOptional(number),
  jurisdiction: z.exactOptional(words),
  codeEdition: z.exactOptional(words),
  basis: z.exactOptional(z.enum(['as designed', 'as tested'])),
  designer: z.exactOptional(person),
  tester: z.exactOptional(person),
  gauge: z.exactOptional(z.strictObject({ serial: number, calibrated: z.exactOptional(day) })),
  test: z.exactOptional(z.strictObject({ date: day, weather: z.exactOptional(words) })),
  signatures: z.exactOptional(z.array(words).min(1).max(8)),
  revisions: z.exactOptional(
    z.array(z.strictObject({ mark: number, date: day, change: words })).max(50),
  ),
});

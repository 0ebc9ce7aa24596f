import { sourceStatuses } from '@evendraft/house';
import * as z from 'zod';

/** Any text. */
export const text = z.string();

/** Where a number comes from and how sure that is. */
export const sourceSchema = z.strictObject({
  document: text,
  edition: z.exactOptional(text),
  section: z.exactOptional(text),
  status: z.enum(sourceStatuses),
});

/** The four words of a finding. */
export const verdictSchema = z.enum([
  'within the limit',
  'near the limit',
  'beyond the limit',
  'not judged',
]);

/** How many of something. */
export const count = z.int().min(0);

/** A pressure against outdoors or a change of it; negative is depressurized [Pa]. */
export const pressurePa = z.number().meta({ unit: 'Pa' });

/** A volume flow [m³/s]. */
export const volumeFlowM3PerS = z.number().meta({ unit: 'm3/s' });

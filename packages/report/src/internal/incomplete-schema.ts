import * as z from 'zod';
import { count, text } from './shared-schemas.js';

/** How far each study came that was stopped. */
export const stoppedSchema = z
  .strictObject({ done: count, of: count })
  .meta({ description: 'Present where the work was stopped: how many were done, of how many.' });

/** What was not finished, because the work was stopped. */
export const incompleteSchema = z
  .strictObject({
    parts: z
      .array(
        z.strictObject({
          work: z
            .enum([
              'situations',
              'orders of switching on',
              'draws',
              'flue states',
              'cures',
              'questions of the air',
              'remedies',
              'sizes',
            ])
            .meta({ description: 'What is counted.' }),
          done: count.meta({ description: 'How many were done.' }),
          of: z.exactOptional(count).meta({
            description: 'Of how many; absent where that was not known yet.',
          }),
          notProved: text.meta({ description: 'What is therefore not shown, as a sentence.' }),
        }),
      )
      .min(1),
  })
  .meta({ description: 'Present where the work was stopped before its end.' });

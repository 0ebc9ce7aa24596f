import { applianceKinds, sourceStatuses, ventTypes } from '@evendraft/house';
import * as z from 'zod';

/** A text that is not blank. */
export const text = z.string().trim().min(1);

/** An id of small letters, digits and hyphens. */
export const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

const kinds = z.array(z.enum(applianceKinds)).min(1);
const vents = z.array(z.enum(ventTypes).exclude(['unvented', 'electric'])).min(1);

/** Document, edition, section and status. */
export const source = z.strictObject({
  document: text,
  edition: z.exactOptional(text),
  section: z.exactOptional(text),
  status: z.enum(sourceStatuses),
});

const chimney = z
  .strictObject({
    fromHeightM: z.exactOptional(z.number().nonnegative().meta({ unit: 'm' })),
    belowHeightM: z.exactOptional(z.number().nonnegative().meta({ unit: 'm' })),
    exterior: z.exactOptional(z.boolean()),
  })
  .check((context) => {
    const { fromHeightM = 0, belowHeightM = Infinity } = context.value;
    if (fromHeightM < belowHeightM) return;
    const parameters = { from: fromHeightM, below: belowHeightM };
    const params = { kind: 'height-range', parameters };
    context.issues.push({ code: 'custom', input: context.value, path: ['belowHeightM'], params });
  });

const appliesTo = z
  .strictObject({
    kinds: z.exactOptional(kinds),
    vents: z.exactOptional(vents),
    fuels: z.exactOptional(z.array(z.enum(['gas', 'oil', 'wood', 'pellets'])).min(1)),
    alone: z.exactOptional(z.literal(true)),
    sharesVentWith: z.exactOptional(
      z.strictObject({
        kinds: z.exactOptional(kinds),
        vents: z.exactOptional(vents),
        ventDamper: z.exactOptional(z.boolean()),
      }),
    ),
    ventDamper: z.exactOptional(z.boolean()),
    chimney: z.exactOptional(chimney),
  })
  .check((context) => {
    if (context.value.alone === undefined || context.value.sharesVentWith === undefined) return;
    const params = { kind: 'alone-and-shared', parameters: {} };
    context.issues.push({ code: 'custom', input: context.value, path: ['alone'], params });
  });

/** Descriptions of appliances, any one of which may fit. */
export const applies = z.array(appliesTo).min(1);

/** A pressure below zero, or a draft; the floor is against a number in another unit [Pa]. */
export const suction = z.number().negative().min(-100).meta({ unit: 'Pa' });

/** What a limit on suction limits. */
export const quantity = z.enum(['change from baseline', 'zone minus outdoors']);

import * as z from 'zod';
import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { branch } from './schema/branch.js';
import { leaf } from './schema/leaf.js';
import { part } from './schema/part.js';
import { quantity, readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { checkName } from './schema/item-name.js';
import { outletFile } from './outlet-file.js';
import { ranges } from './ranges.js';

/** A share of the tested leakage as typed: how much, and where it leads if not outdoors. */
export interface ShareInFile {
  readonly share: number;
  readonly to?: string | undefined;
}

const examples = ['45 %', '25 % to attic'];

const shareText = leaf(
  {
    description: 'A share of the whole tested leakage, `45 %` or `25 % to attic`.',
    examples,
    jsonSchema: { type: 'string', unit: 'ratio' },
  },
  (value): ValueResult<ShareInFile> => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: examples });
    }
    const [, amount = '', to] = /^(.*?)(?:\s+to\s+(.*))?$/is.exec(String(value).trim()) ?? [];
    const share = readQuantity(amount, { dimension: 'ratio', allowed: ranges.share, examples });
    if (!share.ok) return share;
    if (to === undefined) return accept({ share: share.value });
    const name = checkName(to);
    return name.ok ? accept({ share: share.value, to: name.value }) : name;
  },
);

const shareMap = part(
  {
    share: quantity('ratio', {
      description: 'Share of the whole tested leakage.',
      allowed: ranges.share,
    }),
    to: z.optional(outletFile),
  },
  {
    description: 'A share of the tested leakage and where it leads.',
    example: '{ share: 25 %, to: attic }',
  },
);

const oneShare = branch(
  { text: shareText, map: shareMap },
  { description: 'A share of the tested leakage.', examples },
);

const shareOrShares = branch(
  { text: shareText, map: shareMap, list: z.array(oneShare) },
  {
    description:
      'Shares of the tested leakage through this surface; several where parts of it lead elsewhere.',
    examples: [...examples, '[20 %, 5 % to attic]'],
  },
);

const faceShare = z.optional(
  quantity('ratio', {
    description: 'Share of the whole tested leakage through this face.',
    allowed: ranges.share,
  }),
);

const wallShares = part(
  {
    front: faceShare,
    right: faceShare,
    back: faceShare,
    left: faceShare,
    share: z.optional(
      quantity('ratio', {
        description: 'Share of the whole tested leakage, with `to`.',
        allowed: ranges.share,
      }),
    ),
    to: z.optional(outletFile),
  },
  { description: 'Leakage of the walls, face by face.', example: '{ front: 20 %, back: 25 % }' },
);

/** The part of the tested leakage that one zone has, surface by surface. */
export const leakageFile = part(
  {
    walls: z.optional(
      branch(
        { text: shareText, map: wallShares, list: z.array(oneShare) },
        {
          description:
            'Leakage of the walls: one share spread over all faces, or each face by itself.',
          examples: ['45 %', '{ front: 20 %, back: 25 % }', '[40 %, 5 % to corridor]'],
        },
      ),
    ),
    ceiling: z.optional(shareOrShares),
    floor: z.optional(shareOrShares),
  },
  {
    description:
      'Shares of the whole tested leakage that lie in this zone. All zones together make 100 %.',
    example: '{ walls: 60 %, ceiling: 25 % to attic, floor: 15 % }',
  },
);

/** What {@link leakageFile} reads. */
export type LeakageInFile = z.output<typeof leakageFile>;

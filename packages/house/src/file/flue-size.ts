import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { leaf } from './schema/leaf.js';
import { readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { ranges } from './ranges.js';

const examples = ['[8 in, 12 in]', '[200 mm, 300 mm]'];

/** Clear width and depth of a rectangular flue. */
export const flueSize = leaf(
  {
    description: 'Clear width and depth of a rectangular flue.',
    examples,
    jsonSchema: { type: 'array', items: { type: 'string' }, minItems: 2, maxItems: 2 },
  },
  (value): ValueResult<readonly [number, number]> => {
    if (!Array.isArray(value) || value.length !== 2) {
      const found = Array.isArray(value) ? `a list of ${value.length}` : shapeWords[shapeOf(value)];
      return refuse('value.wrong-shape', { found, accepted: examples });
    }
    const [width, depth] = Array.from<unknown, ValueResult<number>>(value, (side) =>
      readQuantity(side, {
        dimension: 'length',
        allowed: ranges.flueDiameter,
        examples: ['8 in', '200 mm'],
      }),
    );
    if (width?.ok === true && depth?.ok === true) return accept([width.value, depth.value]);
    return {
      ok: false,
      problems: [width, depth].flatMap((side, index) =>
        side?.ok === false ? side.problems.map((each) => ({ ...each, path: [index] })) : [],
      ),
    };
  },
);

import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { leaf } from './schema/leaf.js';
import { readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { ranges } from './ranges.js';

/** Two inner sides or axes of a duct [m]. */
export type TwoSides = readonly [number, number];

const examples = ['3 1/4 in x 10 in', '80 mm x 250 mm'];

/**
 * Schema of two lengths with an `x` between them, `3 1/4 in x 10 in` [m]. A unit may stand once, at the end.
 *
 * @param description - what they measure
 * @returns the schema
 */
export function twoSides(description: string) {
  return leaf({ description, examples }, (value): ValueResult<TwoSides> => {
    const shape = shapeOf(value);
    const text = String(value);
    const sides =
      shape === 'text' ? text.split(/\s*(?:×|\bby\b|(?<=[\d\s"'a-z])x(?=[\d\s]))\s*/i) : [];
    const [first, second] = sides;
    if (first === undefined || second === undefined || sides.length !== 2) {
      const found = shape === 'text' ? `"${text.slice(0, 60)}"` : shapeWords[shape];
      return refuse('value.wrong-shape', { found, accepted: examples });
    }
    const unit = /[a-z"'][^\d]*$/i.exec(second)?.[0] ?? '';
    const read = [/[a-z"']/i.test(first) ? first : `${first} ${unit}`, second].map((side) =>
      readQuantity(side, { dimension: 'length', allowed: ranges.ductSide, examples: ['10 in'] }),
    );
    const [one, other] = read;
    if (one?.ok === true && other?.ok === true) return accept([one.value, other.value]);
    return {
      ok: false,
      problems: read.flatMap((each) => (each.ok ? [] : each.problems)).slice(0, 1),
    };
  });
}

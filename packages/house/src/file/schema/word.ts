import { suggest } from '@evendraft/text';
import type * as z from 'zod';
import { accept, refuse } from './file-problem.js';
import { leaf } from './leaf.js';
import { shapeOf, shapeWords } from './shape-of.js';

/**
 * Schema of one of a few words; case, hyphens and underlines do not matter.
 *
 * @param words - every word accepted, with what it stands for; other spellings stand beside the usual one
 * @param description - what the value means
 * @returns the schema
 */
export function word<const Words extends Readonly<Record<string, string>>>(
  words: Words,
  description: string,
): z.ZodType<Words[keyof Words]> {
  const usual = [...new Set(Object.values(words))];
  return leaf(
    {
      description,
      examples: usual,
      // Other spellings are accepted, but an editor should offer only the usual ones.
      jsonSchema: { type: 'string', enum: Object.keys(words) },
    },
    (value) => {
      const shape = shapeOf(value);
      if (shape !== 'text' && shape !== 'number') {
        return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: usual });
      }
      const found = String(value);
      const plain = plainWord(found);
      const known = Object.keys(words).find((each) => plainWord(each) === plain);
      if (known !== undefined) return accept(words[known] as Words[keyof Words]);
      const near = suggest(plain, Object.keys(words));
      const suggestion = near === undefined ? {} : { suggestion: words[near] ?? near };
      return refuse('value.unknown-word', {
        found: found.slice(0, 60),
        allowed: usual,
        ...suggestion,
      });
    },
  );
}

/**
 * A word without what does not matter: case, hyphens, underlines, doubled spaces.
 *
 * @param text - as typed
 * @returns the plain form
 */
export function plainWord(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

/**
 * Words that stand for themselves.
 *
 * @param list - the words
 * @returns a table for {@link word}
 */
export function themselves<const List extends readonly string[]>(
  list: List,
): { readonly [Each in List[number]]: Each } {
  return Object.fromEntries(list.map((each) => [each, each])) as {
    readonly [Each in List[number]]: Each;
  };
}
